package goniograph.check;

import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.Precaution;
import goniograph.library.Precaution.Limit;
import goniograph.library.Rung;
import goniograph.library.TagRule;
import goniograph.library.Vocabulary.Action;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;

/** Where what an entry says for a tag is laxer than the clinic's table lets it be. */
public final class Strictness {
  private Strictness() {}

  /**
   * One thing that is too lax.
   *
   * @param at where it stands
   * @param what what is too lax
   * @param mend what to write
   * @param step the step it is about
   * @param because why the clinic's row fires there
   */
  public record Laxness(Span at, String what, String mend, int step, Reason because) {}

  /** All that is too lax in one precaution, step by step. */
  public static List<Laxness> of(
      Library library, StepFacts facts, Exercise exercise, Precaution own) {
    List<Laxness> all = new ArrayList<>();
    TagResolver resolver = new TagResolver(library, exercise);
    for (Rung rung : exercise.rungs()) {
      OnStep step = new OnStep(exercise, rung, facts.solved(rung), Texts.of(exercise));
      for (TagResolver.Fired fired : resolver.fired(own.tag().value(), step)) {
        if (!TagResolver.instead(own, fired.row())) {
          all.addAll(laxer(own, resolver.of(own, rung), fired, rung.n()));
        }
      }
    }
    return List.copyOf(all);
  }

  private static List<Laxness> laxer(
      Precaution own, TagOutcome said, TagResolver.Fired fired, int step) {
    List<Laxness> all = new ArrayList<>();
    Action wanted = fired.outcome().action();
    if (said.action().compareTo(wanted) > 0) {
      all.add(action(own, fired, step));
    }
    if (own.override().filter(Located::value).isPresent() && !fired.row().override()) {
      all.add(
          new Laxness(
              own.override().orElseThrow().at(),
              "The clinic's rule allows no override.",
              "Write `override: false`, or take `override` out.",
              step,
              fired.outcome().because()));
    }
    if (said.action() == Action.ADAPT && wanted == Action.ADAPT) {
      own.limits().forEach(limit -> all.addAll(limit(limit, fired, step)));
    }
    return all;
  }

  private static Laxness action(Precaution own, TagResolver.Fired fired, int step) {
    String wanted = Spellings.word(fired.outcome().action());
    boolean unsaid =
        fired.row().entryMay().filter(may -> own.action().value() == may.value()).isPresent();
    return new Laxness(
        own.action().at(),
        unsaid
            ? "`adapt` does not say how; the clinic's rule is `" + wanted + "`."
            : "`"
                + Spellings.word(own.action().value())
                + "` is laxer than the clinic's rule, `"
                + wanted
                + "`.",
        unsaid
            ? "Add `limits` or `swap`, or write `action: " + wanted + "`."
            : "Write `action: " + wanted + "`, or limits that keep that step out.",
        step,
        fired.outcome().because());
  }

  private static List<Laxness> limit(Limit own, TagResolver.Fired fired, int step) {
    return fired.row().limits().stream()
        .filter(row -> row.field().value().equals(own.field().value()))
        .filter(row -> Kept.laxer(own.within().value(), row.within().value()))
        .map(
            row ->
                new Laxness(
                    own.within().at(),
                    "`"
                        + Kept.words(own)
                        + "` allows more than the clinic's rule, `"
                        + Kept.words(row)
                        + "`.",
                    "Write `" + Kept.words(row).replaceFirst(" ", ": ") + "` or less.",
                    step,
                    fired.outcome().because()))
        .toList();
  }

  /** Tags of the clinic's table that act on nothing but the pack. */
  public static boolean onlyThePack(Library library, String tag) {
    List<TagRule> rows = library.tagRules(tag);
    return !rows.isEmpty()
        && rows.stream()
            .flatMap(row -> row.trigger().when().stream())
            .allMatch(word -> word.value().equals(TagRule.PACK));
  }
}
