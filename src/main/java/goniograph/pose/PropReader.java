package goniograph.pose;

import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Value;
import java.util.ArrayList;
import java.util.List;

/** Reads what a pose holds. */
final class PropReader {
  private PropReader() {}

  /** The things of a map whose keys are their kinds. */
  static List<PropWish> read(Value props) {
    return props.form("the props", PropReader::things).map(Located::value).orElse(List.of());
  }

  private static List<PropWish> things(Form form) {
    List<PropWish> wishes = new ArrayList<>();
    form.optional("band")
        .form("the band", BandWish::read)
        .ifPresent(band -> wishes.add(band.value()));
    for (ThingKind kind : ThingKind.values()) {
      form.optional(kind.word())
          .form("the " + kind.word(), thing -> ThingWish.read(kind, thing))
          .ifPresent(thing -> wishes.add(thing.value()));
    }
    return wishes;
  }
}
