package goniograph.render;

import static goniograph.render.Ink.STROKE;
import static goniograph.render.Ink.box;
import static goniograph.render.Ink.circle;
import static goniograph.render.Ink.hatch;
import static goniograph.render.Ink.line;
import static goniograph.render.Ink.mm;
import static goniograph.render.Ink.polar;
import static goniograph.render.Ink.polygon;

import goniograph.sheet.Counter;
import java.util.List;

/**
 * What is counted, drawn: rings for times, a clock for rest, a bar for a hold, a strip for the
 * week.
 *
 * @param rightToLeft true where counting runs from right to left
 * @param scale 1 for the standard layout
 */
record CounterGlyphs(boolean rightToLeft, double scale) {
  private static final double RING = 5.0;
  private static final double RING_GAP = 0.6;
  private static final double GROUP_GAP = 1.2;
  private static final double DAY = 6.3;
  private static final double CLOCK = 7.4;

  /** The counter's drawing. */
  String counter(Counter counter) {
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
  static double width(Counter counter) {
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
  String rings(int count, String words) {
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
  String clock(String words) {
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
  String holdBar(int seconds, String words) {
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
  String week(List<Integer> sessions, String words) {
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
  String diaryDay(double width, double height, int sessions) {
    StringBuilder drawn = new StringBuilder();
    if (sessions == 0) {
      drawn.append(hatch(0, 0, width, height, 1.9, 0.33));
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
      drawn.append(hatch(x + inset, inset, DAY, height, 1.5, 0.33));
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

  private double mirrored(double x, double width) {
    return rightToLeft ? width - x : x;
  }

  private String svg(double width, double height, String words, String drawn) {
    return Ink.svg(width, height, scale, words, drawn);
  }
}
