package goniograph.render;

import java.util.List;
import java.util.Locale;

/** Shapes as SVG, one user unit a millimetre, in black and white alone. */
final class Ink {
  /** Of rings and boxes. */
  static final double STROKE = 0.45;

  private Ink() {}

  /** A drawing; without words it is hidden from readers. */
  static String svg(double width, double height, double scale, String words, String drawn) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\"%s>%s</svg>"
        .formatted(
            mm(width * scale), mm(height * scale), mm(width), mm(height), named(words), drawn);
  }

  /** Attributes that name a drawing, or hide one without words. */
  static String named(String words) {
    return words.isEmpty()
        ? " aria-hidden=\"true\" alt=\"\""
        : " role=\"img\" aria-label=\"%1$s\" alt=\"%1$s\"".formatted(Markup.attribute(words));
  }

  /** Lines from lower left to upper right that fill a box, {@code pitch} apart. */
  static String hatch(
      double x, double y, double width, double height, double pitch, double stroke) {
    StringBuilder drawn = new StringBuilder();
    double step = pitch * Math.sqrt(2);
    for (double c = step / 2; c < width + height; c += step) {
      double[] from = {x + Math.max(0, c - height), y + Math.min(height, c)};
      double[] to = {x + Math.min(width, c), y + Math.max(0, c - width)};
      drawn.append(line(from, to, stroke));
    }
    return drawn.toString();
  }

  static String circle(double x, double y, double r, double stroke) {
    return "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"#FFFFFF\" stroke=\"#000000\" stroke-width=\"%s\"/>"
        .formatted(mm(x), mm(y), mm(r), mm(stroke));
  }

  static String box(double x, double y, double width, double height) {
    return "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"#FFFFFF\" stroke=\"#000000\" stroke-width=\"%s\"/>"
        .formatted(mm(x + STROKE / 2), mm(y + STROKE / 2), mm(width), mm(height), mm(STROKE));
  }

  static String line(double[] from, double[] to, double stroke) {
    return "<path d=\"M%s %sL%s %s\" fill=\"none\" stroke=\"#000000\" stroke-width=\"%s\"/>"
        .formatted(mm(from[0]), mm(from[1]), mm(to[0]), mm(to[1]), mm(stroke));
  }

  static String polygon(List<double[]> points) {
    StringBuilder path = new StringBuilder();
    for (double[] p : points) {
      path.append(path.isEmpty() ? "M" : "L").append(mm(p[0])).append(' ').append(mm(p[1]));
    }
    return "<path d=\"%sZ\" fill=\"#000000\"/>".formatted(path);
  }

  static double[] polar(double centre, double radius, double degrees) {
    double a = Math.toRadians(degrees);
    return new double[] {centre + radius * Math.sin(a), centre - radius * Math.cos(a)};
  }

  static String mm(double value) {
    String text = String.format(Locale.ROOT, "%.3f", value);
    String digits = text.replaceAll("0+$", "");
    return digits.endsWith(".") ? digits.substring(0, digits.length() - 1) : digits;
  }
}
