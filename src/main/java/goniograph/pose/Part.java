package goniograph.pose;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A part of the body that can touch something, with the author's words for it. */
public enum Part {
  HIPS(true, "hips"),
  BACK(true, "back"),
  UPPER_BACK(true, "upper back"),
  FRONT(true, "front"),
  SIDE(true, "side"),
  /** The head's nearest side; the neck bends until it lies on. */
  HEAD(false, "head"),
  KNEE(true, "knee", "knees"),
  FOOT(true, "foot", "feet"),
  /** The heel alone; the ankle is free. */
  HEEL(false, "heel", "heels"),
  /** The ball of the foot alone; the ankle is free. */
  TOES(false, "toes", "toes"),
  /** The flat of the hand. */
  HAND(false, "hand", "hands"),
  /** The hand comes down steeply on its fingertips. */
  FINGERTIPS(false, "fingertips", "fingertips"),
  /** Elbow and wrist both; the elbow bends as far as that needs. */
  FOREARM(false, "forearm", "forearms"),
  /** The point of the elbow; its angle stays as typed. */
  ELBOW(false, "elbow", "elbows");

  private final boolean root;
  private final List<String> words;

  Part(boolean root, String... words) {
    this.root = root;
    this.words = List.of(words);
  }

  /** True where the part can carry the whole body, so that the body is placed by it. */
  boolean root() {
    return root;
  }

  /** True where the part stands on both sides. */
  public boolean paired() {
    return words.size() == 2;
  }

  /** True for parts at the end of a leg. */
  boolean ofFoot() {
    return this == FOOT || this == HEEL || this == TOES;
  }

  /** True for parts at the end of an arm. */
  boolean ofHand() {
    return this == HAND || this == FINGERTIPS;
  }

  /** True for parts of the arm short of the hand. */
  boolean ofForearm() {
    return this == FOREARM || this == ELBOW;
  }

  /** True for every part of an arm. */
  boolean ofArm() {
    return ofHand() || ofForearm();
  }

  /** True for the parts that lie on the trunk or are its side. */
  boolean ofTrunk() {
    return this == HIPS || this == BACK || this == UPPER_BACK || this == FRONT || this == SIDE;
  }

  /** The word for one of a pair, or for a part that has no pair. */
  public String one() {
    return words.get(0);
  }

  /** The word for both of a pair. */
  public String both() {
    return words.get(words.size() - 1);
  }

  static Optional<Part> one(String word) {
    return Arrays.stream(values()).filter(p -> p.paired() && p.one().equals(word)).findFirst();
  }

  static Optional<Part> both(String word) {
    return Arrays.stream(values()).filter(part -> part.both().equals(word)).findFirst();
  }
}
