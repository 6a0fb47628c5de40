package goniograph.sheet;

import goniograph.library.Clinic;
import java.time.LocalTime;
import java.util.Map;
import java.util.stream.Collectors;

/** Phone, hours and what to do when nobody answers, from the clinic file alone. */
record ContactWords(Wording wording, Clinic clinic) {

  Contact contact() {
    return new Contact(
        wording.say("label.phone"),
        phone(clinic),
        hours(),
        wording.say("contact.closed", Map.of("number", phone(clinic.outOfHours().value()))));
  }

  /** The first phone of the clinic file. */
  static String phone(Clinic clinic) {
    return phone(clinic.phones().values().iterator().next().value());
  }

  /** A phone number that reads from left to right in every line (UAX 9, isolates). */
  static String phone(String number) {
    return "\u2066" + number + "\u2069";
  }

  String hours() {
    return clinic.hours().stream()
        .map(
            open ->
                wording.say(
                    "contact.hours",
                    Map.of(
                        "days", wording.say("days." + open.days().value()),
                        "from", time(open.from()),
                        "to", time(open.to()))))
        .collect(Collectors.joining(" "));
  }

  private String time(LocalTime time) {
    String minutes = time.getMinute() < 10 ? wording.number(0) : "";
    return wording.number(time.getHour()) + ":" + minutes + wording.number(time.getMinute());
  }
}
