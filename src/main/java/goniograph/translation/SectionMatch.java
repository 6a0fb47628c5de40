package goniograph.translation;

import goniograph.translation.Comparison.Made;
import goniograph.translation.PieceState.State;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The pieces of one section of a source and of its version, matched. */
final class SectionMatch {
  private static final int NONE = -1;

  private final List<TextPiece> source;
  private final List<Made> version;
  private final int[] partner;
  private final boolean[] taken;
  private final State[] states;

  SectionMatch(List<TextPiece> source, List<Made> version) {
    this.source = source;
    this.version = version;
    this.partner = new int[source.size()];
    this.taken = new boolean[version.size()];
    this.states = new State[source.size()];
    Arrays.fill(partner, NONE);
    Arrays.fill(states, State.MISSING);
    inOrder();
    moved();
    changed();
  }

  /** The source's pieces in order, then what the version has besides. */
  List<PieceState> states() {
    List<PieceState> all = new ArrayList<>();
    for (int i = 0; i < source.size(); i++) {
      Optional<TextPiece> to =
          partner[i] == NONE ? Optional.empty() : Optional.of(version.get(partner[i]).piece());
      all.add(new PieceState(states[i], Optional.of(source.get(i)), to));
    }
    for (int j = 0; j < version.size(); j++) {
      if (!taken[j]) {
        Optional<TextPiece> piece = Optional.of(version.get(j).piece());
        all.add(new PieceState(State.LEFT_OVER, Optional.empty(), piece));
      }
    }
    return all;
  }

  private void pair(int i, int j, State state) {
    partner[i] = j;
    taken[j] = true;
    states[i] = state;
  }

  /** Pairs along the longest common subsequence: these are fresh. */
  private void inOrder() {
    int[][] longest = lengths();
    int i = 0;
    int j = 0;
    while (i < source.size() && j < version.size()) {
      if (same(i, j)) {
        pair(i++, j++, State.FRESH);
      } else if (longest[i + 1][j] >= longest[i][j + 1]) {
        i++;
      } else {
        j++;
      }
    }
  }

  /** Length of the longest common subsequence of everything from i and from j on. */
  private int[][] lengths() {
    int[][] longest = new int[source.size() + 1][version.size() + 1];
    for (int i = source.size() - 1; i >= 0; i--) {
      for (int j = version.size() - 1; j >= 0; j--) {
        longest[i][j] =
            same(i, j) ? longest[i + 1][j + 1] + 1 : Math.max(longest[i + 1][j], longest[i][j + 1]);
      }
    }
    return longest;
  }

  private boolean same(int i, int j) {
    return version.get(j).from().filter(source.get(i).digest()::equals).isPresent();
  }

  /** Pieces made from the same words, but standing elsewhere: stale. */
  private void moved() {
    for (int i = 0; i < source.size(); i++) {
      for (int j = 0; j < version.size() && partner[i] == NONE; j++) {
        if (!taken[j] && same(i, j)) {
          pair(i, j, State.STALE);
        }
      }
    }
  }

  /** Whatever stands free between the same two fresh neighbours, in order. */
  private void changed() {
    for (int i = 0; i < source.size(); i++) {
      if (partner[i] == NONE) {
        int free = free(i);
        if (free != NONE) {
          pair(i, free, version.get(free).unmatched());
        }
      }
    }
  }

  /** The first free piece of the version in the gap of source piece {@code i}. */
  private int free(int i) {
    int from = 0;
    for (int before = 0; before < i; before++) {
      from = states[before] == State.MISSING || moved(before) ? from : partner[before] + 1;
    }
    int to = version.size();
    for (int after = source.size() - 1; after > i; after--) {
      to = states[after] == State.FRESH ? partner[after] : to;
    }
    for (int j = from; j < to; j++) {
      if (!taken[j]) {
        return j;
      }
    }
    return NONE;
  }

  private boolean moved(int i) {
    return states[i] == State.STALE && same(i, partner[i]);
  }
}
