package goniograph.dose;

import static goniograph.dose.Doses.dose;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand: each pair of criteria either can be kept together or cannot. */
class LadderConflictTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pain_at_most: 3   | pain_at_most: 5   |                          | ",
        "pain_at_most: 3   | pain_at_most: 3   |                          | ",
        "grabs_at_most: 1  | grabs_at_most: 3  | near_fall: 1             | ",
        "grabs_at_most: 4  | grabs_at_most: 3  | near_fall: 1             | go_up_when grabs_at_most",
        "pain_at_most: 4   | pain_at_most: 5   |                          | go_up_when pain_at_most",
        "pain_at_most: 2   | pain_at_most: 2   |                          | go_down_unless pain_at_most",
        "effort_at_most: 5 | pain_at_most: 5   |                          | ",
        "effort_at_most: 3 | pain_at_most: 5   |                          | go_up_when effort_at_most",
        "effort_at_most: 5 | effort_at_most: 4 |                          | go_up_when effort_at_most",
        "pain_at_most: 3   | pain_at_most: 5   | form_lost_before_reps: 8 | ",
        "pain_at_most: 3   | pain_at_most: 5   | form_lost_before_reps: 9 | go_down_when form_lost_before_reps"
      })
  void criteriaAreHeldAgainstEachOther(String up, String unless, String when, String conflict) {
    Ladder ladder =
        new Ladder(
            1,
            List.of(),
            Optional.empty(),
            criteria(up),
            criteria(unless),
            criteria(when),
            Optional.of(Decider.PATIENT));
    List<Dose> steps =
        List.of(
            dose("reps: 8, effort: 3..4, pain.during_max: 3"),
            dose("reps: 10, effort: 4..5, pain.during_max: 3"));
    assertEquals(
        Optional.ofNullable(conflict).orElse(""),
        LadderConflict.of(ladder, steps).stream()
            .map(one -> one.use().key() + " " + one.criterion().key())
            .collect(Collectors.joining(", ")));
  }

  private static Criteria criteria(String text) {
    Map<Criterion, DoseValue> values = new EnumMap<>(Criterion.class);
    Arrays.stream(Optional.ofNullable(text).orElse("").split(", "))
        .filter(one -> !one.isEmpty())
        .map(one -> one.split(": "))
        .forEach(
            pair -> {
              Criterion criterion = Criterion.ofKey(pair[0]).orElseThrow();
              values.put(criterion, criterion.type().read(pair[1]).value().orElseThrow());
            });
    return new Criteria(values);
  }
}
