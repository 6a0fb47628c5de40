package goniograph.library;

import goniograph.library.Vocabulary.Certainty;
import goniograph.library.Vocabulary.EvidenceKind;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Reads the fields that every kind of entry has. */
record CommonReader(
    List<Located<String>> statements,
    List<Evidence> evidence,
    Optional<Located<LocalDate>> reviewDue) {

  static CommonReader read(Form form) {
    return new CommonReader(
        form.optional("statements").list(Spellings.ID_WORD),
        form.optional("evidence")
            .list(item -> item.form("evidence", CommonReader::evidence).map(Located::value)),
        form.required("review_due", "2027-05-31").as(Spellings.DAY));
  }

  private static Evidence evidence(Form form) {
    return new Evidence(
        form.required("claim", "walking-helps").as(Spellings.ID_WORD),
        form.required("kind", "guideline").as(Spellings.oneOf(EvidenceKind.class)),
        form.required("ref", "clinic-note-14").as(Spellings.ID_WORD),
        form.required("looked_at", "2026-05-11").as(Spellings.DAY),
        form.required("certainty", "low").as(Spellings.oneOf(Certainty.class)));
  }
}
