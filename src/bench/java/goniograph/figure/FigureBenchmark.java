package goniograph.figure;

import goniograph.pose.PoseFile;
import goniograph.pose.PoseReader;
import goniograph.pose.PoseSolver;
import goniograph.pose.Scene;
import goniograph.pose.Solved;
import goniograph.source.DiskFiles;
import goniograph.source.SourceFile;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long one figure takes, warm: solved with its nine moments, and drawn as SVG at the size of
 * the standard sheet. The aim is 15 ms for both.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class FigureBenchmark {
  /** The pose file. */
  @Param({"hp-chair-rise", "ba-heel-toe-stand", "sh-row-band"})
  public String pose = "";

  private PoseFile file = PoseReader.read(read("hp-chair-rise"), finding -> {}).get(0);
  private Scene scene = PoseSolver.solve(file).scene();

  private static SourceFile read(String id) {
    return DiskFiles.at(Path.of("figures")).text(id + ".yaml").orElseThrow();
  }

  /** Reads the pose that is measured. */
  @Setup
  public void read() {
    file = PoseReader.read(read(pose), finding -> {}).get(0);
    scene = PoseSolver.solve(file).scene();
  }

  /** Solves. */
  @Benchmark
  public Solved solve() {
    return PoseSolver.solve(file);
  }

  /** Draws what is solved. */
  @Benchmark
  public String draw() {
    return Figure.of(scene, FigureOptions.STANDARD).svg("p", "title", "words");
  }

  /** Solves and draws. */
  @Benchmark
  public String solveAndDraw() {
    Scene solved = PoseSolver.solve(file).scene();
    return Figure.of(solved, FigureOptions.STANDARD).svg("p", "title", "words");
  }
}
