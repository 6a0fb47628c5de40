package goniograph.library;

import goniograph.dose.Sides;
import goniograph.library.Vocabulary.Aim;
import goniograph.library.Vocabulary.LiesOn;
import goniograph.library.Vocabulary.Position;
import goniograph.library.Vocabulary.Region;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Located;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An exercise.
 *
 * @param common what every entry has
 * @param region the regions it works on
 * @param aim what it is for
 * @param type what kind of work it is
 * @param act phrase id of what one does, for the dose sentence
 * @param position the base posture
 * @param liesOn what carries a lying or kneeling body
 * @param conditions stance, support and the like, as far as they stay the same on every step
 * @param sides which side works
 * @param range limits of joints in this entry
 * @param warmUp entry or phrase id of what comes before
 * @param audience for whom it is written
 * @param dose what stays the same on every step
 * @param ladder the steps
 * @param equipment what is needed
 * @param precautions what it does for patients with tags
 */
public record Exercise(
    Common common,
    List<Located<Region>> region,
    Located<Aim> aim,
    Located<Type> type,
    Optional<Located<String>> act,
    Located<Position> position,
    Optional<Located<LiesOn>> liesOn,
    Conditions conditions,
    Located<Sides> sides,
    List<RangeLimit> range,
    Optional<Located<String>> warmUp,
    Optional<Located<Audience>> audience,
    LocatedDose dose,
    Optional<LocatedLadder> ladder,
    List<Equipment> equipment,
    List<Precaution> precautions)
    implements Entry {
  public Exercise {
    region = List.copyOf(region);
    range = List.copyOf(range);
    equipment = List.copyOf(equipment);
    precautions = List.copyOf(precautions);
  }

  /** The exercise as it is done on each step; without a ladder one rung. */
  public List<Rung> rungs() {
    return ladder
        .map(given -> given.steps().stream().map(this::rung).toList())
        .filter(rungs -> !rungs.isEmpty())
        .orElseGet(() -> List.of(new Rung(1, dose, conditions, range, common.frontMatter().at())));
  }

  /** The rung with this number. */
  public Optional<Rung> rung(int n) {
    return rungs().stream().filter(rung -> rung.n() == n).findFirst();
  }

  /** The rung a patient begins on. */
  public Rung start() {
    int start = ladder.map(given -> given.ladder().start()).orElse(1);
    return rung(start).orElse(rungs().get(0));
  }

  private Rung rung(LocatedLadder.LocatedStep step) {
    return new Rung(
        step.step().n(),
        step.changes().over(dose),
        step.conditions().over(conditions),
        Stream.concat(range.stream(), step.range().stream()).toList(),
        step.at());
  }
}
