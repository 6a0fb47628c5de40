package goniograph.pose;

import goniograph.body.Side;
import goniograph.matter.Node;
import goniograph.matter.Value;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads contacts: {@code [left] hand on|slides on|stays on|holding counter [at 90 cm]}. */
final class ContactReader {
  private static final Pattern CONTACT =
      Pattern.compile(
          "(.+?) (slides on|stays on|on|holding) (.+?)(?: at (\\d{1,3}(?:\\.\\d)?) ?cm)?");
  private static final List<String> BOTH = Arrays.stream(Part.values()).map(Part::both).toList();
  private static final List<String> PARTS = partWords();

  private final List<String> targets;
  private final Complaint complaint;

  /**
   * A reader for one pose.
   *
   * @param targets the words of what is there to be touched
   */
  ContactReader(List<String> targets, Complaint complaint) {
    this.targets = targets;
    this.complaint = complaint;
  }

  /** The contacts of a list; what cannot be understood is left out after its finding. */
  List<Contact> read(Value list) {
    return list.list(item -> item.scalar().flatMap(this::contact));
  }

  private Optional<Contact> contact(Node.Scalar scalar) {
    Phrase phrase = Phrase.of(scalar);
    Matcher parts = CONTACT.matcher(phrase.text());
    if (!parts.matches()) {
      complaint.say(
          "pose-contact-grammar",
          phrase,
          "`" + phrase.text() + "` does not say what touches what.",
          "Write, for instance, `feet on floor` or `left hand on counter`.");
      return Optional.empty();
    }
    Phrase target = phrase.part(parts.start(3), parts.end(3));
    if (!targets.contains(target.text())) {
      complaint.unknown("pose-contact-target", target, "a thing in this pose", targets);
      return Optional.empty();
    }
    Optional<Double> height = Optional.ofNullable(parts.group(4)).map(Double::valueOf);
    Contact.Manner manner = Contact.manner(parts.group(2)).orElseThrow();
    return part(phrase.part(0, parts.end(1)))
        .map(p -> new Contact(p.part, p.side, manner, target.text(), height, phrase.at()));
  }

  private record SidedPart(Part part, Optional<Side> side) {}

  private Optional<SidedPart> part(Phrase phrase) {
    Optional<SidedPart> found = part(phrase.text());
    if (found.isEmpty()) {
      complaint.unknown(
          "pose-contact-part",
          phrase,
          "a part that can touch",
          PARTS,
          "Known are `" + String.join("`, `", BOTH) + "`, and one of a pair: `left hand`.");
    }
    return found;
  }

  private static Optional<SidedPart> part(String words) {
    for (Side side : Side.values()) {
      String lead = side == Side.LEFT ? "left " : "right ";
      if (words.startsWith(lead)) {
        return Part.one(words.substring(lead.length()))
            .map(part -> new SidedPart(part, Optional.of(side)));
      }
    }
    return Part.both(words).map(part -> new SidedPart(part, Optional.empty()));
  }

  private static List<String> partWords() {
    List<String> words = new ArrayList<>(BOTH);
    Arrays.stream(Part.values())
        .filter(Part::paired)
        .flatMap(part -> Stream.of("left " + part.one(), "right " + part.one()))
        .forEach(words::add);
    return List.copyOf(words);
  }
}
