package goniograph.library;

import goniograph.body.Build;
import goniograph.dose.Measure;
import goniograph.library.Clinic.FigureSettings;
import goniograph.library.Clinic.Hours;
import goniograph.library.Clinic.Paper;
import goniograph.library.Clinic.Settings;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the clinic file. */
final class ClinicReader {
  private static final Pattern PHONE = Pattern.compile("\\+?[0-9][0-9 ()/.-]{1,24}[0-9]");
  private static final Pattern HOURS =
      Pattern.compile("([01][0-9]|2[0-4]):([0-5][0-9])\\.\\.([01][0-9]|2[0-4]):([0-5][0-9])");
  private static final String DAY = "(?:mon|tue|wed|thu|fri|sat|sun)";
  private static final Pattern DAYS = Pattern.compile(DAY + "(?:-" + DAY + ")?|every-day");
  private static final Pattern LANGUAGE = Pattern.compile("[a-z]{2,3}(-[A-Za-z0-9]{2,8})*");
  private static final int MINUTES = 24 * 60;

  private ClinicReader() {}

  static Optional<Clinic> read(SharedFiles files) {
    String path = "shared/clinic.yaml";
    files.mustBeThere(path, "Phone numbers and languages stand there.");
    return files.read(path, "the clinic file", form -> read(form, path)).flatMap(read -> read);
  }

  private static Optional<Clinic> read(Form form, String file) {
    var name = form.required("name", "Our clinic").as(Spellings.TEXT);
    var logo = form.optional("logo").as(Spellings.TEXT);
    var paper = form.required("paper", "A4").as(PAPER);
    var zone = form.required("time_zone", "Etc/UTC").as(ZONE);
    var phones = map(form.required("phones", "{ desk: \"+00 0000 0100\" }"), PHONE_NUMBER);
    List<Hours> hours =
        form.required("hours", "{ mon-fri: \"08:00..17:00\" }")
            .form(
                "hours", inner -> inner.entries().stream().flatMap(e -> hours(e).stream()).toList())
            .map(Located::value)
            .orElse(List.of());
    var outOfHours = form.required("out_of_hours", "\"+00 0000 0199\"").as(PHONE_NUMBER);
    var emergency = form.required("emergency", "\"0000\"").as(PHONE_NUMBER);
    var languages = form.required("languages", "[en]").list(LANGUAGE_TAG);
    var therapists = form.optional("therapist_languages").list(LANGUAGE_TAG);
    var digits =
        map(form.optional("digits"), Spellings.oneOf(List.of("latn", "arab", "arabext", "deva")));
    var weeks = map(form.optional("week_starts"), Spellings.oneOf(DayOfWeek.class));
    Settings settings =
        form.optional("settings")
            .form("settings", ClinicReader::settings)
            .map(Located::value)
            .orElse(Settings.DEFAULT);
    if (name.isEmpty()
        || paper.isEmpty()
        || zone.isEmpty()
        || outOfHours.isEmpty()
        || emergency.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Clinic(
            name.get(),
            logo,
            paper.get(),
            zone.get(),
            phones,
            hours,
            outOfHours.get(),
            emergency.get(),
            languages,
            therapists,
            digits,
            weeks,
            settings,
            file));
  }

  private static Settings settings(Form form) {
    Settings usual = Settings.DEFAULT;
    return new Settings(
        form.optional("pregnancy_avoid_lying_flat_from").as(DoseSpellings.amount(Measure.WEEKS)),
        truth(form, "single_letter_keys", usual.singleLetterKeys()),
        count(form, "minutes_a_day", MINUTES, usual.minutesADay()),
        count(form, "entries_ask_above", 99, usual.entriesAskAbove()),
        count(form, "entries_max", 99, usual.entriesMax()),
        form.optional("printer").as(Spellings.TEXT).map(Located::value).orElse(usual.printer()),
        form.optional("figure")
            .form("figure", ClinicReader::figure)
            .map(Located::value)
            .orElse(usual.figure()),
        truth(form, "override_log", usual.overrideLog()));
  }

