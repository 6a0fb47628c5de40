package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.dose.DoseField;
import goniograph.finding.Finding;
import goniograph.language.Negation;
import goniograph.language.WordFinder;
import goniograph.language.Words;
import goniograph.library.Entry;
import goniograph.library.Equipment;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.PhraseSource;
import goniograph.library.Rung;
import goniograph.library.Version;
import goniograph.library.Vocabulary.Position;
import goniograph.matter.Located;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Things that the text names and the list does not, and the other way round. */
public final class EquipmentInText implements VersionRule {
  private static final Set<String> LAIN_ON = Set.of("bed", "mat");

  private static final RulePage PAGE =
      RulePage.of(
          "equipment-in-text",
          "The steps name a thing that neither `equipment` nor `support`, `lies_on` or the load has:"
              + " a warning; in the easier line a note. A thing of `equipment` that no line of the text"
              + " names is a note.",
          "The list \"You need\" comes from the fields, and so do the checks of a chair or a band.",
          RulePage.HOUSE,
          Acceptance.AUTHOR,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "Press your feet into the floor.",
              "Lean on the «stick» and press your feet into the floor."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    Words words = checked.words(version.language());
    Optional<PhraseSource> phrases = checked.library().phrases(version.language());
    return entry instanceof Exercise exercise && words.known() && phrases.isPresent()
        ? new Things(words, phrases.get(), exercise)
            .findings(this, Said.all(version, checked), checked)
        : Stream.empty();
  }

  /** The kinds of things of one entry in one language. */
  private record Things(Words words, PhraseSource phrases, Exercise exercise) {

    Stream<Finding> findings(EquipmentInText rule, List<Said> all, Checked checked) {
      Set<String> listed = listed();
      return Stream.concat(
          all.stream()
              .filter(said -> said.in(Said.TITLE, "do", "captions", "picture", "harder", "easier"))
              .flatMap(said -> unlisted(rule, said, listed)),
          unnamed(rule, all, checked));
    }

    private Stream<Finding> unlisted(EquipmentInText rule, Said said, Set<String> listed) {
      Negation negation = Negation.of(words);
      return finder().find(said.text()).stream()
          .filter(found -> !negation.reaches(said.text(), found.from()))
          .filter(found -> kinds(found.phrase()).stream().noneMatch(listed::contains))
          .map(found -> finding(rule, said, found));
    }

    private static Finding finding(EquipmentInText rule, Said said, WordFinder.Found found) {
      String thing = said.text().substring(found.from(), found.to());
      String what = "`" + thing + "` is named here and not in the fields.";
      String mend = "Add it to `equipment`, or say it without.";
      return said.in("easier")
          ? rule.note(said.at(found.from(), found.to()), what, mend)
          : rule.warning(said.at(found.from(), found.to()), what, mend);
    }

    private Stream<Finding> unnamed(EquipmentInText rule, List<Said> all, Checked checked) {
      if (!phrases.language().equals(Library.SOURCE_LANGUAGE)) {
        return Stream.empty();
      }
      Set<String> named = named(all, checked);
      return exercise.equipment().stream()
          .map(Equipment::id)
          .filter(id -> !kindsOf("equipment." + id.value()).isEmpty())
          .filter(id -> kindsOf("equipment." + id.value()).stream().noneMatch(named::contains))
          .map(
              id ->
                  rule.note(
                      id.at(),
                      "No line of the text says what `" + id.value() + "` is for.",
                      "Name it in the step that uses it, or take it out of `equipment`."));
    }

    /** What the text names, itself or through a slot or a statement. */
    private Set<String> named(List<Said> all, Checked checked) {
      Set<String> named = new LinkedHashSet<>();
      all.forEach(said -> named.addAll(kindsIn(said.text())));
      exercise
          .statements()
          .forEach(
              id ->
                  checked
                      .library()
                      .statement(id.value())
                      .flatMap(one -> one.text(phrases.language()))
                      .ifPresent(text -> named.addAll(kindsIn(text.value()))));
      fields().forEach(id -> named.addAll(kindsOf(id)));
      named.addAll(carrying());
      return named;
    }

    private Set<String> listed() {
      Set<String> listed = new LinkedHashSet<>();
      exercise.equipment().forEach(one -> ids(one).forEach(id -> listed.addAll(kindsOf(id))));
      fields().forEach(id -> listed.addAll(kindsOf(id)));
      listed.addAll(carrying());
      if (exercise.rungs().stream().anyMatch(Things::hasMass)) {
        listed.add("weight");
      }
      return listed;
    }

    /**
     * What carries the body: who sits needs a seat, and nobody has to say so. Whether it is the
     * right bed or mat to lie on is for {@link PositionInText} to say.
     */
    private Set<String> carrying() {
      Set<String> carrying = new LinkedHashSet<>();
      exercise.liesOn().ifPresent(on -> carrying.addAll(LAIN_ON));
      if (exercise.position().value() == Position.SITTING) {
        carrying.add("chair");
      }
      return carrying;
    }

    private static boolean hasMass(Rung rung) {
      return rung.dose().dose().amount(DoseField.LOAD_MASS).isPresent();
    }

    private static List<String> ids(Equipment one) {
      List<String> ids = new ArrayList<>(List.of("equipment." + one.id().value()));
      one.instead().ifPresent(id -> ids.add("equipment." + id.value()));
      return ids;
    }

    /** Phrases of what other fields name: the support, the load. */
    private List<String> fields() {
      List<String> ids = new ArrayList<>();
      for (Rung rung : exercise.rungs()) {
        rung.conditions()
            .support()
            .object()
            .map(Located::value)
            .ifPresent(object -> ids.add("object." + object));
        rung.dose().dose().word(DoseField.LOAD_BAND).ifPresent(band -> ids.add("load." + band));
      }
      return ids;
    }

    private Set<String> kindsOf(String phrase) {
      return phrases.message(phrase).map(text -> kindsIn(text.value())).orElse(Set.of());
    }

    private Set<String> kindsIn(String text) {
      return finder().find(text).stream()
          .flatMap(found -> kinds(found.phrase()).stream())
          .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** A word may stand for more than one kind. */
    private Set<String> kinds(String phrase) {
      return words.below("thing.").entrySet().stream()
          .filter(kind -> kind.getValue().contains(phrase))
          .map(Map.Entry::getKey)
          .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private WordFinder finder() {
      List<String> all =
          words.below("thing.").entrySet().stream()
              .filter(kind -> !kind.getKey().equals("silent"))
              .flatMap(kind -> kind.getValue().stream())
              .toList();
      return WordFinder.of(words, all, words.list("thing.silent"));
    }
  }
}
