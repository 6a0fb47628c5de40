package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.PhraseSource;
import goniograph.matter.Located;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A field that names a phrase, and the phrase file does not have it. */
public final class PhraseUnknown implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "phrase-unknown",
          "Equipment, its check or stand-in, an act, a support object, the meaning of the sides, a"
              + " warm-up, a swap or the clinic's rule tables name a phrase (or entry) that is not there; the nearest is"
              + " offered.",
          "The sheet would have no words for it in any language.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.CHAIR_RISE, "{ id: firm-chair,", "{ id: «firm-chiar»,"),
          Example.in(ExampleFiles.CHAIR_RISE, "act: stand-up", "act: «stand-upp»"),
          Example.in(
              ExampleFiles.HEEL_TO_TOE, "object: kitchen-counter", "object: «kitchen-conter»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  /** A group of phrases: the first part of their dotted ids, and what a finding calls them. */
  private record Group(String prefix, String kind) {
    /** The ids in the group: the part behind its name. */
    Set<String> ids(PhraseSource phrases) {
      return phrases.messages().keySet().stream()
          .filter(id -> id.startsWith(prefix + "."))
          .map(id -> id.substring(prefix.length() + 1).replaceAll("\\..*", ""))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  private static final Group EQUIPMENT = new Group("equipment", "equipment");
  private static final Group CHECK = new Group("check", "check of equipment");
  private static final Group ACT = new Group("act", "act");
  private static final Group OBJECT = new Group("object", "support object");
  private static final Group WARM_UP = new Group("warm-up", "warm-up");
  private static final Group MEANING = new Group("side-meaning", "meaning of the sides");

  @Override
  public Stream<Finding> check(Checked checked) {
    return Stream.concat(ExerciseRule.super.check(checked), tables(checked.library()));
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    Library library = checked.library();
    return library.phrases(Library.SOURCE_LANGUAGE).stream()
        .flatMap(phrases -> check(exercise, phrases, library));
  }

  private Stream<Finding> check(Exercise exercise, PhraseSource phrases, Library library) {
    List<Located<String>> things =
        exercise.equipment().stream()
            .flatMap(one -> Stream.concat(Stream.of(one.id()), one.instead().stream()))
            .toList();
    List<Located<String>> checks =
        exercise.equipment().stream().flatMap(one -> one.check().stream()).toList();
    List<Located<String>> objects =
        exercise.rungs().stream()
            .flatMap(rung -> rung.conditions().support().object().stream())
            .distinct()
            .toList();
    Stream<Located<String>> meaning =
        exercise.sides().value().meaning().stream()
            .map(id -> new Located<>(id, exercise.sides().at()));
    return Stream.of(
            unknown(things.stream(), EQUIPMENT, phrases),
            unknown(checks.stream(), CHECK, phrases),
            unknown(exercise.act().stream(), ACT, phrases),
            unknown(objects.stream(), OBJECT, phrases),
            unknown(meaning, MEANING, phrases),
            warmUp(exercise, phrases, library),
            swaps(exercise, library))
        .flatMap(all -> all);
  }

  private Stream<Finding> warmUp(Exercise exercise, PhraseSource phrases, Library library) {
    Set<String> known = WARM_UP.ids(phrases);
    library.entries().forEach(entry -> known.add(entry.id()));
    return unknown(exercise.warmUp().stream(), WARM_UP.kind(), known, added(WARM_UP));
  }

  /** What can be used or swapped: equipment that has a phrase, and entries. */
  static List<String> things(Library library) {
    return Stream.concat(
            library.phrases(Library.SOURCE_LANGUAGE).stream()
                .flatMap(phrases -> EQUIPMENT.ids(phrases).stream()),
            library.entries().stream().map(Entry::id))
        .toList();
  }

  /** The equipment and checks that the clinic's rule tables name. */
  private Stream<Finding> tables(Library library) {
    Stream<Located<String>> things =
        Stream.concat(
            library.tagRules().stream().flatMap(row -> row.equipment().stream()),
            library.equipmentChecks().stream().flatMap(row -> row.equipment().stream()));
    Stream<Located<String>> checks = library.equipmentChecks().stream().map(row -> row.check());
    return library.phrases(Library.SOURCE_LANGUAGE).stream()
        .flatMap(
            phrases ->
                Stream.concat(
                    unknown(things, EQUIPMENT, phrases), unknown(checks, CHECK, phrases)));
  }

  private Stream<Finding> swaps(Exercise exercise, Library library) {
    return unknown(
        exercise.precautions().stream()
            .flatMap(one -> one.swaps().stream())
            .flatMap(swap -> Stream.of(swap.from(), swap.to())),
        EQUIPMENT.kind(),
        things(library),
        added(EQUIPMENT));
  }

  private Stream<Finding> unknown(Stream<Located<String>> ids, Group group, PhraseSource phrases) {
    return unknown(ids, group.kind(), group.ids(phrases), added(group));
  }

  private static String added(Group group) {
    return "add it under `" + group.prefix() + ":` in shared/phrases, in every language";
  }

  private Stream<Finding> unknown(
      Stream<Located<String>> ids, String kind, Collection<String> known, String otherwise) {
    return References.unknown(this, ids, "phrase for the " + kind, known, otherwise);
  }
}
