package goniograph.library;

import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Shape;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the front matter of a programme. */
final class ProgrammeReader {
  private static final Pattern WEEKS = Pattern.compile("([1-9][0-9]?)(?:\\.\\.([1-9][0-9]?))?");
  private static final Spelling<Programme.Weeks> WEEK_RANGE =
      ((Spelling<Programme.Weeks>) ProgrammeReader::weeks)
          .shaped(
              new Shape.AnyOf(
                  List.of(new Shape.Whole(1, 99), new Shape.Text("[1-9][0-9]?\\.\\.[1-9][0-9]?"))));

  private ProgrammeReader() {}

  static Programme read(Form form, Common common) {
    return new Programme(
        common,
        form.optional("for").list(Spellings.ID_WORD),
        form.required("phases", "[ { weeks: 1..2, add: [hp-chair-rise] } ]")
            .list(item -> item.form("a phase", ProgrammeReader::phase).flatMap(Located::value)));
  }

  private static Optional<Programme.Phase> phase(Form form) {
    var weeks = form.required("weeks", "1..2").as(WEEK_RANGE);
    List<Located<String>> add = form.optional("add").list(Spellings.ID_WORD);
    List<Located<String>> drop = form.optional("drop").list(Spellings.ID_WORD);
    var replace = PrecautionReader.swaps(form.optional("replace"));
    var steps = steps(form.optional("steps"));
    return weeks.map(given -> new Programme.Phase(given, add, drop, replace, steps));
  }

  private static List<Programme.OnStep> steps(Value value) {
    return value.form("steps", Form::entries).map(Located::value).orElse(List.of()).stream()
        .flatMap(
            entry ->
                entry.value().as(Spellings.integer(1, LadderReader.MOST_STEPS)).stream()
                    .map(step -> new Programme.OnStep(entry.key(), step)))
        .toList();
  }

  private static Optional<Programme.Weeks> weeks(String raw, Spelling.Refusal refusal) {
    Matcher found = WEEKS.matcher(raw);
    if (found.matches()) {
      int first = Integer.parseInt(found.group(1));
      int last = found.group(2) == null ? first : Integer.parseInt(found.group(2));
      if (first <= last) {
        return Optional.of(new Programme.Weeks(first, last));
      }
    }
    refusal.because(
        "programme-weeks",
        "`" + raw + "` is not a range of weeks.",
        "Write the first and last week with two dots: `1..2`.");
    return Optional.empty();
  }
}
