package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.VersionRule;
import goniograph.check.Words;
import goniograph.finding.Finding;
import goniograph.language.Negation;
import goniograph.language.WordFinder;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Version;
import goniograph.library.Vocabulary.Position;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import goniograph.pose.PoseFile;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How the text places the body at first, held against the entry. */
public final class PositionInText implements VersionRule {
  private static final String LYING = "lying";

  private static final RulePage PAGE =
      RulePage.of(
          "position-in-text",
          "The title or the first words about sitting, standing, kneeling or lying name another"
              + " position than `position`, or another place to lie on than `lies_on`. One finding a"
              + " text; where the pose file differs too, that finding is enough.",
          "Cautions follow from the position: the wrong ones would be on the page.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "2. Sit tall near the front of the seat.",
              "2. «Stand tall» near the front of the seat."),
          Example.in(
              ExampleFiles.BAND,
              "# Seated pull-back with a band",
              "# «Standing» pull-back with a band"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Entry entry, Version version, Checked checked) {
    return entry instanceof Exercise exercise && posesAgree(exercise, checked)
        ? new Placed(checked.words(version.language()), exercise)
            .wrong(Said.all(version, checked)).stream().map(wrong -> finding(exercise, wrong))
        : Stream.empty();
  }

  private static boolean posesAgree(Exercise exercise, Checked checked) {
    String position = Spellings.word(exercise.position().value());
    return exercise.rungs().stream()
        .flatMap(rung -> rung.conditions().figure().stream())
        .map(Located::value)
        .flatMap(id -> Optional.ofNullable(checked.poses().files().get(id)).stream())
        .map(PoseFile::base)
        .allMatch(base -> base.word().equals(position));
  }

  private Finding finding(Exercise exercise, Wrong wrong) {
    String position = Spellings.word(exercise.position().value());
    String where =
        exercise.liesOn().map(on -> ", lies_on " + Spellings.word(on.value())).orElse("");
    return error(
            wrong.said().at(wrong.from(), wrong.to()),
            "The text begins in another position or place than the entry: "
                + Words.listed(List.of(wrong.named()))
                + ".",
            "Write the words for the entry's position, or mend the front matter.")
        .withBecause("position " + position + where);
  }

  /** Words that name another position, or place, and which one. */
  private record Wrong(Said said, int from, int to, String named) {}

  private record Found(Said said, int from, int to, String position) {}

  /** Where a text places the body. */
  private record Placed(goniograph.language.Words words, Exercise exercise) {

    Optional<Wrong> wrong(List<Said> all) {
      return Stream.of(Said.TITLE, "do", "captions", "picture")
          .flatMap(section -> first(all, section).stream())
          .filter(found -> !agrees(found.position()))
          .map(found -> new Wrong(found.said(), found.from(), found.to(), found.position()))
          .findFirst()
          .or(() -> place(all));
    }

    /** The first position a section names; of several in one sentence, the most exact one. */
    private Optional<Found> first(List<Said> all, String section) {
      return all.stream()
          .filter(said -> said.in(section) && !laterDrawing(said))
          .map(this::found)
          .filter(found -> !found.isEmpty())
          .findFirst()
          .flatMap(found -> found.stream().findFirst());
    }

    /** Later drawings show where the movement goes. */
    private static boolean laterDrawing(Said said) {
      return said.in("captions") && said.piece().number() > 1;
    }

    private List<Found> found(Said said) {
      List<Found> found =
          words.below("position.").keySet().stream()
              .filter(key -> !key.equals("silent"))
              .flatMap(key -> found(said, key))
              .sorted(Comparator.comparingInt(Found::from))
              .toList();
      boolean lies = found.stream().anyMatch(one -> one.position().equals(LYING));
      return found.stream()
          .filter(one -> lies || !one.position().startsWith(LYING))
          .filter(one -> !one.position().equals(LYING) || onlyLying(found))
          .toList();
    }

    private static boolean onlyLying(List<Found> found) {
      return found.stream().noneMatch(one -> one.position().startsWith(LYING + "-"));
    }

    private Stream<Found> found(Said said, String key) {
      Negation negation = Negation.of(words);
      return WordFinder.of(words, words.list("position." + key), words.list("position.silent"))
          .find(said.text())
          .stream()
          .filter(one -> !negation.reaches(said.text(), one.from()))
          .map(one -> new Found(said, one.from(), one.to(), key));
    }

    private boolean agrees(String named) {
      Position position = exercise.position().value();
      return allowed(named).contains(Spellings.word(position));
    }

    private static Set<String> allowed(String named) {
      return switch (named) {
        case "standing" -> Set.of("standing", "leaning", "stepping");
        case "sitting" -> Set.of("sitting", "long-sitting");
        case "kneeling" -> Set.of("kneeling", "half-kneeling", "hands-and-knees");
        case LYING ->
            Stream.of(Position.values())
                .map(Spellings::word)
                .filter(word -> word.startsWith(LYING))
                .collect(Collectors.toSet());
        default -> Set.of(named);
      };
    }

    /** Another thing to lie on than the entry's, in the sentence that lays the body down. */
    private Optional<Wrong> place(List<Said> all) {
      Optional<String> on = exercise.liesOn().map(given -> Spellings.word(given.value()));
      return on.isEmpty()
          ? Optional.empty()
          : all.stream()
              .filter(said -> said.in("do") && !found(said).isEmpty())
              .flatMap(said -> places(said, on.get()))
              .findFirst();
    }

    private Stream<Wrong> places(Said said, String on) {
      return words.below("lies-on.").entrySet().stream()
          .filter(place -> !place.getKey().equals(on))
          .flatMap(
              place ->
                  WordFinder.of(words, place.getValue()).find(said.text()).stream()
                      .map(one -> new Wrong(said, one.from(), one.to(), place.getKey())));
    }
  }
}
