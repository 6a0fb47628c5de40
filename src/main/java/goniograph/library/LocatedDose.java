package goniograph.library;

import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.source.Span;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A dose and where each of its fields stands.
 *
 * @param dose the dose
 * @param places the place of each field that it gives
 */
public record LocatedDose(Dose dose, Map<DoseField, Span> places) {
  /** Nothing said. */
  public static final LocatedDose NONE = new LocatedDose(Dose.NONE, Map.of());

  public LocatedDose {
    EnumMap<DoseField, Span> ordered = new EnumMap<>(DoseField.class);
    ordered.putAll(places);
    places = Collections.unmodifiableMap(ordered);
  }

  /** Where a field stands, if it is given. */
  public Optional<Span> at(DoseField field) {
    return Optional.ofNullable(places.get(field));
  }

  /** This laid over another: where both give a field, this one counts. */
  public LocatedDose over(LocatedDose base) {
    Map<DoseField, Span> both = new EnumMap<>(DoseField.class);
    both.putAll(base.places);
    both.putAll(places);
    return new LocatedDose(dose.over(base.dose), both);
  }
}
