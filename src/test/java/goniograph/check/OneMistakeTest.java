package goniograph.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One mistake in an entry is one error: a wrong unit does not raise three. */
class OneMistakeTest {
  private static final DemoLibrary DEMO = new DemoLibrary();

  /** entry | what stands there | the mistake | the one finding, an error on that line. */
  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          ba-heel-toe-stand | rest: 20 s | rest: 20 min | dose-limit
          ba-heel-toe-stand | relax: 20 s | relax: 20 min | dose-limit
          ba-heel-toe-stand | relax: 20 s | relax: 20 | quantity-unit-missing
          ba-heel-toe-stand | relax: 20 s | relax: 20 kg | quantity-unit-wrong
          ba-heel-toe-stand | reps: 3 | reps: 30 | dose-limit
          ba-heel-toe-stand | reps: 3 | reps: 3 s | quantity-unit-wrong
          ba-heel-toe-stand | n: 2, hold: 30 s | n: 2, hold: 300 s | dose-limit
          ba-heel-toe-stand | n: 1, hold: 20 s | n: 1, hold: 20 cm | quantity-unit-wrong
          ba-heel-toe-stand | position: standing | position: stnding | field-word
          ba-heel-toe-stand | s-fall-hurt, | s-fal-hurt, | statement-unknown
          ba-heel-toe-stand | s-fall-hurt, | ~~ | support-when-unsteady
          ba-heel-toe-stand | duration: 8 wk | duration: 80 wk | dose-limit
          ba-heel-toe-stand | per_day: 1 | per_day: 10 | quantity-out-of-bounds
          ba-heel-toe-stand | effort: 2..4 | effort: 2..14 | quantity-out-of-bounds
          ba-heel-toe-stand | sides: { | sdes: { | field-unknown
          ba-heel-toe-stand | - { tag: dizziness, | - { tag: dizzyness, | tag-unknown
          hp-chair-rise | tempo: { lift: 2 s | tempo: { lift: 2 min | dose-limit
          hp-chair-rise | seat_height: 42 cm | seat_height: 42 mm | quantity-unit-wrong
          hp-chair-rise | seat_height: 42 cm | seat_height: 420 cm | dose-limit
          hp-chair-rise | reps: 12, seat_height: 45 cm | reps: 120, seat_height: 45 cm | dose-limit
          hp-chair-rise | during_max: 3 | during_max: 30 | quantity-out-of-bounds
          hp-chair-rise | figure: hp-chair-rise | figure: hp-chair-ris | figure-unknown
          hp-chair-rise | Press your feet | Press your right foot | side-in-text
          hp-chair-rise | Take {tempo.lower} | Take {tempo.lowr} | slot-unknown
          hp-chair-rise | s-rise-wait, | ~~ | rise-slowly
          hp-chair-rise | review_due: 2027-05-31 | review_due: 2027-05-32 | field-date
          sh-row-band | rest: 90 s | rest: 90 min | dose-limit
          sh-row-band | length_end: 150 cm | length_end: 150 kg | quantity-unit-wrong
          sh-row-band | days_per_week: 3 | days_per_week: 30 | quantity-out-of-bounds
          sh-row-band | s-band-check, | ~~ | band-whole
          sh-row-band | load.band: band-medium | load.band: band-medum | band-unknown
          ad-how-much-pain | ref: silbernagel-2007 | ref: silbernagl-2007 | source-unknown
          """)
  void oneError(String entry, String was, String is, String rule) {
    String path = DEMO.library().entry(entry).orElseThrow().common().file().path();
    String text = DEMO.text(path);
    assertTrue(text.contains(was), was);
    String spoilt = text.replaceFirst(Pattern.quote(was), Matcher.quoteReplacement(is));
    List<Finding> found = DEMO.fresh(entry, Map.of(path, spoilt));
    assertEquals(List.of(rule), found.stream().map(Finding::rule).toList(), () -> "" + found);
    assertEquals(Level.ERROR, found.get(0).level());
    int line = DemoLibrary.line(text, text.indexOf(was));
    assertEquals(line, found.get(0).at().line(), () -> "" + found);
  }
}
