package goniograph.check;

import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.library.Entry;
import goniograph.library.Library;
import goniograph.library.Precaution;
import goniograph.library.Precaution.Swap;
import goniograph.library.Requirement;
import goniograph.library.Rung;
import goniograph.library.Stock;
import goniograph.library.TagRule;
import goniograph.library.Vocabulary.Action;
import goniograph.library.Vocabulary.Supervision;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Works out what tags do on one step: the rows of the clinic's table that fire, unless they let the
 * entry say something else, and what the entry says itself.
 */
final class TagResolver {
  private static final String HELPER = "s-helper";

  private final Library library;
  private final Entry entry;

  TagResolver(Library library, Entry entry) {
    this.library = library;
    this.entry = entry;
  }

  StepTailoring on(OnStep step, Set<String> tags) {
    Derived derived = derived(step, row -> true);
    List<TagOutcome> outcomes = new ArrayList<>();
    tags.forEach(tag -> outcomes.addAll(outcomes(tag, step, derived)));
    List<TagOutcome> before = List.copyOf(outcomes);
    for (String tag : tags) {
      whereHelped(tag, step, derived, before).stream()
          .filter(one -> notInstead(own(tag, step), one))
          .forEach(one -> outcomes.add(one.outcome()));
    }
    Dose dose = step.dose();
    for (TagOutcome outcome : outcomes) {
      dose = Kept.within(dose, outcome.limits());
    }
    return new StepTailoring(step.rung().n(), derived, outcomes, dose);
  }

  StepTailoring withoutSteps(Set<String> tags) {
    Derived derived = Derived.of(library.requirements(), entry);
    Texts texts = Texts.of(entry);
    List<TagOutcome> outcomes =
        tags.stream()
            .flatMap(
                tag ->
                    library.tagRules(tag).stream()
                        .flatMap(
                            row ->
                                Derived.both(
                                    row.trigger(), word -> Property.reason(word.value(), texts))
                                    .map(reason -> outcome(row, tag, reason, List.of()))
                                    .stream()))
            .toList();
    return new StepTailoring(0, derived, outcomes, Dose.NONE);
  }

  /** Why a row fires on a step, if it does. */
  static Optional<Reason> fires(TagRule row, String tag, OnStep step, Derived derived) {
    if (row.unlessType().filter(type -> type.value() == step.type()).isPresent()) {
      return Optional.empty();
    }
    Limits limits = new Limits(row.trigger().numbers());
    String region = row.region(tag).orElse("");
    return Derived.both(
        row.trigger(),
        word -> {
          String name = word.value().replace(TagRule.EACH_REGION, region);
          Optional<Reason> ruled = derived.by(name).stream().map(one -> one.reason()).findFirst();
          return ruled.or(() -> Property.reason(name, step, limits));
        });
  }

  /** A row that fires on a step, and what it asks for there. */
  record Fired(TagRule row, TagOutcome outcome) {}

  /** The rows for a tag that fire on a step, for its own sake. */
  List<Fired> fired(String tag, OnStep step) {
    Set<String> actedOn =
        library.tagRules(tag).stream()
            .flatMap(row -> row.trigger().when().stream())
            .map(Located::value)
            .collect(Collectors.toSet());
    Derived derived =
        derived(
            step, row -> actedOn.contains(TagRule.HELPER) || actedOn.contains(row.rule().value()));
    return Stream.concat(
            fired(tag, step, derived), whereHelped(tag, step, derived, List.of()).stream())
        .toList();
  }

  private Stream<Fired> fired(String tag, OnStep step, Derived derived) {
    return library.tagRules(tag).stream()
        .flatMap(
            row ->
                fires(row, tag, step, derived)
                    .map(reason -> new Fired(row, of(row, tag, reason, step)))
                    .stream());
  }

  private Derived derived(OnStep step, Predicate<Requirement> which) {
    return Derived.of(
        library.requirements().stream().filter(which).toList(),
        rung -> step.pose(),
        step.exercise(),
        step.rung());
  }

  /** What the table says where the entry does not say it instead, and what the entry says. */
  private List<TagOutcome> outcomes(String tag, OnStep step, Derived derived) {
    List<Precaution> own = own(tag, step);
    return Stream.concat(
            fired(tag, step, derived).filter(one -> notInstead(own, one)).map(Fired::outcome),
            own.stream().map(one -> of(one, step.rung())))
        .toList();
  }

