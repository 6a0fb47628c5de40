package goniograph.language;

import com.ibm.icu.text.DateFormat;
import com.ibm.icu.text.DateFormatSymbols;
import com.ibm.icu.util.Calendar;
import com.ibm.icu.util.GregorianCalendar;
import com.ibm.icu.util.TimeZone;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Dates and weeks as a language writes them, by CLDR.
 *
 * @param language the language
 */
public record Dates(Language language) {
  private static final int WEEK = 7;

  /** How a weekday is written. */
  public enum Width {
    FULL(DateFormatSymbols.WIDE),
    SHORT(DateFormatSymbols.ABBREVIATED),
    NARROW(DateFormatSymbols.NARROW);

    private final int icu;

    Width(int icu) {
      this.icu = icu;
    }
  }

  /** CLDR's long date, with the month in words: {@code 31 May 2027}. */
  public String full(LocalDate date) {
    DateFormat format =
        DateFormat.getDateInstance(
            new GregorianCalendar(TimeZone.GMT_ZONE, language.locale()),
            DateFormat.LONG,
            language.locale());
    return format.format(Date.from(date.atStartOfDay(ZoneOffset.UTC).toInstant()));
  }

  /** The first day of the week in the language's region, or its likeliest one, by CLDR. */
  public DayOfWeek firstDay() {
    return day(Calendar.getInstance(TimeZone.GMT_ZONE, language.locale()).getFirstDayOfWeek());
  }

  /** The seven days in order, from this one on. */
  public static List<DayOfWeek> week(DayOfWeek first) {
    return IntStream.range(0, WEEK).mapToObj(first::plus).toList();
  }

  /** The name of a day, standing alone. */
  public String name(DayOfWeek day, Width width) {
    String[] names =
        DateFormatSymbols.getInstance(language.locale())
            .getWeekdays(DateFormatSymbols.STANDALONE, width.icu);
    return names[day.getValue() % WEEK + 1];
  }

  /** ICU counts Sunday as 1; ISO counts Monday as 1. */
  private static DayOfWeek day(int icu) {
    return DayOfWeek.SATURDAY.plus(icu);
  }
}
