package goniograph.check.rules;

import goniograph.finding.Level;
import goniograph.library.DoseLimit;
import goniograph.library.DoseLimit.ForWhom;
import goniograph.library.DoseLimit.Scope;
import goniograph.matter.Spellings;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Words of findings about rows of the table of limits. */
final class LimitWords {
  private LimitWords() {}

  /** {@code `hold` is 90 s; for balance at most `60 s` is allowed.} */
  static String what(Breach breach) {
    String whom = scope(breach.row().scope());
    return subject(breach.row().field().value())
        + " "
        + breach.value()
        + "; "
        + (whom.isEmpty() ? "" : whom + " ")
        + breach.passed().words()
        + (breach.level() == Level.ERROR ? " is allowed." : " is usual.");
  }

  /** {@code Write `60 s` or less}, or which factors to change. */
  static String mend(Breach breach) {
    String field = breach.row().field().value();
    boolean below = breach.passed().below();
    return DoseLimit.WORKED_OUT.contains(field)
        ? (below ? "Raise " : "Lower ") + factors(field) + " until it is " + breach.passed().words()
        : "Write `" + breach.passed().end().spelling() + "`" + (below ? " or more" : " or less");
  }

  /** For what a row holds: {@code for stretch, for older people}. */
  static String scope(Scope scope) {
    Stream<Optional<String>> parts =
        Stream.of(
            Optional.of(scope.types())
                .filter(types -> !types.isEmpty())
                .map(types -> "for " + words(types)),
            scope.aim().map(aim -> "for " + Spellings.word(aim)),
            Optional.of(scope.regions())
                .filter(regions -> !regions.isEmpty())
                .map(regions -> "for " + words(regions)),
            scope.audience().map(LimitWords::people),
            scope.fromEffort().map(effort -> "from effort " + effort),
            scope.fromPain().map(pain -> "from pain " + pain),
            Optional.of("to begin with").filter(words -> scope.firstStep()));
    return parts.flatMap(Optional::stream).collect(Collectors.joining(", "));
  }

  private static String people(ForWhom whom) {
    String years = whom.ages().map(ages -> " of " + ages + " years").orElse("");
    return switch (whom.group()) {
      case ADULT -> "for adults";
      case OLDER -> "for older people";
      case CHILD -> "for children" + years;
    };
  }

  private static String words(List<? extends Enum<?>> several) {
    return several.stream().map(Spellings::word).collect(Collectors.joining(", "));
  }

  private static String subject(String field) {
    return switch (field) {
      case DoseLimit.TEMPO -> "The parts of `tempo` add up to";
      case DoseLimit.TENSION -> "The time under tension in a session is";
      case DoseLimit.SESSION -> "A session takes";
      case DoseLimit.DAY -> "A day takes";
      default -> "`" + field + "` is";
    };
  }

  private static String factors(String field) {
    return switch (field) {
      case DoseLimit.TEMPO -> "its parts";
      case DoseLimit.DAY -> "sets, repetitions, times or sessions a day";
      default -> "sets, repetitions or times";
    };
  }
}
