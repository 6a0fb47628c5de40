package goniograph.translation;

import static goniograph.translation.PieceState.State.FRESH;
import static goniograph.translation.PieceState.State.LEFT_OVER;
import static goniograph.translation.PieceState.State.MISSING;
import static goniograph.translation.PieceState.State.STALE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import goniograph.matter.Body;
import goniograph.matter.EntryFile;
import goniograph.source.SourceFile;
import goniograph.translation.PieceState.State;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ComparisonTest {

  @Test
  void everyPieceIsFreshBehindItsRecord() {
    assertEquals(
        "title FRESH, do 1 FRESH, do 2 FRESH",
        shown(body("Sit. Stand."), body("Siad. Wstań."), records("Sit. Stand.", "Siad. Wstań.")));
  }

  @Test
  void withoutRecordsAVersionIsUnrecordedAndGapsAreMissing() {
    assertEquals(
        "title UNRECORDED, do 1 UNRECORDED, do 2 MISSING",
        shown(body("Sit. Stand."), body("Siad."), List.of()));
  }

  @Test
  void aPieceEditedBehindItsRecordIsUnrecorded() {
    assertEquals(
        "title FRESH, do 1 UNRECORDED, do 2 FRESH",
        shown(body("Sit. Stand."), body("Usiądź. Wstań."), records("Sit. Stand.", "Siad. Wstań.")));
  }

  @Test
  void aPieceThatTheSourceDroppedIsLeftOver() {
    assertEquals(
        "title FRESH, do 1 FRESH, do 1 LEFT_OVER",
        shown(body("Stand."), body("Siad. Wstań."), records("Sit. Stand.", "Siad. Wstań.")));
  }

  @Test
  void slotsAloneNeedNoRecord() {
    assertEquals(
        "title UNRECORDED, do 1 FRESH",
        shown(body("{s-breathe}."), body("{s-breathe}."), List.of()));
  }

  /** Property: inserting one step anywhere makes that step missing and leaves the rest fresh. */
  @Test
  void anInsertedStepMakesOnlyItselfMissing() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      List<Integer> before = steps(random);
      List<Integer> after = new ArrayList<>(before);
      int place = random.nextInt(before.size() + 1);
      after.add(place, 99);
      assertEquals(List.of(place), others(before, after, MISSING), "seed " + seed);
    }
  }

  /** Property: changing one step makes that step stale and leaves the rest fresh. */
  @Test
  void aChangedStepMakesOnlyItselfStale() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      List<Integer> before = steps(random);
      List<Integer> after = new ArrayList<>(before);
      int place = random.nextInt(before.size());
      after.set(place, 99);
      assertEquals(List.of(place), others(before, after, STALE), "seed " + seed);
    }
  }

  /** Property: moving one step by two places or more makes that step stale, the rest is fresh. */
  @Test
  void aMovedStepMakesOnlyItselfStale() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      List<Integer> before = steps(random);
      int from = random.nextInt(before.size());
      List<Integer> after = new ArrayList<>(before);
      Integer step = after.remove(from);
      int to = random.nextInt(before.size());
      after.add(to, step);
      if (Math.abs(from - to) > 1) {
        assertEquals(List.of(to), others(before, after, STALE), "seed " + seed);
      }
    }
  }

  /** Property: after any shuffling, dropping and adding nothing is counted twice or forgotten. */
  @Test
  void everyPieceHasExactlyOneState() {
    for (int seed = 0; seed < 500; seed++) {
      Random random = new Random(seed);
      List<Integer> before = steps(random);
      List<Integer> after = new ArrayList<>(before);
      Collections.shuffle(after, random);
      after = new ArrayList<>(after.subList(0, random.nextInt(after.size() + 1)));
      for (int added = random.nextInt(3); added > 0; added--) {
        after.add(random.nextInt(after.size() + 1), 100 + added);
      }
      List<PieceState> states = compare(before, after);
      assertEquals(
          after.size(), states.stream().filter(s -> s.state() != LEFT_OVER).count(), "" + seed);
      assertEquals(
          before.size(), states.stream().filter(s -> s.state() != MISSING).count(), "" + seed);
      assertEquals(
          before.size(),
          states.stream().flatMap(s -> s.version().stream()).distinct().count(),
          "" + seed);
    }
  }

  @Test
  void aDoseNumberIsNoPartOfTheDigest() {
    assertEquals(digest("Count to {hold.count}."), digest("Count  to\n{hold.count}."));
    String entry = "---\nhold: 5 s\n---\n# T\n## do\n1. Hold {hold}.\n";
    assertEquals(
        TextPiece.of(read(entry)).get(1).digest(),
        TextPiece.of(read(entry.replace("5 s", "10 s"))).get(1).digest());
  }

  @Test
  void whatCountsForTheDigest() {
    assertEquals(digest("Sit *tall* now."), digest("Sit _tall_ now."));
    assertNotEquals(digest("Sit tall now."), digest("Sit *tall* now."));
    assertNotEquals(digest("Sit *tall* now."), digest("Sit **tall** now."));
    assertNotEquals(digest("Hold {hold}."), digest("Hold {rest}."));
    assertNotEquals(digest("Left."), digest("Right."));
    assertNotEquals(digest("A \\*b\\* c."), digest("A *b* c."));
    assertEquals(digest("A & b."), digest("A &amp; b."));
  }

  /** Unicode Standard Annex 15: composed and decomposed spellings are one text. */
  @Test
  void composedAndDecomposedLettersAreOne() {
    String vietnamese = "Đứng thẳng, giữ lưng.";
    String apart = Normalizer.normalize(vietnamese, Normalizer.Form.NFD);
    assertNotEquals(vietnamese, apart);
    assertEquals(digest(vietnamese), digest(apart));
  }

  private static String digest(String text) {
    return TextPiece.of(read("# T\n## do\n" + text + "\n")).get(1).digest();
  }

  private static List<Integer> steps(Random random) {
    return IntStream.rangeClosed(1, 2 + random.nextInt(7)).boxed().toList();
  }

  /** Places in the source that are not fresh; all must have the state expected. */
  private static List<Integer> others(List<Integer> before, List<Integer> after, State expected) {
    List<PieceState> states = compare(before, after);
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < states.size(); i++) {
      if (states.get(i).state() != FRESH) {
        assertEquals(expected, states.get(i).state());
        places.add(i);
      }
    }
    return places;
  }

  /** The source after a change against the version made, and recorded, before it. */
  private static List<PieceState> compare(List<Integer> before, List<Integer> after) {
    List<PieceRecord> records = new ArrayList<>();
    List<TextPiece> source = TextPiece.of(list("step ", before));
    List<TextPiece> version = TextPiece.of(list("krok ", before));
    for (int i = 1; i < source.size(); i++) {
      records.add(new PieceRecord(source.get(i).digest(), version.get(i).digest()));
    }
    return Comparison.of(list("step ", after), list("krok ", before), records).stream()
        .filter(state -> !state.name().equals("title"))
        .toList();
  }

  private static Body list(String word, List<Integer> steps) {
    StringBuilder text = new StringBuilder("# T\n## do\n");
    steps.forEach(step -> text.append("1. ").append(word).append(step).append("\n"));
    return read(text.toString());
  }

  private static List<PieceRecord> records(String source, String version) {
    List<TextPiece> from = TextPiece.of(body(source));
    List<TextPiece> to = TextPiece.of(body(version));
    return IntStream.range(0, from.size())
        .mapToObj(i -> new PieceRecord(from.get(i).digest(), to.get(i).digest()))
        .toList();
  }

  private static String shown(Body source, Body version, List<PieceRecord> records) {
    List<String> words = new ArrayList<>();
    Comparison.of(source, version, records)
        .forEach(state -> words.add(state.name() + " " + state.state()));
    return String.join(", ", words);
  }

  /** One step for each sentence. */
  private static Body body(String sentences) {
    StringBuilder text = new StringBuilder("# T\n## do\n");
    for (String step : sentences.split("\\. ?")) {
      text.append("1. ").append(step).append("\n");
    }
    return read(text.toString());
  }

  private static Body read(String text) {
    return EntryFile.read(SourceFile.of("x.md", text)).body();
  }
}
