package goniograph.pose;

import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.source.DiskFiles;
import java.nio.file.Path;
import java.util.ArrayList;

/** Prints what solving makes of pose files. */
final class Tell {
  public static void main(String[] args) {
    for (String arg : args) {
      var found = new ArrayList<goniograph.finding.Finding>();
      Path p = Path.of(arg);
      var poses = PoseReader.read(DiskFiles.at(p.toAbsolutePath().getParent()).text(p.getFileName().toString()).orElseThrow(), found::add);
      found.forEach(f -> System.out.println(f.what() + " " + f.at()));
      for (PoseFile pose : poses) {
        SceneFacts facts = PoseSolver.solve(pose).facts();
        System.out.println("== " + pose.id());
        for (MomentFacts m : facts.all()) {
          boolean bad = m.worstMissCm() > .3 || m.belowFloorCm() > .5 || m.slipCm() > .05;
          if (m.name().isEmpty() && !bad) continue;
          System.out.printf("%8s miss %.2f slip %.2f below %.2f %s margin %s lean %.0f", m.name(), m.worstMissCm(), m.slipCm(), m.belowFloorCm(), m.deepest(), m.marginCm().map(x -> String.format("%.1f", x)).orElse("-"), m.leanDegrees());
          System.out.printf(" tilt %.0f lum %.0f neck %.0f/%.0f", a(m, Joint.PELVIS, null, Movement.TILT), a(m, Joint.LUMBAR, null, Movement.FLEXION), a(m, Joint.NECK, null, Movement.FLEXION), a(m, Joint.NECK, null, Movement.BEND));
          for (Side s : Side.values()) System.out.printf(" | hip %.1f knee %.1f ank %.1f sh %.0f/%.0f elb %.0f", a(m, Joint.HIP, s, Movement.FLEXION), a(m, Joint.KNEE, s, Movement.FLEXION), a(m, Joint.ANKLE, s, Movement.DORSIFLEXION), a(m, Joint.SHOULDER, s, Movement.FLEXION), a(m, Joint.SHOULDER, s, Movement.ABDUCTION), a(m, Joint.ELBOW, s, Movement.FLEXION));
          System.out.println();
          for (ContactMiss c : m.misses()) if (c.cm() > .3) System.out.printf("             %s %.2f%n", c.contact().words(), c.cm());
        }
      }
    }
  }

  private static double a(MomentFacts m, Joint j, Side s, Movement v) {
    return s == null ? m.angles().get(j, v) : m.angles().get(j, s, v);
  }
}
