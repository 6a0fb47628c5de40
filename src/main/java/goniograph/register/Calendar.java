package goniograph.register;

import goniograph.finding.Finding;
import goniograph.source.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the day and the recall list say about an entry.
 *
 * @param entry the entry
 * @param register holds the recalls
 * @param today the day that counts as today
 */
record Calendar(EntryDigests entry, SharedRegister register, LocalDate today) {
  /** From so many days before the review is due there is a warning. */
  private static final int NEAR_DAYS = 60;

  /** When the review is overdue by more than so many days, nothing is printed. */
  private static final int LATE_DAYS = 90;

  List<Reason> reasons() {
    List<Reason> reasons = new ArrayList<>();
    register.recall(entry.id()).ifPresent(recall -> reasons.add(recalled(recall, entry.file())));
    entry.reviewDue().flatMap(this::review).ifPresent(reasons::add);
    return reasons;
  }

  static Reason recalled(Recall recall, String file) {
    String instead = recall.replacedBy().map(id -> " Use `" + id + "`.").orElse("");
    return new Reason(
        State.RECALLED,
        Print.NONE,
        Finding.warning(
            "recalled",
            Span.of(file),
            "`" + recall.id() + "` was recalled on " + recall.on() + ": " + recall.reason(),
            "Someone decided that it must no longer reach a patient.",
            "Do not hand it out." + instead));
  }

  private Optional<Reason> review(LocalDate due) {
    if (!today.isAfter(due.minusDays(NEAR_DAYS))) {
      return Optional.empty();
    }
    if (!today.isAfter(due)) {
      return Optional.of(new Reason(State.READY, Print.FINAL, near(due)));
    }
    boolean late = today.isAfter(due.plusDays(LATE_DAYS));
    return Optional.of(
        new Reason(State.OVERDUE, late ? Print.NONE : Print.OVERDUE, overdue(due, late)));
  }

  private Finding near(LocalDate due) {
    return finding("The review of `" + entry.id() + "` is due by " + due + ".");
  }

  private Finding overdue(LocalDate due, boolean late) {
    String end = late ? "; the sheet is no longer printed." : ".";
    return finding("The review of `" + entry.id() + "` was due by " + due + end);
  }

  private Finding finding(String what) {
    return Finding.warning(
        "review-due",
        Span.of(entry.file()),
        what,
        "What was right when it was written may no longer be.",
        "Have a clinician review it, write the next day into `review_due`, and sign it again.");
  }
}
