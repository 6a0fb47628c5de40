package goniograph.library;

import goniograph.library.Vocabulary.Certainty;
import goniograph.library.Vocabulary.EvidenceKind;
import goniograph.matter.Located;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a claim of the text rests on.
 *
 * @param claim id of the claim, as in the text's {@code [id]}
 * @param kind what kind of evidence
 * @param ref id of the source
 * @param lookedAt when someone last looked at it
 * @param certainty how certain it is
 */
public record Evidence(
    Optional<Located<String>> claim,
    Optional<Located<EvidenceKind>> kind,
    Optional<Located<String>> ref,
    Optional<Located<LocalDate>> lookedAt,
    Optional<Located<Certainty>> certainty) {}
