package goniograph.figure;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Paints as SVG in mm. Only what every renderer draws alike: svg, title, desc, g, path, clipPath;
 * presentation attributes, hex colours, no style sheet, no text, no reference to the outside.
 */
final class SvgWriter {
  /** What most paths have in common. */
  private static final String PENS =
      " fill=\"none\" fill-rule=\"evenodd\" stroke-linecap=\"round\""
          + " stroke-linejoin=\"round\">\n";

  private final StringBuilder out = new StringBuilder();
  private final String prefix;

  /**
   * @param prefix begins every id, so that figures can share a page
   */
  SvgWriter(String prefix, String title, String description, double width, double height) {
    this.prefix = prefix;
    open(title, description, PathData.number(width), PathData.number(height));
  }

  private void open(String title, String description, String width, String height) {
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\"")
        .append(" width=\"" + width + "mm\" height=\"" + height + "mm\"")
        .append(" viewBox=\"0 0 " + width + " " + height + "\"")
        .append(" alt=\"" + escaped(description) + "\"")
        .append(" aria-labelledby=\"" + id("title") + " " + id("desc") + "\">\n")
        .append("<title id=\"" + id("title") + "\">" + escaped(title) + "</title>\n")
        .append("<desc id=\"" + id("desc") + "\">" + escaped(description) + "</desc>\n");
  }

  private String id(String name) {
    return escaped(prefix) + "-" + name;
  }

  /** Paints within a frame of its own, moved to {@code x}, {@code y} and clipped to it. */
  void panel(int number, double x, double y, double width, double height, List<Paint> paints) {
    String clip = id("clip-" + number);
    out.append("<clipPath id=\"" + clip + "\"><path d=\"M0 0h" + PathData.number(width))
        .append("v" + PathData.number(height) + "H0z\"/></clipPath>\n");
    out.append("<g id=\"" + id("panel-" + number) + "\"");
    if (x != 0 || y != 0) {
      out.append(" transform=\"translate(" + PathData.number(x) + " " + PathData.number(y) + ")\"");
    }
    out.append(" clip-path=\"url(#" + clip + ")\"" + PENS);
    paints.forEach(this::paint);
    out.append("</g>\n");
  }

  /** Paints over everything, not clipped. */
  void free(List<Paint> paints) {
    out.append("<g" + PENS);
    paints.forEach(this::paint);
    out.append("</g>\n");
  }

  String finished() {
    return out.append("</svg>\n").toString();
  }

  private void paint(Paint paint) {
    if (paint instanceof Paint.Area area) {
      out.append("<path fill=\"" + area.colour() + "\"");
      path(area.lined() ? PathData.coarse(area.shape()) : PathData.of(area.shape()));
    } else if (paint instanceof Paint.Line line) {
      out.append("<path stroke=\"" + line.colour() + "\"");
      out.append(" stroke-width=\"" + PathData.number(line.width()) + "\"");
      out.append(line.round() ? "" : " stroke-linecap=\"butt\"");
      out.append(line.dash().isEmpty() ? "" : " stroke-dasharray=\"" + dash(line.dash()) + "\"");
      boolean white = line.colour().equals(Style.PAPER);
      path(white ? PathData.coarse(line.shape()) : PathData.of(line.shape()));
    } else if (paint instanceof Paint.Word word) {
      word(word);
    }
  }

  private void word(Paint.Word word) {
    String at =
        " transform=\"translate("
            + PathData.number(word.x())
            + " "
            + PathData.number(word.y())
            + ")\"";
    if (word.casing() > 0) {
      out.append("<path stroke=\"" + Style.PAPER + "\" stroke-width=\"")
          .append(PathData.number(2 * word.casing()) + "\"" + at);
      path(word.path());
    }
    out.append("<path fill=\"" + word.colour() + "\"" + at);
    path(word.path());
  }

  private void path(String data) {
    out.append(" d=\"" + data + "\"/>\n");
  }

  private static String dash(List<Double> lengths) {
    return lengths.stream().map(PathData::number).collect(Collectors.joining(" "));
  }

  static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
