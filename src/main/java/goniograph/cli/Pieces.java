package goniograph.cli;

import goniograph.library.Entry;
import goniograph.matter.Body;
import goniograph.matter.Piece;
import goniograph.register.PiecePair;
import goniograph.source.Digest;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;

final class Pieces {
  private Pieces() {}

  static List<PiecePair> pairs(Entry entry, String language) {
    Body source = entry.text();
    Body target =
        entry
            .version(language)
            .orElseThrow(() -> new Refusal("There is no " + language + ".md"))
            .body();
    List<PiecePair> pairs = new ArrayList<>();
    for (int i = 0; i < target.pieces().size(); i++) {
      pairs.add(new PiecePair(digest(source.pieces().get(i)), digest(target.pieces().get(i))));
    }
    return pairs;
  }

  private static String digest(Piece piece) {
    return Digest.of(
        Normalizer.normalize(piece.text().replaceAll("\\s+", " ").strip(), Normalizer.Form.NFC));
  }
}
