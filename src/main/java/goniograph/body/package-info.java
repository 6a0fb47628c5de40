/**
 * Floor 2: the human body as pure arithmetic: anthropometry, skeleton, joint angles, kinematics,
 * contacts, balance, static load, range of motion. Everything is a function of a body and a pose.
 *
 * <p>Frames follow the International Society of Biomechanics (Wu et al. 2002, 2005): X forward, Y
 * up or proximal, Z to the person's right. Lengths are fractions of body height unless a name says
 * cm.
 */
@NullMarked
package goniograph.body;

import org.jspecify.annotations.NullMarked;
