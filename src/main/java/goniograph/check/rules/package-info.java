/** Floor 6: the rules, one class each, named after what they look for. */
@NullMarked
package goniograph.check.rules;

import org.jspecify.annotations.NullMarked;
