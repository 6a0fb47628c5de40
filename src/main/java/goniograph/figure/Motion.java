package goniograph.figure;

import goniograph.pose.Moment;
import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * A movement as a flip book for HTML: one SVG that holds every moment, and a style that shows them
 * in turn, there and back. No script; what does not move is drawn once. The style belongs into the
 * page, not into the SVG: renderers of files know no animation.
 */
public final class Motion {
  /** How long one frame stands, seconds. */
  private static final double FRAME = .2;

  /** How many frames long the start and the end are held. */
  private static final int HELD = 3;

  private final double width;
  private final double height;
  private final int frames;
  private final List<MotionLayers.Layer> layers;
  private final Map<BitSet, Integer> numbers = new LinkedHashMap<>();

  private Motion(double width, double height, int frames, List<MotionLayers.Layer> layers) {
    this.width = width;
    this.height = height;
    this.frames = frames;
    this.layers = layers;
    for (MotionLayers.Layer layer : layers) {
      if (layer.frames().cardinality() < frames) {
        numbers.putIfAbsent(layer.frames(), numbers.size() + 1);
      }
    }
  }

  /**
   * The flip book of a scene, one scale and one frame for all its moments, without marks or words;
   * empty where nothing moves.
   */
  public static Optional<Motion> of(Scene scene, FigureOptions options) {
    if (scene.motion().size() < 2) {
      return Optional.empty();
    }
    Scene seated = options.person().wheelchair() ? Wheelchair.in(scene) : scene;
    List<Step> steps = Steady.of(seated.motion()).stream().map(Motion::unmarked).toList();
    List<Panel> panels = new Framing(seated.unmarked(), options.bare()).framed(steps).panels();
    List<List<MotionLayers.Piece>> frames = panels.stream().map(Motion::pieces).toList();
    Panel first = panels.get(0);
    return Optional.of(
        new Motion(first.width(), first.height(), frames.size(), MotionLayers.of(frames)));
  }

  private static Step unmarked(Moment moment) {
    return new Step(moment, Optional.empty(), List.of(), true);
  }

  private static List<MotionLayers.Piece> pieces(Panel panel) {
    List<MotionLayers.Piece> pieces = new ArrayList<>();
    for (Paint paint : panel.paints()) {
      if (paint instanceof Paint.Area area) {
        add(pieces, "fill=\"" + area.colour() + "\"", area.shape());
      } else if (paint instanceof Paint.Line line) {
        for (int i = 0; i < line.shape().getNumGeometries(); i++) {
          add(pieces, pen(line), line.shape().getGeometryN(i));
        }
      }
    }
    return pieces;
  }

  private static void add(List<MotionLayers.Piece> pieces, String attributes, Geometry shape) {
    String path = CoarsePath.of(shape);
    if (!path.isEmpty()) {
      pieces.add(new MotionLayers.Piece(attributes, path));
    }
  }

  private static String pen(Paint.Line line) {
    return "stroke=\""
        + line.colour()
        + "\" stroke-width=\""
        + CoarsePath.units(line.width())
        + "\""
        + (line.round() ? " stroke-linecap=\"round\"" : "");
  }

  /**
   * The movement as SVG for a page that has its {@link #style}; without it, the start.
   *
   * @param prefix begins every class, id and animation name; different for every drawing on a page
   * @param words the text alternative
   */
  public String svg(String prefix, String words) {
    StringBuilder out = new StringBuilder();
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\"")
        .append(" aria-label=\"" + SvgWriter.escaped(words) + "\"")
        .append(" width=\"" + PathData.number(width) + "mm\"")
        .append(" height=\"" + PathData.number(height) + "mm\" viewBox=\"0 0 ")
        .append(CoarsePath.units(width) + " " + CoarsePath.units(height) + "\"")
        .append(" fill=\"none\" fill-rule=\"evenodd\" stroke-linejoin=\"round\">\n");
    groups(prefix, out);
    return out.append("</svg>\n").toString();
  }

  private void groups(String prefix, StringBuilder out) {
    for (int i = 0; i < layers.size(); ) {
      BitSet seen = layers.get(i).frames();
      Integer number = numbers.get(seen);
      out.append(number == null ? "<g>" : "<g class=\"" + prefix + "-" + number + "\">");
      while (i < layers.size() && layers.get(i).frames().equals(seen)) {
        String attributes = layers.get(i).piece().attributes();
        out.append("<path " + attributes + " d=\"");
        while (i < layers.size()
            && layers.get(i).frames().equals(seen)
            && layers.get(i).piece().attributes().equals(attributes)) {
          out.append(layers.get(i++).piece().path());
        }
        out.append("\"/>");
      }
      out.append("</g>\n");
    }
  }

  /** The style that shows one moment after the other; to be put into the page's own style. */
  public String style(String prefix) {
    StringBuilder out = new StringBuilder();
    List<Integer> turns = turns();
    String seconds = PathData.number(turns.size() * FRAME);
    numbers.forEach(
        (seen, number) -> {
          String name = prefix + "-" + number;
          out.append("." + name + "{" + visibility(seen.get(0)))
              .append(";animation:" + name + " " + seconds + "s step-end infinite}\n")
              .append("@keyframes " + name + "{");
          for (int i = 0; i < turns.size(); i++) {
            boolean now = seen.get(turns.get(i));
            if (i == 0 || now != seen.get(turns.get(i - 1))) {
              out.append(percent(i, turns.size()) + "{" + visibility(now) + "}");
            }
          }
          out.append("}\n");
        });
    return out.toString();
  }

  private static String percent(int turn, int of) {
    return PathData.number(100.0 * turn / of) + "%";
  }

  private static String visibility(boolean seen) {
    return "visibility:" + (seen ? "visible" : "hidden");
  }

  /** The frames in the order of time: held at the start, forth, held at the end, back. */
  private List<Integer> turns() {
    List<Integer> turns = new ArrayList<>();
    for (int i = 1; i < HELD; i++) {
      turns.add(0);
    }
    for (int i = 0; i < frames; i++) {
      turns.add(i);
    }
    for (int i = 1; i < HELD; i++) {
      turns.add(frames - 1);
    }
    for (int i = frames - 2; i > 0; i--) {
      turns.add(i);
    }
    return turns;
  }
}
