package goniograph.build;

import goniograph.body.Side;
import goniograph.library.Entry;
import goniograph.render.Layout;
import java.util.Locale;
import java.util.Optional;

/**
 * One sheet to make.
 *
 * @param entry the entry
 * @param language language tag
 * @param side the side, where the entry asks for one
 * @param layout the layout
 * @param paper {@code a4} or {@code letter}
 */
record Job(Entry entry, String language, Optional<Side> side, Layout layout, String paper) {

  /** Path of its files below the output folder, without ending. */
  String path() {
    String name =
        entry.id() + side.map(one -> "-" + one.name().toLowerCase(Locale.ROOT)).orElse("");
    return language + "/" + layout.name() + "-" + paper + "/" + name;
  }
}
