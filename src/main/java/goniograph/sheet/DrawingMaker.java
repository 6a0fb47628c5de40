package goniograph.sheet;

import goniograph.body.Side;
import goniograph.figure.Figure;
import goniograph.figure.FigureOptions;
import goniograph.figure.LimbWords;
import goniograph.figure.Motion;
import goniograph.figure.Panel;
import goniograph.figure.Person;
import goniograph.figure.PoseTelling;
import goniograph.language.Direction;
import goniograph.language.Phrases;
import goniograph.matter.Body;
import goniograph.pose.Scene;
import goniograph.type.FaceOrder;
import goniograph.type.Family;
import goniograph.type.TextOutline;
import goniograph.type.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The drawings of a sheet, at the size they are printed.
 *
 * @param phrases the phrases of the sheet's language
 * @param person who is drawn
 */
public record DrawingMaker(Phrases phrases, Person person) {
  private static final double WIDTH = 180;
  private static final double HEIGHT = 50;
  private static final double WIDEST = 88;
  private static final double GAP = 3;

  /** Farther to a side than this a support stands beside the person, in body heights. */
  private static final double BESIDE = 0.12;

  /** Farther ahead than this it hides nobody, in body heights. */
  private static final double AHEAD = 0.25;

  /**
   * Draws a scene.
   *
   * @param entry the entry's id, which begins every id in the drawings
   * @param title the sheet's title
   * @param body the text, whose captions and picture words are taken
   * @param side the side that was answered; without one a right-to-left page looks from the other
   *     side
   */
  public Drawings drawings(
      Scene scene, String entry, String title, Body body, Optional<Side> side) {
    Wording wording = new Wording(phrases);
    FigureOptions options = options(scene, side, wording);
    Figure figure = Figure.of(scene, options);
    PictureWords words = new PictureWords(wording, phrases.language(), PoseTelling.of(scene));
    List<String> captions = body.pieces("captions").stream().map(piece -> piece.plain()).toList();
    String told =
        body.pieces("picture").stream()
            .map(piece -> piece.plain())
            .collect(Collectors.joining(" "));
    List<Drawings.Panel> panels = new ArrayList<>();
    for (Panel panel : figure.panels()) {
      int place = panel.number() - 1;
      String caption = place < captions.size() ? captions.get(place) : "";
      String alternative = told.isEmpty() ? words.panel(panel.number(), caption) : told;
      panels.add(
          new Drawings.Panel(
              caption,
              panel.svg(entry + "-" + panel.number(), title, alternative),
              alternative,
              panel.floor()));
    }
    figure.wrong().map(panel -> wrong(panel, figure, entry, wording)).ifPresent(panels::add);
    String whole = told.isEmpty() ? words.whole() : told;
    return new Drawings(panels, motion(scene, options, entry + "-motion", whole, wording));
  }

  private static Optional<Drawings.Motion> motion(
      Scene scene, FigureOptions options, String id, String words, Wording wording) {
    return Motion.of(scene, options)
        .map(
            motion ->
                new Drawings.Motion(
                    id, motion.svg(id, words), motion.style(id), wording.say("figure.play")));
  }

  /** The wrong way stands as low as the floor of the others; its caption says what it is. */
  private static Drawings.Panel wrong(Panel panel, Figure figure, String entry, Wording wording) {
    String words = wording.say("figure.not-like-this");
    return new Drawings.Panel(
        words,
        panel.svg(entry + "-wrong", words, words),
        words,
        figure.panels().get(0).height() - panel.height(),
        true);
  }

  private FigureOptions options(Scene scene, Optional<Side> side, Wording wording) {
    int panels = scene.keys().size() + (scene.wrong().isPresent() ? 1 : 0);
    double width = Math.min(WIDEST, WIDTH / panels - GAP);
    boolean rightToLeft = phrases.language().direction() == Direction.RIGHT_TO_LEFT;
    FigureOptions options =
        FigureOptions.STANDARD
            .of(person)
            .sized(width, HEIGHT, FigureOptions.STANDARD.weights())
            .fromOtherSide(rightToLeft && side.isEmpty() && !hidden(scene))
            .withoutGround();
    return side.map(one -> options.lettered(this::outline, limbs(wording))).orElse(options);
  }

  /** Whether something stands beside the person: from its side it would hide the body. */
  private static boolean hidden(Scene scene) {
    return scene.supports().stream()
        .filter(support -> !support.carries())
        .flatMap(support -> support.boxes().stream())
        .anyMatch(box -> Math.abs(box.centre().z()) > BESIDE && Math.abs(box.centre().x()) < AHEAD);
  }

  private static LimbWords limbs(Wording wording) {
    return (side, group) ->
        Optional.of(
            wording.say(
                "side."
                    + side.name().toLowerCase(Locale.ROOT)
                    + (group == LimbWords.Group.ARM ? "-arm" : "-leg"),
                Map.of()));
  }

  private TextOutline outline(String text, double size) {
    return TextOutline.of(
        text,
        FaceOrder.of(Family.LATIN, Weight.BOLD, phrases.language().tag()),
        goniograph.type.Direction.AUTO,
        size);
  }
}
