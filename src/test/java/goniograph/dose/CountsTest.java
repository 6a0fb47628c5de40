package goniograph.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.dose.Fault.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CountsTest {
  private static final Counts REPS = new Counts(1, 999);

  @Test
  void readsPlainWholeNumbers() {
    assertEquals(8, REPS.read("8").value().orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"2..3", "..3", "2..", "4"})
  void readsScores(String text) {
    assertEquals(text, Counts.SCORE.readRange(text).value().orElseThrow().toString());
  }

  @ParameterizedTest
  @CsvSource({
    "8 reps, UNIT_UNWANTED, 8",
    "8x, UNIT_UNWANTED, 8",
    "010, LEADING_ZERO, 10",
    "٨, FOREIGN_DIGITS, 8",
    "3x10, TWO_NUMBERS, 3",
    "8.5, NOT_WHOLE, 3",
    "0, OUT_OF_BOUNDS, 3",
    "-3, OUT_OF_BOUNDS, 3",
    "1000, OUT_OF_BOUNDS, 3",
    "eight, NOT_A_NUMBER, 3"
  })
  void saysWhatIsWrong(String raw, Kind kind, String right) {
    Fault fault = REPS.read(raw).fault().orElseThrow();
    assertEquals(kind, fault.kind(), fault.what());
    assertEquals(List.of(right), fault.spellings());
  }

  @Test
  void aScoreEndsAtTen() {
    assertEquals(Kind.OUT_OF_BOUNDS, Counts.SCORE.readRange("3..11").fault().orElseThrow().kind());
    assertEquals(List.of("2..3"), Counts.SCORE.readRange("2-3").fault().orElseThrow().spellings());
    assertEquals(Kind.RANGE_REVERSED, Counts.SCORE.readRange("4..2").fault().orElseThrow().kind());
  }
}
