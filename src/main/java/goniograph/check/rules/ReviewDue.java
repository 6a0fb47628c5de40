package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.matter.Located;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.stream.Stream;

/** A review that is due soon, or overdue. */
public final class ReviewDue implements Rule {
  /** Days before the review from which on it is announced. */
  private static final int NOTICE_DAYS = 60;

  /** Days behind it from which on the sheet is no longer printed. */
  private static final int GRACE_DAYS = 90;

  private static final RulePage PAGE =
      RulePage.of(
          "review-due",
          "The day by which the entry must be reviewed is 60 days away or nearer, or past.",
          "What was right two years ago may not be. Past the day sheets carry a band of words; 90"
              + " days past it they are not printed.",
          RulePage.PRACTICE,
          Acceptance.CLINICIAN,
          Example.in(
              ExampleFiles.CHAIR_RISE, "review_due: 2027-05-31", "review_due: «2027-01-10»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    return checked
        .entries()
        .flatMap(
            entry ->
                entry.reviewDue().stream().flatMap(due -> finding(entry, due, checked.today())));
  }

  private Stream<Finding> finding(Entry entry, Located<LocalDate> due, LocalDate today) {
    long left = ChronoUnit.DAYS.between(today, due.value());
    if (left > NOTICE_DAYS) {
      return Stream.empty();
    }
    return Stream.of(
        warning(due.at(), words(left), "Review the entry, sign it, and write the next day here.")
            .withBecause("today is " + today)
            .withEntry(entry.id()));
  }

  private static String words(long left) {
    if (left < -GRACE_DAYS) {
      return "The review is " + -left + " days overdue: the sheet is no longer printed.";
    }
    return left < 0
        ? "The review is " + -left + " days overdue: the sheet says so in a band."
        : "The review is due in " + left + " days.";
  }
}
