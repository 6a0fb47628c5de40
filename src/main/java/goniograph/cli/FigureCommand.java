package goniograph.cli;

import goniograph.exchange.FactsJson;
import goniograph.figure.Figure;
import goniograph.figure.FigureOptions;
import goniograph.figure.FigurePng;
import goniograph.figure.LimbWords;
import goniograph.figure.Person;
import goniograph.figure.Style;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.finding.Nearest;
import goniograph.language.Language;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.pose.PoseFile;
import goniograph.pose.PoseReader;
import goniograph.pose.PoseSolver;
import goniograph.pose.Solved;
import goniograph.pose.View;
import goniograph.source.Files;
import goniograph.source.SourceFile;
import goniograph.type.Direction;
import goniograph.type.FaceOrder;
import goniograph.type.Family;
import goniograph.type.TextOutline;
import goniograph.type.Weight;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Draws the figure of an entry or of a pose file. */
@Command(
    name = "figure",
    description = "Draws one figure, or says what is true of it.",
    footer =
        "%nA pose file is given by its name in figures/, for instance figures/hp-chair-rise.yaml.")
final class FigureCommand implements Callable<Integer> {
  private static final double WIDE = 80;
  private static final double HIGH = 70;

  @Mixin private final Common common;

  @Parameters(paramLabel = "ENTRY-or-pose-file", description = "What is drawn.")
  private String what = "";

  @Option(
      names = "--out",
      paramLabel = "FILE.svg|FILE.png",
      description = "The drawing; SVG, or PNG at 300 dots an inch.")
  private String out = "";

  @Option(names = "--style", paramLabel = "STYLE", description = "ink or colour; ink unless said.")
  private String style = "ink";

  @Option(
      names = "--view",
      paramLabel = "VIEW",
      description = "Another view than that of the pose file, for instance front.")
  private String view = "";

  @Option(
      names = "--angles",
      description = "With the angles in degrees and the balance mark, as therapists see them.")
  private boolean angles;

  @Option(
      names = "--facts",
      description = "Prints solved angles, contact misses, balance and loads as JSON.")
  private boolean facts;

  FigureCommand(World world) {
    this.common = new Common(world);
  }

  @Override
  public Integer call() {
    if (out.isEmpty() && !facts) {
      throw new Refusal(
          "Say where the drawing goes with --out FILE.svg or --out FILE.png, or ask for --facts.");
    }
    Solved solved = PoseSolver.solve(viewed(pose()));
    if (facts) {
      common.out().println(FactsJson.of(solved));
    }
    if (!out.isEmpty()) {
      draw(solved);
    }
    return Exit.CLEAN;
  }

  private void draw(Solved solved) {
    Figure figure = Figure.of(solved.scene(), options());
    figure.refusals().forEach(this::tell);
    String svg = figure.svg("", solved.scene().id(), solved.scene().id());
    byte[] bytes =
        switch (ending()) {
          case "svg" -> svg.getBytes(StandardCharsets.UTF_8);
          case "png" -> FigurePng.of(svg, figure.width());
          default ->
              throw new Refusal(
                  "`" + out + "` ends in neither .svg nor .png. Give one of the two.");
        };
    int slash = out.lastIndexOf('/');
    Files folder = common.folder(slash < 0 ? "." : slash == 0 ? "/" : out.substring(0, slash));
    folder.write(out.substring(slash + 1), bytes);
  }

  private FigureOptions options() {
    FigureOptions plain =
        FigureOptions.STANDARD
            .of(person())
            .sized(WIDE, HIGH, FigureOptions.STANDARD.weights())
            .in(styled());
    return angles ? plain.forTherapist().lettered(FigureCommand::outline, LimbWords.NONE) : plain;
  }

  private Person person() {
    return Library.read(common.files())
        .library()
        .clinic()
        .map(clinic -> Person.of(clinic.settings().figure()))
        .orElse(Person.ADULT);
  }

  private static TextOutline outline(String text, double size) {
    FaceOrder faces = FaceOrder.of(Family.LATIN, Weight.BOLD, Language.ENGLISH.tag());
    return TextOutline.of(text, faces, Direction.AUTO, size);
  }

  private void tell(goniograph.figure.Refusal refusal) {
    String side = refusal.side().map(s -> s.name().toLowerCase(Locale.ROOT) + " ").orElse("");
    common
        .err()
        .println(
            "`"
                + side
                + refusal.mark()
                + "` is not marked in "
                + refusal.moment()
                + ": this view does not show it truly. Try `view: "
                + refusal.better()
                + "`.");
  }

  private String ending() {
    return out.substring(out.lastIndexOf('.') + 1);
  }

  private Style styled() {
    return switch (style) {
      case "ink" -> Style.INK;
      case "colour" -> Style.COLOUR;
      default -> throw new Refusal("`" + style + "` is not a style. Give ink or colour.");
    };
  }

  private PoseFile viewed(PoseFile pose) {
    if (view.isEmpty()) {
      return pose;
    }
    return pose.seen(
        View.of(view)
            .orElseThrow(
                () ->
                    new Refusal(
                        "`" + view + "` is not a view" + Nearest.hint(view, View.words()) + ".")));
  }

  private PoseFile pose() {
    SourceFile file = file();
    List<Finding> findings = new ArrayList<>();
    List<PoseFile> poses = PoseReader.read(file, findings::add);
    Optional<Finding> error =
        findings.stream().filter(finding -> finding.level() == Level.ERROR).findFirst();
    error.ifPresent(
        finding -> {
          throw new Refusal(
              finding.at().file()
                  + ":"
                  + finding.at().line()
                  + ":"
                  + finding.at().column()
                  + ": "
                  + finding.what()
                  + " "
                  + finding.mend());
        });
    return poses.stream()
        .findFirst()
        .orElseThrow(() -> new Refusal("There is no pose in " + file.path() + "."));
  }

  private SourceFile poseFile(Files files) {
    try {
      return files
          .text(what)
          .orElseThrow(() -> new Refusal("There is no file `" + what + "` in the library."));
    } catch (IllegalArgumentException outside) {
      throw new Refusal(
          "`" + what + "` lies outside the library. Give a file in figures/, or --library DIR.");
    }
  }

  private SourceFile file() {
    Files files = common.files();
    if (what.endsWith(".yaml")) {
      return poseFile(files);
    }
    Library library = Library.read(files).library();
    Exercise exercise =
        library
            .exercise(what)
            .orElseThrow(
                () ->
                    new Refusal(
                        "There is no exercise `"
                            + what
                            + "`"
                            + Nearest.hint(
                                what, library.exercises().stream().map(Exercise::id).toList())
                            + "."));
    return exercise
        .start()
        .conditions()
        .figure()
        .flatMap(figure -> library.figure(figure.value()))
        .orElseThrow(() -> new Refusal("`" + what + "` has no figure that could be read."));
  }
}
