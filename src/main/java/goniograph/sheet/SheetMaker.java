package goniograph.sheet;

import goniograph.body.Side;
import goniograph.check.PrintedStatements;
import goniograph.dose.Dose;
import goniograph.dose.DoseRows;
import goniograph.language.Direction;
import goniograph.language.Language;
import goniograph.language.PhraseProblem;
import goniograph.language.Phrases;
import goniograph.library.Advice;
import goniograph.library.Clinic;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.Rung;
import goniograph.matter.Body;
import goniograph.matter.Piece;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Makes page models.
 *
 * @param library the library, whose clinic file could be read
 * @param clinic its clinic
 * @param phrases the phrases of the sheet's language
 */
public record SheetMaker(Library library, Clinic clinic, Phrases phrases) {

  /**
   * A sheet, or what kept it from being one.
   *
   * @param sheet the sheet; not to be printed where there are gaps
   * @param gaps phrases that are missing or cannot be filled in
   */
  public record Made(Sheet sheet, List<PhraseProblem> gaps) {}

  /**
   * Makes a sheet of an entry that has a version in the ordered language.
   *
   * @param printed the statements that print
   * @param drawings the drawings
   */
  public Made make(
      SheetOrder order, PrintedStatements printed, Optional<Drawings> drawings, Approval approval) {
    Wording wording = new Wording(phrases);
    Entry entry = order.entry();
    Body body =
        entry
            .version(order.language())
            .orElseThrow(() -> new IllegalArgumentException("no version in " + order.language()))
            .body();
    Optional<Exercise> exercise =
        entry instanceof Exercise one ? Optional.of(one) : Optional.empty();
    SlotWords slots =
        new SlotWords(wording, clinic, dose(order), exercise, order.rung(), order.drawn());
    StopWords stop = new StopWords(slots, printed, order.language());
    Language language = phrases.language();
    String title = title(body, slots, order.side());
    Optional<DoseRows> rows = exercise.flatMap(e -> DoseRows.of(dose(order), e.sides().value()));
    Sheet sheet =
        new Sheet(
            identity(order, language),
            approval.band().map(kind -> new Band(wording.say(kind.phrase()))),
            head(order, title, wording),
            List.of(
                new TickLine(wording.say("head.replaces")), new TickLine(wording.say("head.adds"))),
            new LabelledLine(wording.say("label.why"), joined(body, "why", slots)),
            rows.map(r -> doseWords(exercise.orElseThrow(), wording, order).table(r, dose(order))),
            drawings,
            new StepWords(stop, exercise.flatMap(e -> warmUp(e, order, wording))).steps(body),
            know(body, slots),
            stop.box(),
            new ContactWords(wording, clinic).contact(),
            new FootWords(wording, language, clinic)
                .foot(approval, entry.reviewDue().map(due -> due.value())),
            exercise.flatMap(
                e ->
                    rows.map(
                        r ->
                            new BackWords(slots, language, clinic)
                                .back(title, e, order.rung().orElseGet(e::start), body, r))));
    return new Made(sheet, wording.gaps());
  }

  private static Dose dose(SheetOrder order) {
    if (order.entry() instanceof Advice advice) {
      return advice.dose().dose();
    }
    return order.rung().map(rung -> rung.dose().dose()).orElse(Dose.NONE);
  }

  private static Identity identity(SheetOrder order, Language language) {
    return new Identity(
        order.entry().id(),
        language.tag(),
        language.direction() == Direction.RIGHT_TO_LEFT,
        order.layout(),
        order.paper(),
        order.side().map(side -> side.name().toLowerCase(Locale.ROOT)),
        order.rung().map(Rung::n).orElse(0));
  }

  private static String title(Body body, SlotWords slots, Optional<Side> side) {
    String plain = body.title().map(slots::fill).orElse("");
    return side.map(
            one ->
                slots
                    .wording()
                    .say(
                        "head.title-with-side",
                        Map.of(
                            "title",
                            plain,
                            "side",
                            slots.wording().say("side." + one.name().toLowerCase(Locale.ROOT)))))
        .orElse(plain);
  }

  private Head head(SheetOrder order, String title, Wording wording) {
    String therapist =
        clinic.therapistLanguages().isEmpty()
            ? Library.SOURCE_LANGUAGE
            : clinic.therapistLanguages().get(0).value();
    Optional<String> other =
        therapist.equals(order.language())
            ? Optional.empty()
            : order
                .entry()
                .version(therapist)
                .flatMap(version -> version.body().title())
                .map(Piece::plain);
    return new Head(
        title,
        other,
        other.isPresent() ? therapist : "",
        wording.say("head.name"),
        wording.say("head.sheet-of"));
  }

  private static DoseWords doseWords(Exercise exercise, Wording wording, SheetOrder order) {
    return new DoseWords(
        wording,
        exercise.act().map(act -> act.value()),
        exercise.sides().value().meaning(),
        order.drawn());
  }

  private Optional<String> warmUp(Exercise exercise, SheetOrder order, Wording wording) {
    return exercise
        .warmUp()
        .map(
            id ->
                library
                    .entry(id.value())
                    .flatMap(entry -> entry.version(order.language()))
                    .flatMap(version -> version.body().title())
                    .map(title -> wording.say("warm-up.entry", Map.of("title", title.plain())))
                    .orElseGet(() -> wording.say("warm-up." + id.value())));
  }

  private static Optional<LabelledLines> know(Body body, SlotWords slots) {
    List<Piece> pieces = body.pieces("know");
    return pieces.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new LabelledLines(
                slots.wording().say("label.know"), pieces.stream().map(slots::fill).toList()));
  }

  private static String joined(Body body, String key, SlotWords slots) {
    return body.pieces(key).stream().map(slots::fill).collect(Collectors.joining(" "));
  }
}
