package goniograph.figure;

import goniograph.body.Build;
import goniograph.library.Clinic.FigureSettings;

/**
 * Who is drawn. Neutral in sex, skin and age but for what a clinic asks; angles never change.
 *
 * @param build the shape of the body
 * @param headCovering true for plain cloth over hair and neck, the face free
 * @param wheelchair true for a wheelchair in place of the chair of someone who stays seated
 */
public record Person(Build build, boolean headCovering, boolean wheelchair) {
  /** A bare-headed adult. */
  public static final Person ADULT = new Person(Build.ADULT, false, false);

  /** Who a clinic has in its drawings. */
  public static Person of(FigureSettings settings) {
    return new Person(settings.build(), settings.headCovering(), settings.wheelchair());
  }
}
