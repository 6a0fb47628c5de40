package goniograph.library;

import goniograph.matter.Located;
import goniograph.matter.Node;

/**
 * A cited source.
 *
 * @param id its id
 * @param fields its fields in CSL, the open citation format
 */
public record Source(Located<String> id, Node.Fields fields) {

  /** A text field, "" if it is not given. */
  public String text(String key) {
    return fields.get(key).orElse(fields) instanceof Node.Scalar scalar ? scalar.raw() : "";
  }
}
