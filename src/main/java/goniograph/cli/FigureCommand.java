package goniograph.cli;

import goniograph.exchange.FactsJson;
import goniograph.figure.Figure;
import goniograph.figure.FigureOptions;
import goniograph.figure.FigurePng;
import goniograph.figure.LimbWords;
import goniograph.figure.Person;
import goniograph.figure.PoseTelling;
import goniograph.figure.Style;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.language.Language;
import goniograph.language.Phrases;
import goniograph.library.Library;
import goniograph.pose.PoseFile;
import goniograph.pose.Scene;
import goniograph.pose.Solved;
import goniograph.pose.View;
import goniograph.sheet.PictureWords;
import goniograph.source.Changes;
import goniograph.source.Files;
import goniograph.type.Direction;
import goniograph.type.FaceOrder;
import goniograph.type.Family;
import goniograph.type.TextOutline;
import goniograph.type.Weight;
import java.nio.charset.StandardCharsets;
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
    footer = {
      "%nA pose file is given by its name in figures/, for instance figures/hp-chair-rise.yaml. Of"
          + " a file with several poses every one is drawn, its id added to FILE."
    })
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

  @Option(names = "--pose", paramLabel = "ID", description = "One pose of a file with several.")
  private String only = "";

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

  @Option(
      names = "--watch",
      description = "Draws again whenever the file is saved, until it is stopped.")
  private boolean watch;

  FigureCommand(World world) {
    this.common = new Common(world);
  }

  @Override
  public Integer call() {
    if (out.isEmpty() && !facts) {
      throw new Refusal(
          "Say where the drawing goes with --out FILE.svg or --out FILE.png, or ask for --facts.");
    }
    PoseSource source = new PoseSource(common.files(), what);
    if (!watch) {
      return drawn(source, source.phrases());
    }
    try (Changes changes = source.files().changes(source.folder())) {
      watch(source, changes);
    }
    return Exit.CLEAN;
  }

  /** Draws at every change until the program is stopped; a broken file leaves the last drawing. */
  private void watch(PoseSource source, Changes changes) {
    Optional<Phrases> phrases = source.phrases();
    List<String> before = List.of();
    do {
      List<String> now = source.texts();
      if (!now.equals(before)) {
        attempt(source, phrases);
      }
      before = now;
    } while (changes.await());
  }

  private void attempt(PoseSource source, Optional<Phrases> phrases) {
    try {
      if (drawn(source, phrases) == Exit.CLEAN && !out.isEmpty()) {
        common.err().println("drawn  " + out);
      }
    } catch (Refusal refusal) {
      common.err().println(refusal.getMessage());
    }
    common.out().flush();
    common.err().flush();
  }

  /** Draws what can be drawn and names what is wrong. */
  private int drawn(PoseSource source, Optional<Phrases> phrases) {
    PoseSource.Seen seen = source.seen(only, this::viewed);
    seen.findings().forEach(finding -> common.err().println(line(finding)));
    for (Solved solved : seen.solved()) {
      if (facts) {
        common.out().println(FactsJson.of(solved));
      }
      if (!out.isEmpty()) {
        draw(solved, phrases, seen.solved().size() > 1);
      }
    }
    boolean errors = seen.findings().stream().anyMatch(one -> one.level() == Level.ERROR);
    return errors ? Exit.FINDINGS : Exit.CLEAN;
  }

  private static String line(Finding finding) {
    return finding.level().word()
        + " "
        + finding.at().file()
        + ":"
        + finding.at().line()
        + ":"
        + finding.at().column()
        + " "
        + finding.rule()
        + ": "
        + finding.what()
        + " "
        + finding.mend();
  }

  private void draw(Solved solved, Optional<Phrases> phrases, boolean several) {
    Scene scene = solved.scene();
    Figure figure = Figure.of(scene, options());
    figure.refusals().forEach(this::tell);
    String svg = figure.svg("", scene.id(), phrases.map(p -> words(p, scene)).orElse(scene.id()));
    byte[] bytes =
        switch (ending()) {
          case "svg" -> svg.getBytes(StandardCharsets.UTF_8);
          case "png" -> FigurePng.of(svg, figure.width());
          default ->
              throw new Refusal(
                  "`" + out + "` ends in neither .svg nor .png. Give one of the two.");
        };
    String path = several ? out.replaceFirst("(\\.[a-z]+)$", "-" + scene.id() + "$1") : out;
    int slash = path.lastIndexOf('/');
    Files folder = common.folder(slash < 0 ? "." : slash == 0 ? "/" : path.substring(0, slash));
    folder.write(path.substring(slash + 1), bytes);
  }

  private String words(Phrases phrases, Scene scene) {
    PictureWords words = PictureWords.of(phrases, PoseTelling.of(scene));
    return angles ? words.measured() : words.whole();
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
                        "`" + view + "` is not a view" + PoseSource.end(view, View.words()))));
  }
}
