package goniograph.pose;

import goniograph.body.Side;
import goniograph.source.Span;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A part of the body that touches something.
 *
 * @param part the part
 * @param side its side; empty for both of a pair and for parts without a pair
 * @param manner how it touches
 * @param target the support's word, {@code thighs}, {@code left foot} or the prop's word
 * @param heightCm where on an upright support, above the floor
 * @param at the place in the pose file
 */
public record Contact(
    Part part,
    Optional<Side> side,
    Manner manner,
    String target,
    Optional<Double> heightCm,
    Span at) {

  private static final String THIGHS = "thighs";

  /** Parts of the body that may be touched, like a support; `thighs` means each hand's own. */
  static final List<String> BODY =
      List.of(
          THIGHS,
          "left thigh",
          "right thigh",
          "left foot",
          "right foot",
          "left hand",
          "right hand");

  /** How a part touches. */
  public enum Manner {
    /** It stays where it was in the first key frame that has it there. */
    ON("on"),
    /** It slides: its height is kept, and the joint above keeps its typed angle. */
    SLIDES_ON("slides on"),
    /** It stays, and the limb bends the way it was typed. */
    STAYS_ON("stays on"),
    /** The hand holds a thing and goes where the arm takes it. */
    HOLDING("holding");

    private final String word;

    Manner(String word) {
      this.word = word;
    }

    /** The author's word. */
    public String word() {
      return word;
    }
  }

  /** The same contact once for each side that it names, so that each has at most one. */
  List<Contact> split() {
    return part.paired() && side.isEmpty() ? List.of(on(Side.LEFT), on(Side.RIGHT)) : List.of(this);
  }

  private Contact on(Side one) {
    return new Contact(part, Optional.of(one), manner, target, heightCm, at);
  }

  /** True where both say the same of the same part, wherever they stand in the file. */
  boolean same(Contact other) {
    return part == other.part
        && side.equals(other.side)
        && manner == other.manner
        && target.equals(other.target);
  }

  /** The same contact made by another part. */
  Contact on(Part other) {
    return new Contact(other, side, manner, target, heightCm, at);
  }

  /** What of a contact lasts while it turns into another: of a foot that rolls, the ball. */
  Optional<Contact> into(Contact other) {
    if (same(other)) {
      return Optional.of(this);
    }
    boolean rolls = part == Part.FOOT && other.same(on(Part.TOES));
    return rolls || on(Part.FOOT).same(other) && part == Part.TOES
        ? Optional.of(on(Part.TOES))
        : Optional.empty();
  }

  /** Left and right swapped. */
  Contact mirrored() {
    return new Contact(part, side.map(Side::other), manner, mirrored(target), heightCm, at);
  }

  private static String mirrored(String target) {
    return BODY.contains(target) && !target.equals(THIGHS)
        ? target.startsWith("left ")
            ? "right " + target.substring(5)
            : "left " + target.substring(6)
        : target;
  }

  /** The foot that another lies on, where the contact is with a foot. */
  Optional<Side> otherFoot() {
    return body(" foot");
  }

  /** The hand that another lies on, where the contact is with a hand. */
  Optional<Side> otherHand() {
    return body(" hand");
  }

  /** The thigh that is touched, where one is. */
  Optional<Side> thigh() {
    return target.equals(THIGHS) ? Optional.of(side.orElse(Side.RIGHT)) : body(" thigh");
  }

  private Optional<Side> body(String part) {
    return Arrays.stream(Side.values())
        .filter(s -> target.equals(s.name().toLowerCase(Locale.ROOT) + part))
        .findFirst();
  }

  /** As an author writes it, for instance {@code left hand on counter}. */
  public String words() {
    String name =
        side.map(s -> s.name().toLowerCase(Locale.ROOT) + " " + part.one()).orElse(part.both());
    return name + " " + manner.word + " " + target;
  }

  static Optional<Manner> manner(String word) {
    return Arrays.stream(Manner.values()).filter(m -> m.word.equals(word)).findFirst();
  }
}
