package goniograph.library;

import goniograph.body.Build;
import goniograph.dose.Quantity;
import goniograph.matter.Located;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one clinic differs in.
 *
 * @param name its name
 * @param logo path of its logo, relative to {@code shared/}
 * @param paper its paper
 * @param timeZone decides what day "today" is
 * @param phones phone numbers by what they reach, in the order of the file
 * @param hours opening hours by the file's words for days ({@code mon-fri})
 * @param outOfHours the number when it is closed
 * @param emergency the emergency number
 * @param languages tags of the languages sheets are made in
 * @param therapistLanguages tags of the languages therapists read
 * @param digits digit set by language tag: {@code latn}, {@code arab}, {@code deva}
 * @param weekStarts first day of the diary's week by language tag
 * @param settings the rest
 * @param file path of the clinic file
 */
public record Clinic(
    Located<String> name,
    Optional<Located<String>> logo,
    Located<Paper> paper,
    Located<ZoneId> timeZone,
    Map<String, Located<String>> phones,
    List<Hours> hours,
    Located<String> outOfHours,
    Located<String> emergency,
    List<Located<String>> languages,
    List<Located<String>> therapistLanguages,
    Map<String, Located<String>> digits,
    Map<String, Located<DayOfWeek>> weekStarts,
    Settings settings,
    String file) {
  public Clinic {
    phones = Collections.unmodifiableMap(new LinkedHashMap<>(phones));
    hours = List.copyOf(hours);
    languages = List.copyOf(languages);
    therapistLanguages = List.copyOf(therapistLanguages);
    digits = Collections.unmodifiableMap(new LinkedHashMap<>(digits));
    weekStarts = Collections.unmodifiableMap(new LinkedHashMap<>(weekStarts));
  }

  /** Paper sizes. */
  public enum Paper {
    A4,
    LETTER
  }

  /** Opening hours of some days, from and to. */
  public record Hours(Located<String> days, LocalTime from, LocalTime to) {}

  /**
   * Settings, each with its default.
   *
   * @param pregnancyFrom week of pregnancy from which lying flat is avoided
   * @param singleLetterKeys whether the desk takes single letters as keys
   * @param minutesADay the time budget of a pack
   * @param entriesAskAbove how many entries a pack may have before the desk asks
   * @param entriesMax how many at most
   * @param printer the printer's name, "" for the system's own
   * @param figure how people are drawn
   * @param overrideLog whether overrides are logged
   */
  public record Settings(
      Optional<Located<Quantity>> pregnancyFrom,
      boolean singleLetterKeys,
      int minutesADay,
      int entriesAskAbove,
      int entriesMax,
      String printer,
      FigureSettings figure,
      boolean overrideLog) {
    /** What holds where the clinic says nothing. */
    public static final Settings DEFAULT =
        new Settings(Optional.empty(), true, 20, 4, 6, "", FigureSettings.DEFAULT, false);
  }

  /**
   * How people are drawn.
   *
   * @param build how the person is built
   * @param headCovering with a head covering
   * @param wheelchair in a wheelchair where they sit
   */
  public record FigureSettings(Build build, boolean headCovering, boolean wheelchair) {
    /** A bare-headed adult. */
    public static final FigureSettings DEFAULT = new FigureSettings(Build.ADULT, false, false);
  }
}
