package goniograph.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.source.DiskFiles;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** The command {@code figure} on poses in memory. */
class FigureCommandTest {
  private static final String BOW =
      "pose: bow\nbase: standing\ncontacts: [feet on floor]\nangles: {pelvis: tilt forward 20}\n";
  private static final String FILE = "figures/bow.yaml";

  private final Console console = new Console();

  private FigureCommandTest() {
    DiskFiles demo = DiskFiles.at(Path.of(""));
    for (String path : List.of("shared/clinic.yaml", "shared/phrases/en.yaml")) {
      console.files.write(path, demo.bytes(path).orElseThrow());
    }
    write(BOW);
  }

  private void write(String text) {
    console.files.write(FILE, text.getBytes(StandardCharsets.UTF_8));
  }

  private String svg(String path) {
    return console.files.text(path).orElseThrow().text();
  }

  @Test
  void theDrawingSaysWhatItShows() {
    assertEquals(Exit.CLEAN, console.run("figure", FILE, "--out", "bow.svg"));
    assertTrue(svg("bow.svg").contains("<desc id=\"-desc\">A person stands, seen from the side."));
  }

  @Test
  void aMistakeIsOneLineWithItsPlace() {
    write(BOW.replace("pelvis", "pelvsi"));
    assertEquals(Exit.FINDINGS, console.run("figure", FILE, "--out", "bow.svg"));
    assertEquals(
        "error figures/bow.yaml:4:10 pose-joint-unknown: `pelvsi` is not a joint or a segment; did"
            + " you mean `pelvis`? Write `pelvis`.\n",
        console.err());
    assertTrue(console.files.text("bow.svg").isEmpty());
  }

  /** What the contacts and ranges say of the solved pose is told too, and drawn all the same. */
  @Test
  void aPoseThatNoEntryNamesIsJudgedToo() {
    write(BOW.replace("pelvis: tilt forward 20", "elbow left: flexion 160"));
    assertEquals(Exit.FINDINGS, console.run("figure", FILE, "--out", "bow.svg"));
    assertTrue(console.err().contains("pose-range-of-motion: `elbow left` reaches"), console.err());
    assertTrue(console.files.text("bow.svg").isPresent());
  }

  @Test
  void everyPoseOfAFileIsDrawnOrTheOneAskedFor() {
    write(BOW + "---\npose: bow-left\nextends: bow\nmirror: true\n");
    assertEquals(Exit.CLEAN, console.run("figure", FILE, "--out", "a/b.svg"));
    assertTrue(console.files.text("b-bow.svg").isPresent());
    assertTrue(console.files.text("b-bow-left.svg").isPresent());
    assertEquals(Exit.CLEAN, console.run("figure", FILE, "--pose", "bow", "--out", "one.svg"));
    assertTrue(console.files.text("one.svg").isPresent());
    assertEquals(Exit.USAGE, console.run("figure", FILE, "--pose", "bwo", "--out", "one.svg"));
    assertTrue(console.err().contains("did you mean `bow`?"), console.err());
  }

  @Test
  void aWatchedFileIsDrawnAtEverySaveAndABrokenOneSurvived() throws InterruptedException {
    BlockingQueue<String> lines = new LinkedBlockingQueue<>();
    PrintWriter err = new PrintWriter(new Lines(lines));
    World world =
        new World(
            err,
            err,
            folder -> console.files,
            zone -> LocalDate.of(2026, 11, 25),
            Optional.empty());
    Thread watching =
        new Thread(() -> Goniograph.run(world, "figure", FILE, "--out", "bow.svg", "--watch"));
    watching.start();
    assertEquals("drawn  bow.svg", next(lines));
    String first = svg("bow.svg");
    write(BOW.replace("pelvis", "pelvsi"));
    assertTrue(next(lines).contains("pose-joint-unknown"));
    assertEquals(first, svg("bow.svg"));
    write("");
    assertTrue(next(lines).startsWith("There is no pose in figures/bow.yaml"));
    write(BOW.replace("20", "30"));
    assertEquals("drawn  bow.svg", next(lines));
    assertFalse(first.equals(svg("bow.svg")));
    watching.interrupt();
    watching.join(TimeUnit.MINUTES.toMillis(1));
    assertFalse(watching.isAlive());
  }

  private static String next(BlockingQueue<String> lines) throws InterruptedException {
    String line = lines.poll(1, TimeUnit.MINUTES);
    assertTrue(line != null, "no line came");
    return String.valueOf(line);
  }

  /** What is printed, line by line as it comes. */
  private static final class Lines extends Writer {
    private final BlockingQueue<String> lines;
    private final StringBuilder line = new StringBuilder();

    Lines(BlockingQueue<String> lines) {
      this.lines = lines;
    }

    @Override
    public void write(char[] text, int from, int length) {
      for (char c : new String(text, from, length).toCharArray()) {
        if (c == '\n') {
          lines.add(line.toString());
          line.setLength(0);
        } else {
          line.append(c);
        }
      }
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }
}
