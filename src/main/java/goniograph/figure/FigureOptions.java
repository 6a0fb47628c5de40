package goniograph.figure;

import java.util.Optional;

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
    return new FigureOptions(
        style,
        weights,
        width,
        height,
        otherSide,
        false,
        false,
        Optional.empty(),
        LimbWords.NONE,
        PanelWords.NONE,
        ground,
        person);
  }

  /** The same in another style. */
  public FigureOptions in(Style other) {
    return new FigureOptions(
        other,
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

  /** The same at another size, with the line weights of its layout. */
  public FigureOptions sized(double newWidth, double newHeight, Weights newWeights) {
    return new FigureOptions(
        style,
        newWeights,
        newWidth,
        newHeight,
        otherSide,
        therapist,
        together,
        lettering,
        words,
        panelWords,
        ground,
        person);
  }

  /** The same seen from the other side. */
  public FigureOptions fromOtherSide(boolean other) {
    return new FigureOptions(
        style,
        weights,
        width,
        height,
        other,
        therapist,
        together,
        lettering,
        words,
        panelWords,
        ground,
        person);
  }

  /** The same with angles and balance. */
  public FigureOptions forTherapist() {
    return new FigureOptions(
        style,
        weights,
        width,
        height,
        otherSide,
        true,
        together,
        lettering,
        words,
        panelWords,
        ground,
        person);
  }

  /** The same with start and end in one panel. */
  public FigureOptions inOnePanel() {
    return new FigureOptions(
        style,
        weights,
        width,
        height,
        otherSide,
        therapist,
        true,
        lettering,
        words,
        panelWords,
        ground,
        person);
  }

  /** The same with lettering. */
  public FigureOptions lettered(Lettering by, LimbWords sideWords) {
    return new FigureOptions(
        style,
        weights,
        width,
        height,
        otherSide,
        therapist,
        together,
        Optional.of(by),
        sideWords,
        panelWords,
        ground,
        person);
  }

  /** The same with its panels numbered, ordered and named as a language wants. */
  public FigureOptions ordered(PanelWords order) {
    return new FigureOptions(
        style, weights, width, height, otherSide, therapist, together, lettering, words, order,
        ground, person);
  }

  /** The same without the line of the floor. */
  public FigureOptions withoutGround() {
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
        false,
        person);
  }

  /** The same with another person. */
  public FigureOptions of(Person other) {
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
        other);
  }
}
