package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.library.Version;
import goniograph.matter.Located;
import java.util.List;
import java.util.stream.Stream;

/** A claim mark in the text that no evidence of the entry answers. */
public final class ClaimUnknown implements VersionRule {
  private static final RulePage PAGE =
      RulePage.of(
          "claim-unknown",
          "`[id]` behind a sentence names a claim that the entry's `evidence` does not have; the"
              + " nearest is offered.",
          "The reviewer could not see what the sentence rests on.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.ADVICE, "[next-morning-test]", "«[next-moring-test]»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    List<String> known = entry.common().claims();
    Stream<Located<String>> claims =
        version.body().pieces().stream()
            .flatMap(piece -> piece.claims().stream())
            .map(claim -> new Located<>(claim.id(), claim.at()));
    return References.unknown(this, claims, "claim", known, "add it to `evidence` with its source");
  }
}
