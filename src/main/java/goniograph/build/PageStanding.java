package goniograph.build;

import goniograph.register.Print;
import goniograph.register.Releases;
import goniograph.register.Standing;
import goniograph.sheet.Approval;
import goniograph.sheet.Approval.BandKind;
import java.util.Optional;

/**
 * How a sheet stands in the registers, as its band and foot say it.
 *
 * @param releases the frozen releases
 */
record PageStanding(Releases releases) {

  /** What the page says; a draft has no code, so nobody can take it for the released sheet. */
  Approval of(Standing standing) {
    Optional<Releases.Released> released =
        standing.print() == Print.DRAFT ? Optional.empty() : releases.find(standing);
    return new Approval(
        band(standing.print()),
        released.map(found -> found.release().name()),
        standing.approved(),
        released.map(found -> found.sheet().code().grouped()),
        !standing.qualified());
  }

  private static Optional<BandKind> band(Print print) {
    return switch (print) {
      case FINAL -> Optional.empty();
      case OVERDUE -> Optional.of(BandKind.OVERDUE);
      case STALE -> Optional.of(BandKind.STALE);
      case DRAFT, NONE -> Optional.of(BandKind.DRAFT);
    };
  }
}
