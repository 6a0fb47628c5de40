package goniograph.check.rules;

import goniograph.check.Checked;
import goniograph.library.Entry;
import goniograph.library.Library;
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

  /** None where one of the two texts was misread: what differs then says nothing new. */
  static List<PieceState> states(Entry entry, Version version, Checked checked) {
    boolean source = version.language().equals(Library.SOURCE_LANGUAGE);
    boolean well =
        checked.readWell(version)
            && entry.version(Library.SOURCE_LANGUAGE).filter(checked::readWell).isPresent();
    return source || !well ? List.of() : compared(entry, version);
  }

  private static List<PieceState> compared(Entry entry, Version version) {
    EntryRegister register = RegisterReader.entry(entry).value();
    List<PieceRecord> records =
        register.pieces(version.language()).stream()
            .map(record -> new PieceRecord(record.source(), record.target()))
            .toList();
    return Comparison.of(entry.text(), version.body(), records);
  }
}
