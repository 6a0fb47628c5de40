package goniograph.sheet;

import goniograph.language.Dates;
import goniograph.language.Language;
import goniograph.library.Clinic;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The foot: what the clinic needs to file and recall the page. */
record FootWords(Wording wording, Language language, Clinic clinic) {

  Foot foot(Approval approval, Optional<LocalDate> reviewDue) {
    Dates dates = new Dates(language);
    List<String> first = new ArrayList<>();
    first.add(
        approval
            .release()
            .map(name -> wording.say("foot.release", Map.of("name", name)))
            .orElseGet(() -> wording.say("foot.unreleased")));
    first.add(
        approval
            .approved()
            .map(day -> wording.say("foot.approved", Map.of("date", dates.full(day))))
            .orElseGet(() -> wording.say("foot.not-approved")));
    List<String> second = new ArrayList<>();
    reviewDue.ifPresent(
        day -> second.add(wording.say("foot.review", Map.of("date", dates.full(day)))));
    second.add(
        wording.say(
            "foot.language", Map.of("own", language.ownName(), "english", language.englishName())));
    List<String> lines = new ArrayList<>(List.of(joined(first), joined(second)));
    if (approval.unread()) {
      lines.add(wording.say("foot.unread"));
    }
    return new Foot(
        clinic.name().value(),
        lines,
        wording.say("label.code"),
        approval.code(),
        approval.code().map(code -> Qr.rows(code.replace(" ", ""))).orElse(List.of()),
        wording.say("label.no-code"));
  }

  private static String joined(List<String> parts) {
    return String.join(" · ", parts);
  }
}
