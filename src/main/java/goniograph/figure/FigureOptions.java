package goniograph.figure;

import java.util.Optional;
import java.util.function.Consumer;

/**
 * How a scene is to be drawn.
 *
 * @param style ink or colour
 * @param weights line weights, which go with the layout and not with the size
 * @param width of one panel, mm
 * @param height of one panel at most, mm
 * @param otherSide true to look from the other side, so that the figure faces the other way; for
 *     right-to-left pages and exercises without a side. A drawing is never flipped
 * @param therapist true for angles with their degrees and the balance mark; patients' pages carry
 *     none
 * @param together true for one panel, the start as a dashed outline, where that outline can be seen
 * @param lettering sets numbers and words; without it there are none
 * @param words the side words
 * @param panelWords numbers and order of the panels
 * @param ground true for the line of the floor; a sheet draws its own
 * @param person who is drawn
 */
public record FigureOptions(
    Style style,
    Weights weights,
    double width,
    double height,
    boolean otherSide,
    boolean therapist,
    boolean together,
    Optional<Lettering> lettering,
    LimbWords words,
    PanelWords panelWords,
    boolean ground,
    Person person) {

  /** Panels of the standard sheet: 56 mm wide, 50 mm high, ink. */
  public static final FigureOptions STANDARD =
      new FigureOptions(
          Style.INK,
          Weights.STANDARD,
          56,
          50,
          false,
          false,
          false,
          Optional.empty(),
          LimbWords.NONE,
          PanelWords.NONE,
          true,
          Person.ADULT);

  public FigureOptions {
    if (!(width >= 10 && height >= 10)) {
      throw new IllegalArgumentException("a panel of " + width + " x " + height + " mm");
    }
  }

  /** The same for the body alone: no words, numbers, angles or balance. */
  FigureOptions bare() {
    return with(
        draft -> {
          draft.therapist = false;
          draft.together = false;
          draft.lettering = Optional.empty();
          draft.words = LimbWords.NONE;
          draft.panelWords = PanelWords.NONE;
        });
  }

  /** The same in another style. */
  public FigureOptions in(Style other) {
    return with(draft -> draft.style = other);
  }

  /** The same at another size, with the line weights of its layout. */
  public FigureOptions sized(double newWidth, double newHeight, Weights newWeights) {
    return with(
        draft -> {
          draft.width = newWidth;
          draft.height = newHeight;
          draft.weights = newWeights;
        });
  }

  /** The same seen from the other side. */
  public FigureOptions fromOtherSide(boolean other) {
    return with(draft -> draft.otherSide = other);
  }

  /** The same with angles and balance. */
  public FigureOptions forTherapist() {
    return with(draft -> draft.therapist = true);
  }

  /** The same with start and end in one panel. */
  public FigureOptions inOnePanel() {
    return with(draft -> draft.together = true);
  }

  /** The same with lettering. */
  public FigureOptions lettered(Lettering by, LimbWords sideWords) {
    return with(
        draft -> {
          draft.lettering = Optional.of(by);
          draft.words = sideWords;
        });
  }

  /** The same with its panels numbered, ordered and named as a language wants. */
  public FigureOptions ordered(PanelWords order) {
    return with(draft -> draft.panelWords = order);
  }

  /** The same without the line of the floor. */
  public FigureOptions withoutGround() {
    return with(draft -> draft.ground = false);
  }

  /** The same with another person. */
  public FigureOptions of(Person other) {
    return with(draft -> draft.person = other);
  }

  private FigureOptions with(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.options();
  }

  /** Options while they are changed. */
  private static final class Draft {
    private Style style;
    private Weights weights;
    private double width;
    private double height;
    private boolean otherSide;
    private boolean therapist;
    private boolean together;
    private Optional<Lettering> lettering;
    private LimbWords words;
    private PanelWords panelWords;
    private boolean ground;
    private Person person;

    Draft(FigureOptions from) {
      style = from.style;
      weights = from.weights;
      width = from.width;
      height = from.height;
      otherSide = from.otherSide;
      therapist = from.therapist;
      together = from.together;
      lettering = from.lettering;
      words = from.words;
      panelWords = from.panelWords;
      ground = from.ground;
      person = from.person;
    }

    FigureOptions options() {
      return new FigureOptions(
          style,
          weights,
          width,
          height,
          otherSide,
          therapist,
          together,
          lettering,
          words,
          panelWords,
          ground,
          person);
    }
  }
}
