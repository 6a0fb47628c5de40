package goniograph.pose;

import java.lang.management.ManagementFactory;
import java.util.List;

/** Prints how long solving takes, warm; run by hand, no test. */
final class SolverSpeed {
  private static final int ROUNDS = 60;

  private SolverSpeed() {}

  public static void main(String[] args) {
    List<PoseFile> poses = Poses.all();
    for (int i = 0; i < ROUNDS; i++) {
      poses.forEach(PoseSolver::solve);
    }
    for (PoseFile pose : poses) {
      long start = cpu();
      for (int i = 0; i < ROUNDS; i++) {
        PoseSolver.solve(pose);
      }
      System.out.printf("%-32s %6.2f ms%n", pose.id(), (cpu() - start) / 1e6 / ROUNDS);
    }
  }

  /** What this thread has worked, whatever else the machine does. */
  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
