package goniograph.register;

import goniograph.finding.Finding;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;

/**
 * What a language version of an entry lacks before its sheet may be final.
 *
 * @param entry the entry
 * @param version the version as it stands
 * @param signed who has signed it
 */
record VersionReasons(EntryDigests entry, VersionDigests version, EntryRegister signed) {

  List<Reason> all() {
    if (version.pieces().isEmpty()) {
      return List.of(
          reason(
              State.MISSING,
              Print.NONE,
              Finding.note(
                  "version-missing",
                  Span.of(entry.file()),
                  name() + " does not exist.",
                  "Its sheet cannot be printed in this language.",
                  "Write `" + version.language() + ".md` beside the source text.")));
    }
    List<Reason> reasons = new ArrayList<>();
    if (!version.missing().isEmpty()) {
      reasons.add(missing());
    }
    if (!version.stale().isEmpty()) {
      reasons.add(stale());
    }
    reasons.addAll(signatures());
    return reasons;
  }

  private Reason missing() {
    return reason(
        State.MISSING,
        Print.NONE,
        Finding.warning(
            "piece-missing",
            Span.of(version.file()),
            name() + " lacks " + String.join(", ", version.missing()) + ".",
            "A sheet is printed in one language whole, never mixed and never shorter.",
            "Translate what is missing, then have the version signed."));
  }

  private Reason stale() {
    return reason(
        State.STALE,
        Print.STALE,
        Finding.warning(
            "piece-stale",
            Span.of(version.file()),
            name() + " is behind its source in " + String.join(", ", version.stale()) + ".",
            "It may tell the patient something else than what the clinic now stands by.",
            "Compare these pieces with the source text, then have the version signed."));
  }

  private List<Reason> signatures() {
    List<PieceRecord> recorded = signed.pieces(version.language());
    boolean untouched =
        recorded.stream().map(PieceRecord::target).toList().equals(version.pieces());
    Signatures signatures = signed.version(version.language());
    if (!untouched && signatures.all().isEmpty()) {
      return List.of(unrecorded());
    }
    String digest = untouched ? Digests.version(recorded) : String.join(" ", version.pieces());
    return new SignatureReasons(
            Duty.VERSION,
            name(),
            entry.id() + " --language " + version.language(),
            version.file(),
            Print.STALE)
        .of(signatures, Text.source(digest)).stream()
            .map(one -> one.withLanguage(version.language()))
            .toList();
  }

  private Reason unrecorded() {
    return reason(
        State.UNRECORDED,
        Print.DRAFT,
        Finding.note(
            "version-unrecorded",
            Span.of(version.file()),
            name() + " is not recorded: nobody has said which source text it was made from.",
            "Without the record nobody notices when the source text changes.",
            "Have its translator sign: `register sign "
                + entry.id()
                + " --language "
                + version.language()
                + " --as ROLE-ID --role translator`."));
  }

  private String name() {
    return "`" + entry.id() + "` in " + version.language();
  }

  private Reason reason(State state, Print print, Finding finding) {
    return new Reason(state, print, finding.withLanguage(version.language()));
  }
}
