package goniograph.check.rules;

import goniograph.library.Entry;
import goniograph.library.Version;
import goniograph.register.EntryRegister;
import goniograph.register.RegisterReader;
import goniograph.translation.Comparison;
import goniograph.translation.PieceRecord;
import goniograph.translation.PieceState;
import java.util.List;

/** How the pieces of a language version stand to their source. */
final class Pieces {
  private Pieces() {}

  static List<PieceState> states(Entry entry, Version version) {
    EntryRegister register = RegisterReader.entry(entry).value();
    List<PieceRecord> records =
        register.pieces(version.language()).stream()
            .map(record -> new PieceRecord(record.source(), record.target()))
            .toList();
    return Comparison.of(entry.text(), version.body(), records);
  }
}
