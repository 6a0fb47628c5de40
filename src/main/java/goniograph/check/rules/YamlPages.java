package goniograph.check.rules;

import static goniograph.check.rules.ExampleFiles.BAND;
import static goniograph.check.rules.ExampleFiles.CHAIR_RISE;
import static goniograph.check.rules.ExampleFiles.HEEL_TO_TOE;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.RulePage;
import java.util.List;

/** What reading YAML finds: front matter, pose files and the files under {@code shared/}. */
final class YamlPages {
  private static final String YAML = "YAML 1.2.2, narrowed by the house";

  private YamlPages() {}

  static List<RulePage> all() {
    return List.of(
        page(
            "yaml-syntax",
            "A line is not YAML: a second colon, a line set in too far, a value that begins with a"
                + " mark that YAML keeps for itself.",
            "Nothing behind that place can be read, so no sheet can be made from it.",
            Example.in(CHAIR_RISE, "aim: strength", "aim: strength«:» hips")),
        page(
            "yaml-tab",
            "A tab stands where only spaces are allowed.",
            "A tab has no fixed width, so nobody can tell which line belongs to which.",
            Example.in(CHAIR_RISE, "dose:\n  tempo:", "dose:\n«\t»tempo:")),
        page(
            "yaml-unterminated",
            "A quotation mark, bracket or brace is opened and never closed.",
            "Everything behind it is swallowed.",
            Example.in(CHAIR_RISE, "region: [hip]", "region: «[»hip")),
        page(
            "yaml-character",
            "A character that YAML forbids, such as a control character pasted from elsewhere.",
            "It is invisible and would be lost or printed as a box.",
            Example.in(CHAIR_RISE, "aim: strength", "aim: stre«\u0007»ngth")),
        page(
            "yaml-alias",
            "An anchor `&name` or an alias `*name`.",
            "A value that is copied from elsewhere cannot be checked or signed where it is read.",
            Example.in(HEEL_TO_TOE, "  relax: 20 s\n", "  relax: «&pause» 20 s\n")),
        page(
            "yaml-tag",
            "A tag such as `!!int`.",
            "A tag changes how a value is read; every field here has its one kind of value.",
            Example.in(HEEL_TO_TOE, "  sets: 1\n", "  sets: «!!int» 1\n")),
        page(
            "yaml-yes-no",
            "One of the bare words yes, no, on, off, y or n as a value.",
            "Some readers take them for true or false and others for text.",
            Example.in(HEEL_TO_TOE, "ask_at_print: false", "ask_at_print: «no»")),
        page(
            "yaml-duplicate-key",
            "A key stands twice in one map.",
            "Only one of the two values can be meant, and nobody can tell which.",
            Example.in(HEEL_TO_TOE, "  reps: 3\n", "  reps: 3\n  «reps»: 4\n")),
        page(
            "front-matter-unclosed",
            "The front matter begins with a line `---` and never ends.",
            "Nobody can tell where the dose ends and the text begins.",
            Example.in(
                    BAND,
                    "---\nschema: entry/1\nid: sh-row-band",
                    "«---»\nschema: entry/1\nid: sh-row-band")
                .alongside(BAND, "review_due: 2027-09-30\n---\n", "review_due: 2027-09-30\n")));
  }

  private static RulePage page(String name, String what, String why, Example example) {
    return RulePage.of(name, what, why, YAML, Acceptance.NOBODY, example);
  }
}
