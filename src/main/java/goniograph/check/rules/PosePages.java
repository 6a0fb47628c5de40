package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.RulePage;
import java.util.List;

/** What reading pose files finds. */
final class PosePages {
  private static final String ROW = "figures/sh-row-band.yaml";
  private static final String RISE = "figures/hp-chair-rise.yaml";
  private static final String HEEL = "figures/ba-heel-toe-stand.yaml";
  private static final String UNKNOWN =
      "A word that is not understood would be left out of the drawing without a word.";

  private static final String BUILDS =
      "A pose that is built on another cannot be drawn without it.";

  private PosePages() {}

  static List<RulePage> all() {
    return List.of(
        page(
            "pose-name",
            "The `pose` of a file is not the file's name.",
            "One thing with two names is looked up under the wrong one.",
            Example.in(HEEL, "pose: ba-heel-toe-stand", "pose: «ba-toe-heel-stand»")),
        page(
            "pose-joint-unknown",
            "A joint that bodies here do not have; the nearest is offered.",
            UNKNOWN,
            Example.in(HEEL, "  elbow left:", "  «elbo» left:")),
        page(
            "pose-joint-side",
            "A joint of a limb without its side, or a joint of the trunk with one.",
            "Nobody can tell which arm was meant.",
            Example.in(HEEL, "  elbow left:", "  «elbow»:")),
        page(
            "pose-movement-unknown",
            "A movement that the joint does not make; the nearest is offered.",
            UNKNOWN,
            Example.in(HEEL, "elbow left: flexion 59", "elbow left: «flexon» 42")),
        page(
            "pose-angle-number",
            "A movement without its number.",
            UNKNOWN,
            Example.in(HEEL, "elbow left: flexion 59", "elbow left: «flexion»")),
        page(
            "pose-aim-unknown",
            "A way to lie that a segment does not know; the nearest is offered.",
            UNKNOWN,
            Example.in(ROW, "forearm both: pronation 0", "thigh both: «levl»")),
        page(
            "pose-aim-joint",
            "A joint with a word that lays a segment in the room.",
            "A joint has an angle; what lies level or upright is the segment beyond it.",
            Example.in(ROW, "forearm both: pronation 0", "neck: «level»")),
        page(
            "pose-aim-target",
            "Pointing at something that is neither a direction nor in the pose.",
            UNKNOWN,
            Example.in(ROW, "forearm both: pronation 0", "foot both: pointing at «ceilng»")),
        page(
            "pose-aim-conflict",
            "A joint's angle typed beside a word that works the same angle out.",
            "Of two numbers for one joint, the one that is drawn would be an accident.",
            Example.in(
                ROW, "knee both: flexion 95", "knee both: flexion 95, shank both: «upright»")),
        page(
            "pose-extends-unknown",
            "A pose that builds on one that is not there; the nearest is offered.",
            BUILDS,
            Example.in(HEEL, "base: standing", "base: standing\nextends: «hp-chair-rse»")),
        page(
            "pose-extends-cycle",
            "Poses that build on each other in a ring.",
            BUILDS,
            Example.in(HEEL, "base: standing", "base: standing\nextends: «ba-heel-toe-stand»")),
        page(
            "pose-extends-faulty",
            "A pose that builds on one that has errors.",
            BUILDS,
            Example.in(HEEL, "base: standing", "base: standing\nextends: «hp-chair-rise»")
                .alongside(RISE, "chair: {height: 45}", "chair: {height: tall}")),
        page(
            "pose-contact-grammar",
            "A contact that does not say what touches what.",
            UNKNOWN,
            Example.in(HEEL, "contacts: [feet on floor,", "contacts: [«feet floor»,")),
        page(
            "pose-contact-part",
            "A part of the body that cannot touch; the nearest is offered.",
            UNKNOWN,
            Example.in(HEEL, "left fingertips on counter", "«left fingrtips» on counter")),
        page(
            "pose-contact-target",
            "A contact with something that is not in the pose; the nearest is offered.",
            UNKNOWN,
            Example.in(HEEL, "left fingertips on counter", "left fingertips on «countr»")),
        page(
            "pose-support-unknown",
            "A support that is not known; the nearest is offered.",
            UNKNOWN,
            Example.in(
                RISE,
                "supports: {chair: {height: 45}}",
                "supports: {«couch»: {height: 45}, chair: {}}")),
        page(
            "pose-length",
            "A length in a pose file that is not a number of centimetres.",
            "Pose files have one unit for lengths, so none is written.",
            Example.in(RISE, "{height: 45}", "{height: «45cm»}")),
        page(
            "pose-mass",
            "A mass in a pose file that is not a number of kilograms above 0, up to 50.",
            "Pose files have one unit for masses, so none is written.",
            Example.in(ROW, "props: {band: ", "props: {dumbbell: {mass: «2kg»}, band: ")),
        page(
            "pose-mark-unknown",
            "A mark that is not known; the nearest is offered.",
            UNKNOWN,
            Example.in(HEEL, "marks: [balance]", "marks: [«balanse»]")),
        page(
            "pose-moving-unknown",
            "A moving part that is not known; the nearest is offered.",
            UNKNOWN,
            Example.in(ROW, "moving: [right arm, left arm]", "moving: [right arm, «left arms»]")),
        page(
            "pose-moving-twice",
            "A part stands twice in `moving`.",
            "Most often the other side was meant, and its movement would not stand out.",
            Example.in(ROW, "moving: [right arm, left arm]", "moving: [left arm, «left arm»]")),
        page(
            "pose-camera",
            "A camera without its two numbers, yaw and elevation.",
            "The drawing would be seen from nowhere.",
            Example.in(HEEL, "view: side\n", "camera: «[14]»\n")),
        page(
            "pose-frame-alone",
            "A pose with a start and no end, or an end and no start.",
            "A movement has two ends.",
            Example.in(ROW, "pose: sh-row-band", "«pose: sh-row-band")
                .alongside(
                    ROW, "start: {shoulder both: flexion 45, elbow both: flexion 15}\n", "")));
  }

  private static RulePage page(String name, String what, String why, Example example) {
    return RulePage.of(name, what, why, RulePage.HOUSE, Acceptance.NOBODY, example);
  }
}
