package goniograph.render;

import static goniograph.render.Ink.hatch;
import static goniograph.render.Ink.line;
import static goniograph.render.Ink.mm;
import static goniograph.render.Ink.named;
import static goniograph.render.Ink.polar;
import static goniograph.render.Ink.polygon;

import goniograph.sheet.Counter;
import java.util.List;

/**
 * The small drawings of a page as inline SVG, one user unit a millimetre, black alone. Every glyph
 * carries its words; those that only rank or decorate carry none and are hidden from readers.
 *
 * @param rightToLeft true where counting runs from right to left
 * @param scale 1 for the standard layout
 */
public record Glyphs(boolean rightToLeft, double scale) {

  /** The counter's drawing. */
  public String counter(Counter counter) {
    return new CounterGlyphs(rightToLeft, scale).counter(counter);
  }

  /** One day's square of the diary. */
  public String diaryDay(double width, double height, int sessions) {
    return new CounterGlyphs(rightToLeft, scale).diaryDay(width, height, sessions);
  }

  /** Three upright bars, as many filled as the level's rank; ranks levels without colour. */
  public String levelBars(int rank) {
    StringBuilder drawn = new StringBuilder();
    double width = 3 * 1.7 + 2 * 1.1;
    for (int bar = 0; bar < 3; bar++) {
      double x = bar * 2.8;
      double at = rightToLeft ? width - x - 1.7 : x;
      drawn.append(
          bar < rank
              ? "<rect x=\"%s\" y=\"0\" width=\"1.7\" height=\"5\" fill=\"#000000\"/>"
                  .formatted(mm(at))
              : "<rect x=\"%s\" y=\"0.21\" width=\"1.28\" height=\"4.58\" fill=\"#FFFFFF\" stroke=\"#000000\" stroke-width=\"0.42\"/>"
                  .formatted(mm(at + 0.21)));
    }
    return svg(width, 5, "", drawn.toString());
  }

  /** The white octagon with a bar that stands on the black heading of the stop box alone. */
  public String octagon() {
    StringBuilder points = new StringBuilder();
    for (int corner = 0; corner < 8; corner++) {
      double[] p = polar(3.4, 3.0, 22.5 + 45 * corner);
      points.append(corner == 0 ? "M" : "L").append(mm(p[0])).append(' ').append(mm(p[1]));
    }
    return svg(
        6.8,
        6.8,
        "",
        "<path d=\"%sZ\" fill=\"none\" stroke=\"#FFFFFF\" stroke-width=\"0.8\"/>".formatted(points)
            + "<rect x=\"1.84\" y=\"2.88\" width=\"3.12\" height=\"1.04\" fill=\"#FFFFFF\"/>");
  }

  /** The floor under a panel, with an arrowhead at its end except on the last panel. */
  public String path(double width, boolean last) {
    double y = 1.7;
    String floor =
        line(new double[] {0, y}, new double[] {width, y}, 0.53)
            + (last
                ? ""
                : polygon(
                    List.of(
                        new double[] {mirrored(width, width), y},
                        new double[] {mirrored(width - 5.2, width), y - 1.5},
                        new double[] {mirrored(width - 5.2, width), y + 1.5})));
    return svg(width, 3.4, "", floor);
  }

  /** A square to tick. */
  public String tickSquare() {
    return svg(
        4.6,
        4.6,
        "",
        "<rect x=\"0.18\" y=\"0.18\" width=\"4.24\" height=\"4.24\" fill=\"#FFFFFF\" stroke=\"#000000\" stroke-width=\"0.36\"/>");
  }

  /** The sheet code as a square pattern, {@code size} mm wide with its quiet zone. */
  public String qr(List<String> rows, double size, String words) {
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < rows.size(); y++) {
      String row = rows.get(y);
      for (int x = 0; x < row.length(); x++) {
        int from = x;
        while (x < row.length() && row.charAt(x) == '#') {
          x++;
        }
        if (x > from) {
          path.append("M%d %dh%dv1h-%dz".formatted(from, y, x - from, x - from));
        }
      }
    }
    return ("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %d %d\"%s>"
            + "<path d=\"%s\" fill=\"#000000\"/></svg>")
        .formatted(mm(size), mm(size), rows.size(), rows.size(), named(words), path);
  }

  /** Stripes at both ends of the band of words on a sheet that is not final. */
  public String stripes() {
    return svg(54, 6.4, "", hatch(0, 0, 54, 6.4, 3.2, 0.9));
  }

  private double mirrored(double x, double width) {
    return rightToLeft ? width - x : x;
  }

  private String svg(double width, double height, String words, String drawn) {
    return Ink.svg(width, height, scale, words, drawn);
  }
}
