package goniograph.sheet;

import goniograph.figure.HandPlace;
import goniograph.figure.PoseTelling;
import goniograph.figure.ShapedHand;
import goniograph.figure.Stance;
import goniograph.figure.Touch;
import goniograph.language.Language;
import goniograph.language.Phrases;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a drawing shows, in words, for those who hear the page: position, view, what touches, what
 * moves, and where the hands are. Patients hear no degrees, they go by landmarks; therapists do.
 */
public final class PictureWords {
  private final Wording wording;
  private final Language language;
  private final PoseTelling telling;

  PictureWords(Wording wording, Language language, PoseTelling telling) {
    this.wording = wording;
    this.language = language;
    this.telling = telling;
  }

  /** The words in the language of the phrases. */
  public static PictureWords of(Phrases phrases, PoseTelling telling) {
    return new PictureWords(new Wording(phrases), phrases.language(), telling);
  }

  /**
   * The words of one panel.
   *
   * @param number from 1
   * @param caption the words below it, "" without
   */
  public String panel(int number, String caption) {
    List<String> sentences = new ArrayList<>();
    if (number == 1) {
      sentences.add(position());
    }
    if (!caption.isEmpty()) {
      sentences.add(wording.say("figure.sentence", Map.of("words", caption)));
    }
    if (number <= telling.panels().size()) {
      shown(number, telling.panels().get(number - 1), sentences);
    }
    if (sentences.isEmpty()) {
      sentences.add(wording.say("figure.same"));
    }
    return String.join(" ", sentences);
  }

  /** The words of the whole movement. */
  public String whole() {
    return IntStream.rangeClosed(1, telling.panels().size())
        .mapToObj(number -> panel(number, ""))
        .filter(words -> !words.isEmpty())
        .reduce((a, b) -> a + " " + b)
        .orElse("");
  }

  /** The words of the whole movement with its joints in degrees, for therapists. */
  public String measured() {
    List<String> sentences = new ArrayList<>(List.of(whole()));
    for (PoseTelling.Change change : telling.changes()) {
      sentences.add(
          wording.say(
              "figure.degrees",
              Map.of(
                  "joint", part("joint." + change.joint().word(), change.sides()),
                  "movement", wording.say("figure.movement." + movement(change)),
                  "from", language.number(change.from()),
                  "to", language.number(change.to()))));
    }
    return String.join(" ", sentences);
  }

  private static String movement(PoseTelling.Change change) {
    return change.movement().name().toLowerCase(Locale.ROOT);
  }

  private String position() {
    String posture = wording.say("figure.posture." + telling.base());
    String view = wording.say("figure.view." + telling.view());
    PoseTelling.Panel first = telling.panels().get(0);
    List<String> touches = new ArrayList<>();
    first.stance().map(this::stance).ifPresent(touches::add);
    touches.addAll(touches(first.touches()));
    return touches.isEmpty()
        ? wording.say("figure.shown", Map.of("posture", posture, "view", view))
        : wording.say(
            "figure.shown-with",
            Map.of("posture", posture, "view", view, "touches", language.list(touches)));
  }

  private void shown(int number, PoseTelling.Panel panel, List<String> sentences) {
    if (!panel.moves().isEmpty()) {
      String moves =
          language.list(
              panel.moves().stream()
                  .map(move -> part(move.phrase().substring("figure.".length()), move.sides()))
                  .toList());
      sentences.add(
          number == 1
              ? wording.say("figure.here", Map.of("moves", moves))
              : language.capitalised(wording.say("figure.sentence", Map.of("words", moves))));
    }
    List<String> states =
        Stream.of(
                panel.leaves().stream().map(this::leaves),
                number == 1 ? Stream.<String>of() : touches(panel.touches()).stream(),
                panel.hands().stream().map(this::hand),
                panel.shapes().stream().map(this::shape))
            .flatMap(words -> words)
            .toList();
    if (!states.isEmpty()) {
      sentences.add(wording.say("figure.now", Map.of("states", language.list(states))));
    }
  }

  /** What touches, the parts that share a place in one: {@code hips and hands on the chair}. */
  private List<String> touches(List<Touch> touches) {
    Map<String, List<String>> byPlace = new LinkedHashMap<>();
    List<String> held = new ArrayList<>();
    for (Touch touch : touches) {
      if (touch.held()) {
        held.add(part("holding." + id(touch), touch.sides()));
      } else {
        byPlace
            .computeIfAbsent(place("at.", touch), place -> new ArrayList<>())
            .add(part("part." + word(touch), touch.sides()));
      }
    }
    List<String> words = new ArrayList<>();
    byPlace.forEach((place, parts) -> words.add(touching(language.list(parts), place)));
    words.addAll(held);
    return words;
  }

  private String leaves(Touch touch) {
    return touch.held()
        ? part("let-go." + id(touch), touch.sides())
        : touching(part("part." + word(touch), touch.sides()), place("off.", touch));
  }

  private String touching(String parts, String place) {
    return wording.say("figure.touch", Map.of("parts", parts, "place", place));
  }

  private String place(String kind, Touch touch) {
    return wording.say("figure." + kind + id(touch), Map.of("part", word(touch)));
  }

  private static String word(Touch touch) {
    return touch.part().name().toLowerCase(Locale.ROOT);
  }

  private static String id(Touch touch) {
    return touch.target().replace(' ', '-');
  }

  private String stance(Stance stance) {
    return part("stance." + (stance.line() ? "line" : "step"), stance.front());
  }

  private String shape(ShapedHand hand) {
    return wording.say(
        "figure.shape." + hand.shape().word(), Map.of("hand", part("part.hand", hand.sides())));
  }

  private String hand(HandPlace hand) {
    return wording.say(
        "figure.hand",
        Map.of(
            "hands", part("part.hand", hand.sides()),
            "height", wording.say("figure.height." + hand.height().word()),
            "reach", wording.say("figure.reach." + hand.reach().word())));
  }

  private String part(String id, PoseTelling.Sides sides) {
    return wording.say("figure." + id, Map.of("sides", sides.word()));
  }
}
