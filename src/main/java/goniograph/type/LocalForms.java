package goniograph.type;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The glyphs a language wants instead of those its script commonly has, such as the Nepali digits
 * five and eight (OpenType {@code GSUB}, feature {@code locl}, single substitutions). The layout
 * engine of the JDK cannot be told a language, so they are changed after shaping; a letter that
 * shaping has already changed, such as a half form, keeps its common shape.
 */
final class LocalForms {
  /** Primary language subtags and their tags in the OpenType registry. */
  private static final Map<String, String> TAGS =
      Map.of(
          "ne", "NEP ", "mr", "MAR ", "ur", "URD ", "ks", "KSH ", "sd", "SND ", "ro", "ROM ", "sr",
          "SRB ", "mk", "MKD ");

  private static final int SINGLE = 1;

  private final ByteBuffer gsub;
  private final String tag;
  private final Map<Integer, Integer> forms = new TreeMap<>();

  private LocalForms(ByteBuffer gsub, String tag) {
    this.gsub = gsub;
    this.tag = tag;
  }

  /** Glyph numbers and what stands for them in a language; empty where nothing changes. */
  static Map<Integer, Integer> of(Sfnt sfnt, String language) {
    String tag = TAGS.get(Locale.forLanguageTag(language).getLanguage());
    if (tag == null || !sfnt.has("GSUB")) {
      return Map.of();
    }
    LocalForms local = new LocalForms(sfnt.table("GSUB"), tag);
    local.readScripts(local.u16(4));
    return Collections.unmodifiableMap(local.forms);
  }

  private void readScripts(int list) {
    for (int i = 0; i < u16(list); i++) {
      int script = list + u16(list + 6 + 6 * i);
      for (int j = 0; j < u16(script + 2); j++) {
        int entry = script + 4 + 6 * j;
        if (tag(entry).equals(tag)) {
          readLanguage(script + u16(entry + 4));
        }
      }
    }
  }

  private void readLanguage(int language) {
    int features = u16(6);
    for (int i = 0; i < u16(language + 4); i++) {
      int entry = features + 2 + 6 * u16(language + 6 + 2 * i);
      if (tag(entry).equals("locl")) {
        readFeature(features + u16(entry + 4));
      }
    }
  }

  private void readFeature(int feature) {
    int lookups = u16(8);
    for (int i = 0; i < u16(feature + 2); i++) {
      int lookup = lookups + u16(lookups + 2 + 2 * u16(feature + 4 + 2 * i));
      for (int j = 0; j < u16(lookup + 4) && u16(lookup) == SINGLE; j++) {
        readSubstitutions(lookup + u16(lookup + 6 + 2 * j));
      }
    }
  }

  private void readSubstitutions(int table) {
    int coverage = table + u16(table + 2);
    boolean byDifference = u16(table) == 1;
    int index = 0;
    if (u16(coverage) == 1) {
      for (int i = 0; i < u16(coverage + 2); i++) {
        put(table, byDifference, index++, u16(coverage + 4 + 2 * i));
      }
    } else {
      for (int i = 0; i < u16(coverage + 2); i++) {
        int range = coverage + 4 + 6 * i;
        for (int glyph = u16(range); glyph <= u16(range + 2); glyph++) {
          put(table, byDifference, index++, glyph);
        }
      }
    }
  }

  private void put(int table, boolean byDifference, int index, int glyph) {
    int form = byDifference ? glyph + u16(table + 4) & 0xFFFF : u16(table + 6 + 2 * index);
    forms.put(glyph, form);
  }

  private int u16(int at) {
    return Short.toUnsignedInt(gsub.getShort(at));
  }

  private String tag(int at) {
    byte[] tag = new byte[4];
    gsub.get(at, tag);
    return new String(tag, StandardCharsets.US_ASCII);
  }
}
