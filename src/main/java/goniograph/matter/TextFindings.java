package goniograph.matter;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.IndentedCodeBlock;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.util.ast.Node;
import goniograph.finding.Finding;
import goniograph.source.Span;
import java.util.Locale;
import java.util.function.Consumer;

/** What can be wrong with the form of a text, in words for an author. */
final class TextFindings {
  private final TextPlaces places;
  private final Consumer<Finding> findings;

  TextFindings(TextPlaces places, Consumer<Finding> findings) {
    this.places = places;
    this.findings = findings;
  }

  /** Characters that show a wrong encoding, or that nobody can see. */
  void characters() {
    String text = places.text();
    int lost = text.indexOf('\uFFFD');
    if (lost >= 0) {
      findings.accept(Encoding.finding(places.span(lost, lost + 1)));
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isISOControl(c) && c != '\n' && c != '\r' && c != '\t') {
        error(
            "text-character",
            places.span(i, i + 1),
            String.format(Locale.ROOT, "The character U+%04X is not allowed.", (int) c),
            "It is invisible and would be lost or printed as a box.",
            "Delete the character.");
      }
    }
  }

  void titleMissing() {
    error(
        "text-title-missing",
        places.span(0, 0),
        "The text has no title.",
        "Patient and therapist find the sheet again by its title.",
        "Begin the text with a line such as `# Chair rise`.");
  }

  void tooDeep() {
    error(
        "text-structure",
        places.span(0, 0),
        "The text nests lists or emphasis far too deeply to be read.",
        "A sheet has one title, fixed sections and lists of one level; nothing else has a place.",
        "Look for a long run of `*`, `_` or list marks and take it out.");
  }

  void structure(Node node, String what, String mend) {
    error(
        "text-structure",
        places.span(node.getChars().trim()),
        what,
        "A sheet has one title, fixed sections and lists of one level; nothing else has a place.",
        mend);
  }

  /** A kind of Markdown that has no place on a sheet. */
  void refused(Node node) {
    Span at = places.span(node.getChars().trim());
    if (node instanceof HtmlBlockBase || node instanceof HtmlInlineBase) {
      error("text-html", at, "HTML is not allowed.", FORM, "Write the words alone.");
    } else if (node instanceof Image || node instanceof ImageRef) {
      error(
          "text-image",
          at,
          "An image is not allowed.",
          "Figures are drawn from poses, so that they agree with the dose and the words.",
          "Name a pose file in the front matter: `figure: …`.");
    } else if (node instanceof Link
        || node instanceof AutoLink
        || node instanceof MailLink
        || node instanceof Reference) {
      error(
          "text-link", at, "A link is not allowed.", "Paper cannot follow it.", "Write the words.");
    } else if (node instanceof Code
        || node instanceof FencedCodeBlock
        || node instanceof IndentedCodeBlock) {
      error(
          "text-code",
          at,
          "Code is not allowed.",
          FORM,
          "Take out the back-ticks, or the spaces before the line.");
    } else {
      structure(node, "This kind of block is not allowed.", "Write a paragraph or a list.");
    }
  }

  private static final String FORM = "Form is the sheet's business, so that all sheets look alike.";

  void brace(int at) {
    error(
        "slot-brace",
        places.span(at, at + 1),
        "A brace without its partner.",
        "The slot would not be filled, and the reader would see a brace.",
        "Write the slot as `{hold}`.");
  }

  void claimWord(Span at, String typed) {
    error(
        "claim-id",
        at,
        "`[" + typed + "]` is not the id of a claim.",
        "Square brackets name the evidence of a sentence and are not printed.",
        "Write an id such as `[walking-helps]`, or take out the brackets.");
  }

  void claimPlace(Span at, String id) {
    error(
        "claim-place",
        at,
        "`[" + id + "]` does not stand at the end of a sentence.",
        "It must be plain which sentence the evidence is for.",
        "Move it behind the full stop.");
  }

  private void error(String rule, Span at, String what, String why, String mend) {
    findings.accept(Finding.error(rule, at, what, why, mend));
  }
}
