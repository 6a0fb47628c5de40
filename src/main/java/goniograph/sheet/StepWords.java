package goniograph.sheet;

import goniograph.library.Statement;
import goniograph.library.Vocabulary.Urgency;
import goniograph.matter.Body;
import goniograph.matter.Piece;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The steps with the care lines among them, and the care lines that the author placed nowhere.
 *
 * @param stop the statements of this sheet
 * @param first a line that comes before all others, for instance the warm-up
 */
record StepWords(StopWords stop, Optional<String> first) {

  Steps steps(Body body) {
    List<Steps.Item> items = new ArrayList<>();
    first.ifPresent(line -> items.add(new Steps.CareLine(line)));
    Set<String> placed = new HashSet<>();
    int number = 0;
    for (Piece piece : body.pieces("do")) {
      Optional<String> care = piece.careLine();
      if (care.isPresent()) {
        statement(care.get()).ifPresent(words -> items.add(new Steps.CareLine(words)));
        placed.add(care.get());
      } else {
        items.add(new Steps.Step(++number, stop.slots().fill(piece)));
      }
    }
    List<String> after =
        cautions().stream()
            .filter(statement -> !placed.contains(statement.id().value()))
            .map(stop::words)
            .toList();
    Wording wording = stop.slots().wording();
    return new Steps(wording.say("label.steps"), items, wording.say("label.care"), after);
  }

  private Optional<String> statement(String id) {
    return cautions().stream()
        .filter(statement -> statement.id().value().equals(id))
        .findFirst()
        .map(stop::words);
  }

  private List<Statement> cautions() {
    return stop.printed().of(Urgency.CAUTION);
  }
}
