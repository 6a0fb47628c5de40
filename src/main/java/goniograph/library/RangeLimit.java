package goniograph.library;

import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.matter.Located;

/**
 * The limits of one movement of one joint in this entry.
 *
 * @param joint the joint word, with its side if one is named: {@code elbow left}
 * @param movement the movement words of pose files: {@code external rotation}
 * @param degrees the angles allowed
 */
public record RangeLimit(
    Located<String> joint, String movement, Located<Range<Quantity>> degrees) {}
