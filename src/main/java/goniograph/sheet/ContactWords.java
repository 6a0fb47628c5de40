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
        wording.say("contact.closed", Map.of("number", clinic.outOfHours().value())));
  }

  /** The first phone of the clinic file. */
  static String phone(Clinic clinic) {
    return clinic.phones().values().iterator().next().value();
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
