package goniograph.matter;

import com.vladsch.flexmark.ast.Emphasis;
import com.vladsch.flexmark.ast.HardLineBreak;
import com.vladsch.flexmark.ast.HtmlEntity;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.SoftLineBreak;
import com.vladsch.flexmark.ast.StrongEmphasis;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import com.vladsch.flexmark.util.sequence.Escaping;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the parts of one piece of text. */
final class InlineReader {
  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final String SENTENCE_ENDS = ".!?…:؟।۔";

  private final TextPlaces places;
  private final TextFindings findings;

  InlineReader(TextPlaces places, TextFindings findings) {
    this.places = places;
    this.findings = findings;
  }

  List<Inline> read(Node block) {
    List<Inline> parts = new ArrayList<>();
    for (Node node : block.getChildren()) {
      part(node, parts);
    }
    return parts;
  }

  private void part(Node node, List<Inline> into) {
    if (node instanceof Text) {
      text(node.getChars(), into);
    } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
      into.add(new Inline.Words(" ", places.span(node.getChars())));
    } else if (node instanceof Emphasis || node instanceof StrongEmphasis) {
      boolean strong = node instanceof StrongEmphasis;
      into.add(new Inline.Stress(strong, read(node), places.span(node.getChars())));
    } else if (node instanceof HtmlEntity) {
      words(node.getChars(), into);
    } else if (node instanceof LinkRef reference) {
      claims(reference, into);
    } else {
      findings.refused(node);
    }
  }

  private void text(BasedSequence chars, List<Inline> into) {
    Matcher slot = Slots.SLOT.matcher(chars);
    int from = 0;
    while (slot.find()) {
      plain(chars.subSequence(from, slot.start()), into);
      BasedSequence whole = chars.subSequence(slot.start(), slot.end());
      into.add(new Inline.Slot(slot.group(1), places.span(whole)));
      from = slot.end();
    }
    plain(chars.subSequence(from, chars.length()), into);
  }

  private void plain(BasedSequence chars, List<Inline> into) {
    for (int i = 0; i < chars.length(); i++) {
      if (chars.charAt(i) == '{' || chars.charAt(i) == '}') {
        findings.brace(chars.getStartOffset() + i);
      }
    }
    if (!chars.isEmpty()) {
      words(chars, into);
    }
  }

  private void words(BasedSequence chars, List<Inline> into) {
    into.add(new Inline.Words(Escaping.unescapeString(chars), places.span(chars)));
  }

  /** {@code [a]}, or {@code [a][b]}, which Markdown takes for one link but are two claims. */
  private void claims(LinkRef reference, List<Inline> into) {
    if (reference.getText().isNotNull() && !reference.getText().isEmpty()) {
      claim(reference.getText(), into);
    }
    claim(reference.getReference(), into);
    if (!endsSentence(reference)) {
      findings.claimPlace(places.span(reference.getChars()), reference.getReference().toString());
    }
  }

  private void claim(BasedSequence id, List<Inline> into) {
    if (ID.matcher(id).matches()) {
      into.add(
          new Inline.Claim(
              id.toString(), places.span(id.getStartOffset() - 1, id.getEndOffset() + 1)));
    } else {
      findings.claimWord(places.span(id), id.toString());
    }
  }

  private boolean endsSentence(LinkRef reference) {
    Node block = reference.getParent();
    String before = places.cut(block.getStartOffset(), reference.getStartOffset());
    String after = places.cut(reference.getEndOffset(), block.getEndOffset());
    String said = before.replaceAll("(\\s|\\[[^\\[\\]]*])+$", "");
    String next = after.replaceAll("^(\\s|\\[[^\\[\\]]*])+", "");
    return ends(said, said.length() - 1) || next.isEmpty() || ends(next, 0);
  }

  private static boolean ends(String text, int at) {
    return at >= 0 && at < text.length() && SENTENCE_ENDS.indexOf(text.charAt(at)) >= 0;
  }
}
