/**
 * Floor 5: who has signed what, whether a signature still holds, frozen releases, and the codes on
 * paper. A signature is a claim tied to a digest: any edit of what was signed voids it. Who really
 * signed is the business of version control and file rights. This room works on digests and files
 * that others hand it; it reads no clock and prints nothing.
 */
@NullMarked
package goniograph.register;

import org.jspecify.annotations.NullMarked;