  private static FigureSettings figure(Form form) {
    FigureSettings usual = FigureSettings.DEFAULT;
    return new FigureSettings(
        form.optional("build").as(BUILD).map(Located::value).orElse(usual.build()),
        truth(form, "head_covering", usual.headCovering()),
        truth(form, "wheelchair", usual.wheelchair()));
  }

  private static boolean truth(Form form, String key, boolean usual) {
    return form.optional(key).as(Spellings.TRUTH).map(Located::value).orElse(usual);
  }

  private static int count(Form form, String key, int most, int usual) {
    return form.optional(key).as(Spellings.integer(1, most)).map(Located::value).orElse(usual);
  }

  private static <T> Map<String, Located<T>> map(Value value, Spelling<T> spelling) {
    Map<String, Located<T>> map = new LinkedHashMap<>();
    value
        .form(value.key(), Form::entries)
        .map(Located::value)
        .orElse(List.of())
        .forEach(
            entry ->
                entry.value().as(spelling).ifPresent(read -> map.put(entry.key().value(), read)));
    return map;
  }

  private static Optional<Hours> hours(Form.Entry entry) {
    return entry
        .value()
        .as(
            (raw, refusal) -> {
              Matcher times = HOURS.matcher(raw);
              if (!DAYS.matcher(entry.key().value()).matches()) {
                refusal.because(
                    "clinic-hours",
                    "`" + entry.key().value() + "` names no days.",
                    "Write `mon`, `mon-fri` or `every-day`.");
              } else if (times.matches() && minutes(times, 1) < minutes(times, 3)) {
                return Optional.of(
                    new Hours(entry.key(), time(minutes(times, 1)), time(minutes(times, 3))));
              } else {
                refusal.because(
                    "clinic-hours",
                    "`" + raw + "` is not a time of opening.",
                    "Write from and to in 24 hours, for instance `\"08:00..17:00\"`.");
              }
              return Optional.<Hours>empty();
            })
        .map(Located::value);
  }

  private static int minutes(Matcher times, int group) {
    return Integer.parseInt(times.group(group)) * 60 + Integer.parseInt(times.group(group + 1));
  }

  private static LocalTime time(int minutes) {
    return minutes >= MINUTES ? LocalTime.MAX : LocalTime.of(minutes / 60, minutes % 60);
  }

  private static final Spelling<Paper> PAPER =
      Spellings.oneOf(Map.of("A4", Paper.A4, "Letter", Paper.LETTER));

  private static final Spelling<Build> BUILD = Spellings.oneOf(Build.class);

  private static final Spelling<String> PHONE_NUMBER =
      matching(
          PHONE,
          "clinic-phone",
          "is not a phone number",
          "Write digits and spaces in quotes, for instance `\"+00 0000 0100\"`.");

  private static final Spelling<String> LANGUAGE_TAG =
      matching(
          LANGUAGE,
          "clinic-language",
          "is not a language tag",
          "Write the tag of BCP 47, for instance `pl` or `pt-BR`.");

  private static final Spelling<ZoneId> ZONE =
      (raw, refusal) -> {
        try {
          return Optional.of(ZoneId.of(raw));
        } catch (DateTimeException unknown) {
          refusal.because(
              "clinic-time-zone",
              "`" + raw + "` is not a time zone.",
              "Write a name of the time zone database, for instance `Etc/UTC`.");
          return Optional.empty();
        }
      };

  private static Spelling<String> matching(Pattern shape, String rule, String what, String mend) {
    return (raw, refusal) -> {
      if (shape.matcher(raw).matches()) {
        return Optional.of(raw);
      }
      refusal.because(rule, "`" + raw + "` " + what + ".", mend);
      return Optional.empty();
    };
  }
}
