package goniograph.docs;

import goniograph.figure.Figure;
import goniograph.figure.FigureOptions;
import goniograph.figure.PoseTelling;
import goniograph.figure.Style;
import goniograph.figure.Weights;
import goniograph.language.Language;
import goniograph.language.Phrases;
import goniograph.library.Library;
import goniograph.pose.PoseFile;
import goniograph.pose.PoseSolver;
import goniograph.pose.Scene;
import goniograph.sheet.PictureWords;
import goniograph.source.DiskFiles;
import goniograph.type.Direction;
import goniograph.type.FaceOrder;
import goniograph.type.Family;
import goniograph.type.TextOutline;
import goniograph.type.Weight;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;

/** The small drawings of the guide, each with the words that the tool gives it. */
final class GuideDrawings {
  static final Library LIBRARY = Library.read(DiskFiles.at(Path.of(""))).library();
  private static final Phrases PHRASES =
      Phrases.of(
          Language.ENGLISH, LIBRARY.phrases(Library.SOURCE_LANGUAGE).orElseThrow().patterns());
  private static final double WIDE = 40;
  private static final double HIGH = 44;

  private final SortedMap<String, String> files = new TreeMap<>();

  /** What was drawn, by the name of its file. */
  SortedMap<String, String> files() {
    return files;
  }

  /**
   * Draws a pose with its angles and gives the Markdown that shows it.
   *
   * @param name the file's name without ending
   */
  String drawn(String name, PoseFile pose) {
    Scene scene = PoseSolver.solve(pose).scene();
    String words = PictureWords.of(PHRASES, PoseTelling.of(scene)).whole();
    files.put(name + ".svg", Figure.of(scene, options(WIDE, HIGH)).svg(name, pose.id(), words));
    return "![" + words + "](poses/" + name + ".svg)";
  }

  private static FigureOptions options(double wide, double high) {
    return FigureOptions.STANDARD
        .sized(wide, high, Weights.STANDARD)
        .forTherapist()
        .lettered(GuideDrawings::outline, (side, group) -> java.util.Optional.empty());
  }

  /** A figure of the library as a sheet shows it. */
  static Figure figure(Scene scene, Style style) {
    return Figure.of(scene, FigureOptions.STANDARD.sized(60, 60, Weights.STANDARD).in(style));
  }

  private static TextOutline outline(String text, double size) {
    FaceOrder faces = FaceOrder.of(Family.LATIN, Weight.BOLD, Language.ENGLISH.tag());
    return TextOutline.of(text, faces, Direction.AUTO, size);
  }
}
