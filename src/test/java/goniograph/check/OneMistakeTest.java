package goniograph.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One mistake in an entry is one error: a wrong unit does not raise three. */
class OneMistakeTest {
  private static final DemoLibrary DEMO = new DemoLibrary();

  /** entry | what stands there | the mistake | the one error. */
  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          ba-heel-toe-stand | rest: 20 s | rest: 20 min | x
          ba-heel-toe-stand | relax: 20 s | relax: 20 min | x
          ba-heel-toe-stand | relax: 20 s | relax: 20 | x
          ba-heel-toe-stand | relax: 20 s | relax: 20 kg | x
          ba-heel-toe-stand | reps: 3 | reps: 30 | x
          ba-heel-toe-stand | reps: 3 | reps: 3 s | x
          ba-heel-toe-stand | n: 2, hold: 30 s | n: 2, hold: 300 s | x
          ba-heel-toe-stand | n: 1, hold: 20 s | n: 1, hold: 20 cm | x
          ba-heel-toe-stand | position: standing | position: stnding | x
          ba-heel-toe-stand | s-fall-hurt, | s-fal-hurt, | x
          ba-heel-toe-stand | s-fall-hurt, | ~~ | x
          ba-heel-toe-stand | duration: 8 wk | duration: 80 wk | x
          ba-heel-toe-stand | per_day: 1 | per_day: 10 | x
          ba-heel-toe-stand | effort: 2..4 | effort: 2..14 | x
          ba-heel-toe-stand | sides: { | sdes: { | x
          ba-heel-toe-stand | - { tag: dizziness, | - { tag: dizzyness, | x
          hp-chair-rise | tempo: { lift: 2 s | tempo: { lift: 2 min | x
          hp-chair-rise | seat_height: 42 cm | seat_height: 42 mm | x
          hp-chair-rise | seat_height: 42 cm | seat_height: 420 cm | x
          hp-chair-rise | reps: 12, seat_height: 45 cm | reps: 120, seat_height: 45 cm | x
          hp-chair-rise | during_max: 3 | during_max: 30 | x
          hp-chair-rise | figure: hp-chair-rise | figure: hp-chair-ris | x
          hp-chair-rise | Press your feet | Press your right foot | x
          hp-chair-rise | Take {tempo.lower} | Take {tempo.lowr} | x
          hp-chair-rise | s-rise-wait, | ~~ | x
          hp-chair-rise | review_due: 2027-05-31 | review_due: 2027-05-32 | x
          sh-row-band | rest: 90 s | rest: 90 min | x
          sh-row-band | length_end: 150 cm | length_end: 1500 cm | x
          sh-row-band | days_per_week: 3 | days_per_week: 30 | x
          sh-row-band | s-band-check, | ~~ | x
          sh-row-band | load.band: band-medium | load.band: band-medum | x
          ad-how-much-pain | ref: silbernagel-2007 | ref: silbernagl-2007 | x
          """)
  void oneError(String entry, String was, String is, String rule) {
    String path = DEMO.library().entry(entry).orElseThrow().common().file().path();
    String text = DEMO.text(path);
    assertTrue(text.contains(was), was);
    List<Finding> found = DEMO.fresh(entry, Map.of(path, text.replaceFirst(java.util.regex.Pattern.quote(was), java.util.regex.Matcher.quoteReplacement(is))));
    System.out.println("ONE " + entry + " | " + was + " | " + is + " => " + found.stream().map(f -> f.level() + " " + f.rule() + " " + f.at().line() + " " + f.what()).toList());
  }
}