  private static List<Precaution> own(String tag, OnStep step) {
    return step.exercise().precautions().stream()
        .filter(one -> one.tag().value().equals(tag))
        .toList();
  }

  private static boolean notInstead(List<Precaution> own, Fired fired) {
    return own.stream().noneMatch(one -> instead(one, fired.row()));
  }

  /** Whether what an entry says stands in the place of a row, because the row lets it. */
  static boolean instead(Precaution own, TagRule row) {
    return row.entryMay()
        .filter(laxest -> own.action().value().compareTo(laxest.value()) <= 0)
        .filter(laxest -> own.action().value() == Action.LEAVE_OUT || own.saysHow())
        .isPresent();
  }

  private TagOutcome of(TagRule row, String tag, Reason reason, OnStep step) {
    Optional<List<Swap>> twins = row.latexFree() ? twins(step) : Optional.of(List.<Swap>of());
    TagOutcome outcome = outcome(row, tag, reason, twins.orElse(List.of()));
    return twins.isEmpty()
        ? outcome.leftOut("there is no latex-free band of this strength")
        : kept(outcome, step.rung());
  }

  private static TagOutcome outcome(TagRule row, String tag, Reason reason, List<Swap> swaps) {
    return new TagOutcome(
        tag,
        row.rule(),
        row.action().value(),
        row.override(),
        reason,
        row.limits(),
        swaps,
        values(row.equipment()),
        values(row.statements()));
  }

  /** What an entry says for a tag, on one step. */
  TagOutcome of(Precaution own, Rung rung) {
    String tag = own.tag().value();
    List<TagRule> rows = library.tagRules(tag);
    boolean table = rows.stream().allMatch(row -> row.override() || instead(own, row));
    return kept(
        new TagOutcome(
            tag,
            rows.stream().map(TagRule::rule).findFirst().orElse(""),
            own.action().value(),
            own.override().map(Located::value).orElse(table),
            Reason.at("the entry's own precaution", own.at()),
            own.limits(),
            own.swaps(),
            List.of(),
            own.statement().stream().map(Located::value).toList()),
        rung);
  }

  private static TagOutcome kept(TagOutcome outcome, Rung rung) {
    return outcome.limits().stream()
        .flatMap(limit -> Kept.outside(limit, rung).stream())
        .findFirst()
        .map(outcome::leftOut)
        .orElse(outcome);
  }

  /** The latex-free twin of each band that the step uses; nothing where one of them has none. */
  private Optional<List<Swap>> twins(OnStep step) {
    Stream<String> used =
        Stream.concat(
            step.dose().word(DoseField.LOAD_BAND).stream(),
            step.exercise().equipment().stream().map(one -> one.id().value()));
    List<Stock.Band> bands =
        used.flatMap(id -> library.stock().band(id).stream()).distinct().toList();
    return bands.stream().allMatch(band -> band.latexFree().isPresent()) && !bands.isEmpty()
        ? Optional.of(
            bands.stream()
                .map(band -> new Swap(band.id(), band.latexFree().orElseThrow()))
                .toList())
        : Optional.empty();
  }

  /** What acts on someone who must stand by, as the step or another tag asks. */
  private List<Fired> whereHelped(
      String tag, OnStep step, Derived derived, List<TagOutcome> others) {
    Optional<Reason> helped = helped(step, derived, others);
    return library.tagRules(tag).stream()
        .filter(
            row -> row.trigger().when().stream().anyMatch(w -> w.value().equals(TagRule.HELPER)))
        .flatMap(row -> helped.map(reason -> new Fired(row, of(row, tag, reason, step))).stream())
        .toList();
  }

  private static Optional<Reason> helped(OnStep step, Derived derived, List<TagOutcome> others) {
    Optional<Reason> field =
        step.conditions()
            .supervision()
            .filter(given -> given.value().compareTo(Supervision.HELPER_NEAR) >= 0)
            .map(given -> Reason.at("supervision " + Spellings.word(given.value()), given.at()));
    boolean asked =
        derived.statements().contains(HELPER)
            || others.stream()
                .filter(one -> one.action() != Action.LEAVE_OUT)
                .anyMatch(one -> one.statements().contains(HELPER));
    return field.or(
        () -> asked ? Optional.of(Reason.of("someone must stand by")) : Optional.empty());
  }

  private static List<String> values(Collection<Located<String>> ids) {
    return ids.stream().map(Located::value).toList();
  }
}
