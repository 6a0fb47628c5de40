package goniograph.sheet;

import goniograph.dose.DoseRows;
import goniograph.language.Dates;
import goniograph.language.Language;
import goniograph.library.Clinic;
import goniograph.library.Equipment;
import goniograph.library.Exercise;
import goniograph.library.LocatedLadder;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Supervision;
import goniograph.matter.Body;
import goniograph.matter.Piece;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The second page of a leaf: to learn and to mark on. */
record BackWords(SlotWords slots, Language language, Clinic clinic) {
  private static final int WEEKS = 4;

  Back back(String title, Exercise exercise, Rung rung, Body body, DoseRows rows) {
    Wording wording = slots.wording();
    return new Back(
        title,
        lines(body, exercise),
        new LadderWords(wording, exercise).picture(rung.n()),
        exercise
            .ladder()
            .map(LocatedLadder::ladder)
            .map(new CriteriaWords(wording)::of)
            .orElse(List.of()),
        equipment(exercise),
        writing(exercise, rung),
        diary(rows));
  }

  private List<LabelledLine> lines(Body body, Exercise exercise) {
    List<LabelledLine> lines = new ArrayList<>();
    section(body, "feel").ifPresent(lines::add);
    slots
        .painMost()
        .ifPresent(
            most ->
                lines.add(
                    new LabelledLine(
                        say("label.all-right"),
                        slots.wording().say("all-right.pain", Map.of("most", most)))));
    section(body, "easier").ifPresent(lines::add);
    if (exercise.ladder().isEmpty()) {
      section(body, "harder").ifPresent(lines::add);
    }
    return lines;
  }

  private Optional<LabelledLine> section(Body body, String key) {
    List<Piece> pieces = body.pieces(key);
    return pieces.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new LabelledLine(
                say("label." + key),
                pieces.stream().map(slots::fill).collect(Collectors.joining(" "))));
  }

  private Optional<LabelledLines> equipment(Exercise exercise) {
    return exercise.equipment().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new LabelledLines(
                say("label.needs"), exercise.equipment().stream().map(this::thing).toList()));
  }

  private String thing(Equipment equipment) {
    String thing = say("equipment." + equipment.id().value());
    String orElse =
        equipment
            .instead()
            .map(
                other ->
                    slots
                        .wording()
                        .say(
                            "equipment.instead",
                            Map.of("thing", thing, "instead", say("equipment." + other.value()))))
            .orElse(thing);
    return equipment
        .check()
        .map(
            check ->
                slots
                    .wording()
                    .say(
                        "equipment.with-check",
                        Map.of("thing", orElse, "check", say("check." + check.value()))))
        .orElse(orElse);
  }

  private Writing writing(Exercise exercise, Rung rung) {
    List<String> mine =
        exercise.equipment().stream()
            .map(equipment -> "writing.mine." + equipment.id().value())
            .filter(slots.wording()::has)
            .map(this::say)
            .limit(1)
            .toList();
    boolean shown =
        rung.conditions()
            .supervision()
            .map(word -> word.value() != Supervision.INDEPENDENT)
            .orElse(false);
    List<TickLine> ticks = shown ? List.of(new TickLine(say("writing.shown"))) : List.of();
    return new Writing(finishBy(), ticks, mine, say("writing.note"));
  }

  /** The date is written by hand; how long the dose runs stands beside it. */
  private String finishBy() {
    String words = say("writing.finish-by");
    return slots
        .dose()
        .duration()
        .map(weeks -> words + " (" + slots.wording().amount(weeks) + ")")
        .orElse(words);
  }

  private Diary diary(DoseRows rows) {
    Dates dates = new Dates(language);
    DayOfWeek first =
        Optional.ofNullable(clinic.weekStarts().get(language.tag()))
            .map(day -> day.value())
            .orElseGet(dates::firstDay);
    List<String> days =
        Dates.week(first).stream().map(day -> dates.name(day, Dates.Width.SHORT)).toList();
    List<String> weeks = IntStream.rangeClosed(1, WEEKS).mapToObj(slots.wording()::number).toList();
    return new Diary(
        say("diary.label"),
        say("diary.week"),
        days,
        weeks,
        DoseWords.week(rows.last()),
        say("diary.hard"),
        say("diary.sore"),
        List.of(say("diary.answers.no"), say("diary.answers.little"), say("diary.answers.lot")),
        say("diary.question"));
  }

  private String say(String id) {
    return slots.wording().say(id);
  }
}
