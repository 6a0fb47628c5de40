package goniograph.render;

import goniograph.sheet.Counter;
import java.util.List;
import java.util.Locale;

/**
 * The small drawings of a page as inline SVG, one user unit a millimetre, black alone. Every glyph
 * carries its words; those that only rank or decorate carry none and are hidden from readers.
 *
 * @param rightToLeft true where counting runs from right to left
 * @param scale 1 for the standard layout
 */
public record Glyphs(boolean rightToLeft, double scale) {
  private static final double RING = 5.0;
  private static final double RING_GAP = 0.6;
  private static final double GROUP_GAP = 1.2;
  private static final double STROKE = 0.45;
  private static final double DAY = 6.3;
  private static final double CLOCK = 7.4;

  /** The counter's drawing. */
  public String counter(Counter counter) {
    if (counter instanceof Counter.Rings rings) {
      return rings(rings.count(), rings.words());
    } else if (counter instanceof Counter.Clock clock) {
      return clock(clock.words());
    } else if (counter instanceof Counter.HoldBar bar) {
      return holdBar(bar.seconds(), bar.words());
    }
    Counter.Week week = (Counter.Week) counter;
    return week(week.sessions(), week.words());
  }

  /** The width of a counter's drawing, mm. */
  public static double width(Counter counter) {
    if (counter instanceof Counter.Rings rings) {
      return ringsWidth(rings.count());
    } else if (counter instanceof Counter.Clock) {
      return CLOCK;
    } else if (counter instanceof Counter.HoldBar bar) {
      return holdTick(bar.seconds()) * bar.seconds() + STROKE;
    }
    return DAY * 7 + STROKE;
  }

  private static double ringsWidth(int count) {
    return ringPlace(count - 1) + RING + STROKE;
  }

  private static double holdTick(int seconds) {
    return seconds <= 5 ? 5.7 : Math.min(2.6, 52.0 / seconds);
  }

  /** Rings in groups of five. */
  public String rings(int count, String words) {
    StringBuilder drawn = new StringBuilder();
    double width = ringsWidth(count);
    for (int i = 0; i < count; i++) {
      double x = ringPlace(i) + (RING + STROKE) / 2;
      drawn.append(circle(mirrored(x, width), (RING + STROKE) / 2, RING / 2, STROKE));
    }
    return svg(width, RING + STROKE, words, drawn.toString());
  }

  private static double ringPlace(int index) {
    return index * (RING + RING_GAP) + groupsBefore(index) * GROUP_GAP;
  }

  /** Rings stand in groups of five. */
  private static int groupsBefore(int index) {
    return index / 5;
  }

  /** A clock that runs clockwise in every language. */
  public String clock(String words) {
    double r = 3.45;
    double c = CLOCK / 2;
    StringBuilder drawn = new StringBuilder(circle(c, c, r, 0.5));
    for (int tick = 0; tick < 4; tick++) {
      drawn.append(line(polar(c, 0.8 * r, 90 * tick), polar(c, 0.97 * r, 90 * tick), 0.42));
    }
    double arc = 0.56 * r;
    double[] from = polar(c, arc, 22);
    double[] to = polar(c, arc, 308);
    drawn.append(
        "<path d=\"M%s %sA%s %s 0 1 1 %s %s\" fill=\"none\" stroke=\"#000000\" stroke-width=\"0.55\"/>"
            .formatted(mm(from[0]), mm(from[1]), mm(arc), mm(arc), mm(to[0]), mm(to[1])));
    drawn.append(
        polygon(List.of(polar(c, 0.3 * r, 310), polar(c, 0.84 * r, 310), polar(c, arc, 352))));
    return svg(2 * c, 2 * c, words, drawn.toString());
  }

  /**
   * Up to five numbered boxes; above that a bar with a tick for each second, longer at each fifth.
   */
  public String holdBar(int seconds, String words) {
    double height = 5.5;
    double tick = holdTick(seconds);
    double width = tick * seconds + STROKE;
    StringBuilder drawn = new StringBuilder(box(0, 0, tick * seconds, height));
    for (int i = 1; i < seconds; i++) {
      double x = mirrored(tick * i + STROKE / 2, width);
      double top = i % 5 == 0 || seconds <= 5 ? 0 : height * 0.55;
      drawn.append(
          line(
              new double[] {x, top + STROKE / 2},
              new double[] {x, height + STROKE / 2},
              i % 5 == 0 && seconds > 5 ? STROKE : 0.3));
    }
    return svg(width, height + STROKE, words, drawn.toString());
  }

