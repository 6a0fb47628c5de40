package goniograph.register;

import java.util.List;

/**
 * One language version as it stands.
 *
 * @param language its language tag
 * @param file path of its text
 * @param pieces digest of each of its pieces, in the order of its text; none where there is no
 *     version in this language
 * @param stale names of the pieces whose source has changed since, for instance "do 3"
 * @param missing names of the source pieces that it lacks
 */
public record VersionDigests(
    String language, String file, List<String> pieces, List<String> stale, List<String> missing) {
  public VersionDigests {
    pieces = List.copyOf(pieces);
    stale = List.copyOf(stale);
    missing = List.copyOf(missing);
  }
}
