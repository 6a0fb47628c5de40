package goniograph.sheet;

import goniograph.check.PrintedStatements;
import goniograph.library.Statement;
import goniograph.library.Vocabulary.Urgency;
import goniograph.matter.Spellings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Statements as they print: the stop box, and the care lines. */
record StopWords(SlotWords slots, PrintedStatements printed, String language) {
  private static final List<Urgency> BOX =
      List.of(Urgency.EMERGENCY, Urgency.CALL_US, Urgency.EASE_OFF);

  StopBox box() {
    Wording wording = slots.wording();
    List<StopBox.Row> rows = new ArrayList<>();
    for (Urgency urgency : BOX) {
      List<String> statements = printed.of(urgency).stream().map(this::words).toList();
      if (!statements.isEmpty()) {
        rows.add(new StopBox.Row(BOX.size() - BOX.indexOf(urgency), label(urgency), statements));
      }
    }
    return new StopBox(wording.say("stop.heading"), rows);
  }

  /** The words of a statement in this language. */
  String words(Statement statement) {
    return statement.text(language).map(text -> slots.fill(text.value())).orElse("");
  }

  private String label(Urgency urgency) {
    return slots
        .wording()
        .say(
            "stop." + Spellings.word(urgency),
            Map.of("number", ContactWords.phone(slots.clinic().emergency().value())));
  }
}
