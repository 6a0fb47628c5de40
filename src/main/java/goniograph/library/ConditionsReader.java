package goniograph.library;

import goniograph.dose.Measure;
import goniograph.library.Vocabulary.Feet;
import goniograph.library.Vocabulary.Stance;
import goniograph.library.Vocabulary.Supervision;
import goniograph.library.Vocabulary.SupportNeed;
import goniograph.library.Vocabulary.SupportSide;
import goniograph.library.Vocabulary.Surface;
import goniograph.library.Vocabulary.Vision;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Spellings;

/** Reads the conditions that an entry and a ladder step share. */
final class ConditionsReader {
  private ConditionsReader() {}

  static Conditions read(Form form) {
    return new Conditions(
        form.optional("stance").as(Spellings.oneOf(Stance.class)),
        form.optional("vision").as(Spellings.oneOf(Vision.class)),
        form.optional("surface").as(Spellings.oneOf(Surface.class)),
        form.optional("feet").as(Spellings.oneOf(Feet.class)),
        form.optional("head_movement").as(Spellings.TRUTH),
        form.optional("support")
            .form("support", ConditionsReader::support)
            .map(Located::value)
            .orElse(Support.NONE),
        form.optional("supervision").as(Spellings.oneOf(Supervision.class)),
        form.optional("figure").as(Spellings.ID_WORD));
  }

  private static Support support(Form form) {
    return new Support(
        form.optional("need").as(Spellings.oneOf(SupportNeed.class)),
        form.optional("object").as(Spellings.ID_WORD),
        form.optional("height").as(DoseSpellings.amounts(Measure.LENGTH)),
        form.optional("reach").as(DoseSpellings.amounts(Measure.LENGTH)),
        form.optional("side").as(Spellings.oneOf(SupportSide.class)));
  }
}
