package goniograph.type;

import java.awt.Font;
import java.awt.font.GlyphVector;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** Shapes one run of one face and one direction. */
final class RunShaper {
  /** From here up the layout engine's glyph codes stand for glyphs that it took away. */
  private static final int TAKEN_AWAY = 0xFFFE;

  /** A cluster by its places: characters from start to end, glyphs from first to last. */
  private record Group(int start, int end, int first, int last) {}

  private final String text;
  private final Face face;
  private final boolean rightToLeft;
  private final GlyphVector glyphs;

  private final int[] codes;
  private final double[] pens;

  private RunShaper(String text, Face face, boolean rightToLeft, String language) {
    this.text = text;
    this.face = face;
    this.rightToLeft = rightToLeft;
    glyphs =
        face.font()
            .layoutGlyphVector(
                Face.PAPER,
                text.toCharArray(),
                0,
                text.length(),
                rightToLeft ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT);
    codes = new int[glyphs.getNumGlyphs()];
    pens = new double[codes.length + 1];
    place(face.localForms(language));
  }

  /** Takes the language's own glyphs and moves what stands behind a wider or narrower one. */
  private void place(Map<Integer, Integer> localForms) {
    double moved = 0;
    for (int i = 0; i < codes.length; i++) {
      int code = glyphs.getGlyphCode(i);
      codes[i] = localForms.getOrDefault(code, code);
      pens[i] = glyphs.getGlyphPosition(i).getX() + moved;
      moved += codes[i] == code ? 0 : face.sfnt().advance(codes[i]) - face.sfnt().advance(code);
    }
    pens[codes.length] = glyphs.getGlyphPosition(codes.length).getX() + moved;
  }

  /** The run's clusters from left to right. */
  static List<Cluster> shape(String text, Runs.Run run, String language) {
    String piece = text.substring(run.start(), run.end());
    return new RunShaper(piece, run.face(), run.rightToLeft(), language).clusters();
  }

  private List<Cluster> clusters() {
    List<Group> groups = groups();
    if (rightToLeft) {
      Collections.reverse(groups);
    }
    List<Cluster> clusters = new ArrayList<>(groups.size());
    double origin = 0;
    for (int i = 0; i < groups.size(); i++) {
      double next = i + 1 < groups.size() ? origin(groups.get(i + 1)) : x(glyphs.getNumGlyphs());
      clusters.add(cluster(groups.get(i), origin, next));
      origin = next;
    }
    return clusters;
  }

  private Cluster cluster(Group group, double origin, double next) {
    List<PlacedGlyph> placed = new ArrayList<>();
    for (int i = group.first; i <= group.last; i++) {
      int code = codes[i];
      if (code < TAKEN_AWAY && face.sfnt().glyph(code).limit() > 0) {
        placed.add(new PlacedGlyph(code, x(i) - origin, -glyphs.getGlyphPosition(i).getY()));
      }
    }
    return new Cluster(words(group), face, placed, next - origin, rightToLeft);
  }

  private String words(Group group) {
    StringBuilder words = new StringBuilder();
    text.substring(group.start, group.end)
        .codePoints()
        .filter(c -> !Characters.isDirectionControl(c))
        .forEach(words::appendCodePoint);
    return words.toString();
  }

  /** The pen's place at a cluster: that of its base, whose marks stand before it in RTL runs. */
  private double origin(Group group) {
    return x(rightToLeft ? group.last : group.first);
  }

  private double x(int glyph) {
    return pens[glyph];
  }

  /**
   * The clusters in reading order. A boundary stands between two glyphs when every glyph before it
   * belongs to earlier characters than every glyph behind it.
   */
  private List<Group> groups() {
    int count = glyphs.getNumGlyphs();
    int[] bases = bases();
    int[] earliestBehind = new int[count + 1];
    earliestBehind[count] = text.length();
    for (int i = count - 1; i >= 0; i--) {
      earliestBehind[i] = Math.min(earliestBehind[i + 1], bases[character(i)]);
    }
    List<Group> groups = new ArrayList<>();
    int first = 0;
    int latest = 0;
    int start = 0;
    for (int i = 0; i < count; i++) {
      latest = Math.max(latest, bases[character(i)]);
      if (latest < earliestBehind[i + 1]) {
        groups.add(group(start, earliestBehind[i + 1], first, i));
        start = earliestBehind[i + 1];
        first = i + 1;
      }
    }
    return groups;
  }

  private Group group(int start, int end, int first, int last) {
    return rightToLeft
        ? new Group(start, end, glyph(last), glyph(first))
        : new Group(start, end, first, last);
  }

  /** The character of the i-th glyph in reading order. */
  private int character(int i) {
    return glyphs.getGlyphCharIndex(glyph(i));
  }

  /** The place on the line of the i-th glyph in reading order. */
  private int glyph(int i) {
    return rightToLeft ? glyphs.getNumGlyphs() - 1 - i : i;
  }

  /** For each character the one it leans on: itself, or the letter before its marks. */
  private int[] bases() {
    int[] bases = new int[text.length()];
    int base = 0;
    for (int i = 0; i < text.length(); i++) {
      boolean leans =
          Character.isLowSurrogate(text.charAt(i))
              || Characters.leansOnPrevious(text.codePointAt(i));
      base = leans ? base : i;
      bases[i] = base;
    }
    return bases;
  }
}
