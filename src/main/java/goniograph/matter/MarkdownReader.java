package goniograph.matter;

import com.vladsch.flexmark.ast.BulletList;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.ListBlock;
import com.vladsch.flexmark.ast.OrderedList;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import goniograph.finding.Finding;
import goniograph.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Reads the text of an entry: CommonMark narrowed to a title, sections, paragraphs, lists of one
 * level and emphasis. Everything else gives a finding and is left out.
 */
public final class MarkdownReader {
  private static final Parser PARSER = Parser.builder().build();

  private final TextPlaces places;
  private final TextFindings findings;
  private final InlineReader inlines;
  private final List<Body.Section> sections = new ArrayList<>();
  private Optional<Piece> title = Optional.empty();
  private Optional<Located<String>> open = Optional.empty();
  private List<Piece> pieces = new ArrayList<>();

  private MarkdownReader(TextPlaces places, Consumer<Finding> findings) {
    this.places = places;
    this.findings = new TextFindings(places, findings);
    this.inlines = new InlineReader(places, this.findings);
  }

  /** Reads a file from character {@code from} to its end. */
  public static Body read(SourceFile file, int from, Consumer<Finding> findings) {
    TextPlaces places = new TextPlaces(file, from);
    List<Finding> found = new ArrayList<>();
    try {
      Body body = new MarkdownReader(places, found::add).body();
      found.forEach(findings);
      return body;
    } catch (StackOverflowError tooDeep) {
      // The parser recurses; emphasis or lists nested a thousand deep are nobody's sheet.
      new TextFindings(places, findings).tooDeep();
      return new Body(Optional.empty(), List.of(), places.all());
    }
  }

  private Body body() {
    findings.characters();
    for (Node block : PARSER.parse(places.text()).getChildren()) {
      block(block);
    }
    close();
    if (title.isEmpty()) {
      findings.titleMissing();
    }
    return new Body(title, sections, places.all());
  }

  private void block(Node block) {
    if (block instanceof Heading heading) {
      heading(heading);
    } else if (block instanceof Paragraph) {
      piece(Piece.Kind.PARAGRAPH, block);
    } else if (block instanceof ListBlock list) {
      list(list);
    } else {
      findings.refused(block);
    }
  }

  private void heading(Heading heading) {
    if (heading.isSetextHeading() || heading.getLevel() > 2) {
      findings.structure(heading, "This heading is not allowed.", "Write `# Title` or `## why`.");
    } else if (heading.getLevel() == 2) {
      section(heading);
    } else if (title.isPresent()) {
      findings.structure(heading, "A second title.", "Keep one line with `# `.");
    } else {
      title =
          Optional.of(read(Piece.Kind.TITLE, 0, heading)).filter(piece -> !piece.text().isBlank());
    }
  }

  private void section(Heading heading) {
    close();
    Located<String> key =
        new Located<>(heading.getText().toString().strip(), places.span(heading.getText()));
    if (sections.stream().anyMatch(section -> section.key().value().equals(key.value()))) {
      findings.structure(
          heading, "The section `" + key.value() + "` stands twice.", "Join the two sections.");
    }
    open = Optional.of(key);
  }

  private void close() {
    open.ifPresent(key -> sections.add(new Body.Section(key, pieces)));
    pieces = new ArrayList<>();
  }

  private void list(ListBlock list) {
    Piece.Kind kind = list instanceof OrderedList ? Piece.Kind.STEP : Piece.Kind.BULLET;
    for (Node item : list.getChildren()) {
      item(kind, item);
    }
  }

  private void item(Piece.Kind kind, Node item) {
    Node first = item.getFirstChild();
    if (!(first instanceof Paragraph)) {
      findings.structure(
          item, "This list item has no text of its own.", "Write one, or delete it.");
      return;
    }
    piece(kind, first);
    for (Node more = first.getNext(); more != null; more = more.getNext()) {
      nested(more);
    }
  }

  private void nested(Node more) {
    if (more instanceof Paragraph || more instanceof BulletList || more instanceof OrderedList) {
      findings.structure(
          more,
          "A list item holds more than one paragraph.",
          "Make it an item of its own, or join it to the text before.");
    } else {
      findings.refused(more);
    }
  }

  private void piece(Piece.Kind kind, Node block) {
    if (open.isEmpty()) {
      findings.structure(
          block, "This text stands before the first section.", "Put it behind a line `## why`.");
      return;
    }
    long steps = pieces.stream().filter(piece -> piece.kind() == Piece.Kind.STEP).count();
    Piece piece = read(kind, kind == Piece.Kind.STEP ? (int) steps + 1 : 0, block);
    if (!piece.text().isEmpty()) {
      pieces.add(piece);
    }
  }

  private Piece read(Piece.Kind kind, int number, Node block) {
    int from =
        block.getFirstChild() == null
            ? block.getEndOffset()
            : block.getFirstChild().getStartOffset();
    int to =
        block.getLastChild() == null ? block.getEndOffset() : block.getLastChild().getEndOffset();
    String text = places.cut(from, to);
    int start = from + text.length() - text.stripLeading().length();
    int end = Math.max(start, from + text.stripTrailing().length());
    return new Piece(
        kind, number, places.cut(start, end), inlines.read(block), places.span(start, end));
  }
}
