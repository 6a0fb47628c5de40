package goniograph.sheet;

import java.time.LocalDate;
import java.util.Optional;

/**
 * How far a sheet may be trusted on the day it is made: what its band and foot say.
 *
 * @param band what stands across the page, empty where the sheet is final
 * @param release name of the release that froze it
 * @param approved the day of the last signature that counts
 * @param code the sheet code, in groups
 * @param unread true where no qualified translator has read it
 */
public record Approval(
    Optional<BandKind> band,
    Optional<String> release,
    Optional<LocalDate> approved,
    Optional<String> code,
    boolean unread) {
  /** Nothing signed, nothing released. */
  public static final Approval DRAFT =
      new Approval(
          Optional.of(BandKind.DRAFT), Optional.empty(), Optional.empty(), Optional.empty(), false);

  /** Why a sheet is not final. */
  public enum BandKind {
    /** Something it needs is not signed. */
    DRAFT("band.draft"),
    /** Its translation is older than its source. */
    STALE("band.stale"),
    /** Its review is overdue. */
    OVERDUE("band.overdue");

    private final String phrase;

    BandKind(String phrase) {
      this.phrase = phrase;
    }

    String phrase() {
      return phrase;
    }
  }
}