  /** Seven days: a ring for each session, hatching for a day of rest. */
  public String week(List<Integer> sessions, String words) {
    int most = sessions.stream().mapToInt(Integer::intValue).max().orElse(1);
    double height = most > 1 ? 3.6 * Math.min(most, 3) + 2.4 : DAY;
    double width = DAY * 7 + STROKE;
    StringBuilder drawn = new StringBuilder();
    for (int day = 0; day < sessions.size(); day++) {
      double x = rightToLeft ? DAY * (6 - day) : DAY * day;
      drawn.append(day(x, height, sessions.get(day)));
    }
    return svg(width, height + STROKE, words, drawn.toString());
  }

  /** One day's square, as the week strip and the diary draw it. */
  public String diaryDay(double width, double height, int sessions) {
    StringBuilder drawn = new StringBuilder();
    if (sessions == 0) {
      hatch(drawn, 0, 0, width, height, 1.9);
    }
    double d = 5;
    double gap = 1;
    double all = sessions * d + (sessions - 1) * gap;
    for (int i = 0; i < sessions; i++) {
      drawn.append(circle((width - all) / 2 + d / 2 + i * (d + gap), height / 2, d / 2, STROKE));
    }
    return svg(width, height, "", drawn.toString());
  }

  private static String day(double x, double height, int sessions) {
    StringBuilder drawn = new StringBuilder();
    double inset = STROKE / 2;
    if (sessions == 0) {
      hatch(drawn, x + inset, inset, DAY, height, 1.5);
    }
    double d = sessions <= 1 ? 0.68 * DAY : 3.0;
    for (int i = 0; i < sessions; i++) {
      double y = height * (i + 0.5) / sessions;
      drawn.append(circle(x + inset + DAY / 2, inset + y, d / 2, STROKE));
    }
    drawn.append(
        "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"none\" stroke=\"#000000\" stroke-width=\"0.3\"/>"
            .formatted(mm(x + inset), mm(inset), mm(DAY), mm(height)));
    return drawn.toString();
  }

  private static void hatch(
      StringBuilder drawn, double x, double y, double width, double height, double pitch) {
    double step = pitch * Math.sqrt(2);
    for (double c = step / 2; c < width + height; c += step) {
      double x0 = Math.max(0, c - height);
      double x1 = Math.min(width, c);
      drawn.append(
          line(
              new double[] {x + x0, y + Math.min(height, c)},
              new double[] {x + x1, y + Math.max(0, c - width)},
              0.33));
    }
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
    StringBuilder drawn = new StringBuilder();
    double step = 3.2 * Math.sqrt(2);
    for (double c = step / 2; c < 54 + 6.4; c += step) {
      double x0 = Math.max(0, c - 6.4);
      double x1 = Math.min(54, c);
      drawn.append(
          line(new double[] {x0, Math.min(6.4, c)}, new double[] {x1, Math.max(0, c - 54)}, 0.9));
    }
    return svg(54, 6.4, "", drawn.toString());
  }

  private double mirrored(double x, double width) {
    return rightToLeft ? width - x : x;
  }

  private String svg(double width, double height, String words, String drawn) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\"%s>%s</svg>"
        .formatted(
            mm(width * scale), mm(height * scale), mm(width), mm(height), named(words), drawn);
  }

  private static String named(String words) {
    return words.isEmpty()
        ? " aria-hidden=\"true\" alt=\"\""
        : " role=\"img\" aria-label=\"%1$s\" alt=\"%1$s\"".formatted(Markup.attribute(words));
  }

  private static String circle(double x, double y, double r, double stroke) {
    return "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"#FFFFFF\" stroke=\"#000000\" stroke-width=\"%s\"/>"
        .formatted(mm(x), mm(y), mm(r), mm(stroke));
  }

  private static String box(double x, double y, double width, double height) {
    return "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"#FFFFFF\" stroke=\"#000000\" stroke-width=\"%s\"/>"
        .formatted(mm(x + STROKE / 2), mm(y + STROKE / 2), mm(width), mm(height), mm(STROKE));
  }

  private static String line(double[] from, double[] to, double stroke) {
    return "<path d=\"M%s %sL%s %s\" fill=\"none\" stroke=\"#000000\" stroke-width=\"%s\"/>"
        .formatted(mm(from[0]), mm(from[1]), mm(to[0]), mm(to[1]), mm(stroke));
  }

  private static String polygon(List<double[]> points) {
    StringBuilder path = new StringBuilder();
    for (double[] p : points) {
      path.append(path.isEmpty() ? "M" : "L").append(mm(p[0])).append(' ').append(mm(p[1]));
    }
    return "<path d=\"%sZ\" fill=\"#000000\"/>".formatted(path);
  }

  private static double[] polar(double centre, double radius, double degrees) {
    double a = Math.toRadians(degrees);
    return new double[] {centre + radius * Math.sin(a), centre - radius * Math.cos(a)};
  }

  private static String mm(double value) {
    String text = String.format(Locale.ROOT, "%.3f", value);
    String short1 = text.replaceAll("0+$", "");
    return short1.endsWith(".") ? short1.substring(0, short1.length() - 1) : short1;
  }
}
