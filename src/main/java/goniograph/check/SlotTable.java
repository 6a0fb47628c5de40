package goniograph.check;

import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The closed table of slots, and what each needs so that it can be filled. */
public final class SlotTable {
  /** Slots of the clinic file, for statements and phrases only. */
  public static final List<String> CLINIC =
      List.of("clinic.phone", "clinic.hours", "clinic.out_of_hours", "clinic.emergency");

  private static final String HOLD_COUNT = "hold.count";
  private static final Map<String, DoseField> DOSE = dose();
  private static final List<String> SIDE = side();
  private static final Pattern OF_STEP =
      Pattern.compile("step\\.([1-9][0-9]?|previous|next)\\.(.+)");
  private static final Pattern FORM = Pattern.compile("((?:side|other)[a-z.]*):[a-z-]+");

  private SlotTable() {}

  private static Map<String, DoseField> dose() {
    Map<String, DoseField> slots = new TreeMap<>();
    Stream.of(
            DoseField.HOLD,
            DoseField.RELAX,
            DoseField.REST,
            DoseField.TEMPO_LIFT,
            DoseField.TEMPO_PAUSE,
            DoseField.TEMPO_LOWER,
            DoseField.TEMPO_BOTTOM,
            DoseField.REPS,
            DoseField.SETS,
            DoseField.DURATION,
            DoseField.SEAT_HEIGHT,
            DoseField.STEP_HEIGHT,
            DoseField.PAIN_DURING_MAX)
        .forEach(field -> slots.put(field.key(), field));
    slots.put(HOLD_COUNT, DoseField.HOLD);
    slots.put("per_day", DoseField.PER_DAY);
    slots.put("days_per_week", DoseField.DAYS_PER_WEEK);
    return slots;
  }

  private static List<String> side() {
    List<String> slots = new ArrayList<>(List.of("side", "other"));
    for (String part : List.of("arm", "hand", "leg", "foot", "knee")) {
      slots.add("side." + part);
      slots.add("other." + part);
    }
    return List.copyOf(slots);
  }

  /** All names that the text of an entry may use, without those of statements and named steps. */
  public static List<String> names() {
    List<String> names = new ArrayList<>(DOSE.keySet());
    names.addAll(SIDE);
    names.addAll(List.of("load", "support", "step", "step.previous.hold", "step.next.hold"));
    return names;
  }

  /** Whether the text of an entry may use this name; statements are judged by their own rule. */
  public static boolean knows(String name) {
    Matcher step = OF_STEP.matcher(name);
    if (step.matches()) {
      return DOSE.containsKey(step.group(2)) || step.group(2).equals("load");
    }
    return names().contains(plain(name)) || isStatement(name);
  }

  /** Whether it stands for a statement: {@code s-breathe}. */
  public static boolean isStatement(String name) {
    return name.startsWith("s-");
  }

  /** Whether it stands for a side or a body part with its side. */
  public static boolean isSide(String name) {
    return SIDE.contains(plain(name));
  }

  /** The dose field that a slot, or the same slot of another step, takes its value from. */
  public static Optional<DoseField> field(String name) {
    Matcher step = OF_STEP.matcher(name);
    return Optional.ofNullable(DOSE.get(step.matches() ? step.group(2) : name));
  }

  /** The slot that gives the value of a dose field. */
  public static Optional<String> of(DoseField field) {
    return DOSE.entrySet().stream()
        .filter(slot -> slot.getValue() == field && !slot.getKey().equals(HOLD_COUNT))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /**
   * The step a slot names: a number, {@code previous} or {@code next}; none for the printed one.
   */
  public static Optional<String> step(String name) {
    Matcher step = OF_STEP.matcher(name);
    return step.matches() ? Optional.of(step.group(1)) : Optional.empty();
  }

  /** Whether {@code {load}} can be filled: a mass, or a band of the stock list. */
  public static boolean hasLoad(Dose dose) {
    return dose.amount(DoseField.LOAD_MASS).isPresent()
        || dose.word(DoseField.LOAD_BAND).isPresent();
  }

  private static String plain(String name) {
    Matcher form = FORM.matcher(name);
    return form.matches() ? form.group(1) : name;
  }
}
