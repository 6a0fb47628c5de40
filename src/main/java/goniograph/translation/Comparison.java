package goniograph.translation;

import goniograph.matter.Body;
import goniograph.translation.PieceState.State;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Holds a language version against its source. Inside each section the source's pieces and those
 * the version was made from are matched by the longest common subsequence of source digests, so
 * that an inserted piece makes only itself missing, and a moved or changed one only itself stale.
 */
public final class Comparison {
  private final Map<String, Deque<String>> sourcesOf = new HashMap<>();

  private Comparison(List<PieceRecord> records) {
    for (PieceRecord record : records) {
      sourcesOf.computeIfAbsent(record.target(), key -> new ArrayDeque<>()).add(record.source());
    }
  }

  /** Every piece of the source in order, and behind each section what the version has besides. */
  public static List<PieceState> of(Body source, Body version, List<PieceRecord> records) {
    return new Comparison(records).compare(TextPiece.of(source), TextPiece.of(version));
  }

  private List<PieceState> compare(List<TextPiece> source, List<TextPiece> version) {
    Map<String, List<TextPiece>> from = bySection(source);
    Map<String, List<TextPiece>> to = bySection(version);
    Set<String> sections = new LinkedHashSet<>(from.keySet());
    sections.addAll(to.keySet());
    List<PieceState> states = new ArrayList<>();
    for (String section : sections) {
      List<Made> made = to.getOrDefault(section, List.of()).stream().map(this::made).toList();
      states.addAll(new SectionMatch(from.getOrDefault(section, List.of()), made).states());
    }
    return List.copyOf(states);
  }

  private static Map<String, List<TextPiece>> bySection(List<TextPiece> pieces) {
    Map<String, List<TextPiece>> sections = new LinkedHashMap<>();
    pieces.forEach(
        piece -> sections.computeIfAbsent(piece.section(), key -> new ArrayList<>()).add(piece));
    return sections;
  }

  /** A version's piece and the digest of what it was made from, if that is known. */
  record Made(TextPiece piece, Optional<String> from) {
    State unmatched() {
      return from.isPresent() ? State.STALE : State.UNRECORDED;
    }
  }

  /** Of several records for one text the first serves the first piece with that text. */
  private Made made(TextPiece piece) {
    if (!piece.hasWords()) {
      return new Made(piece, Optional.of(piece.digest()));
    }
    Deque<String> sources = sourcesOf.getOrDefault(piece.digest(), new ArrayDeque<>());
    String first = sources.size() > 1 ? sources.poll() : sources.peek();
    return new Made(piece, Optional.ofNullable(first));
  }
}
