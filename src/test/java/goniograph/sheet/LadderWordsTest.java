package goniograph.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.language.Language;
import goniograph.language.Phrases;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.source.DiskFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Ladders of the demo library in words: the highest rung first, only what changes, today marked.
 */
class LadderWordsTest {
  private final Library demo = Library.read(DiskFiles.at(Path.of(""))).library();

  private Wording english() {
    TreeMap<String, String> messages = new TreeMap<>();
    demo.phrases("en")
        .orElseThrow()
        .messages()
        .forEach((id, text) -> messages.put(id, text.value()));
    return new Wording(Phrases.of(Language.ENGLISH, messages));
  }

  private List<String> rungs(String id, int today) {
    Exercise exercise = demo.exercise(id).orElseThrow();
    return new LadderWords(english(), exercise)
        .picture(today).orElseThrow().rungs().stream()
            .map(rung -> (rung.dose() + " " + rung.today()).strip() + " | " + rung.more())
            .toList();
  }

  @Test
  void setsAreWrittenOutAndALowerSeatIsSaid() {
    assertEquals(
        List.of(
            "12 + 12 + 12 | seat 42 cm", "12 + 12 | ", "10 + 10 today | ", "8 + 8 | seat 45 cm"),
        rungs("hp-chair-rise", 2));
  }

  @Test
  void holdsAreCountedAndBalanceWordsAreSaid() {
    assertEquals(
        List.of(
            "count to 20 | turning your head, someone beside you, with your therapist",
            "count to 30 | hand above the support",
            "count to 30 | ",
            "count to 20 today | fingertips"),
        rungs("ba-heel-toe-stand", 1));
  }

  /**
   * job.md 5.2: all must hold to go up; one no longer holding, or one event, means one step down.
   */
  @Test
  void criteriaSayWhenToGoUpAndDown() {
    Exercise exercise = demo.exercise("ba-heel-toe-stand").orElseThrow();
    List<LabelledLines> criteria =
        new CriteriaWords(english()).of(exercise.ladder().orElseThrow().ladder());
    assertEquals(
        List.of(
            new LabelledLines(
                "Go up when",
                List.of(
                    "you did all of it 5 days running",
                    "you grabbed hold 1 time at most",
                    "Stay 7 days or more on each step.")),
            new LabelledLines(
                "Go down when",
                List.of(
                    "soreness over 5 of 10",
                    "not settled the next morning",
                    "you grabbed hold more than 3 times",
                    "you nearly fell"))),
        criteria);
  }
}
