package goniograph.check.rules;

import static goniograph.check.rules.ExampleFiles.CHAIR_RISE;
import static goniograph.check.rules.ExampleFiles.CHAIR_RISE_ARABIC;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.source.Digest;
import java.util.List;

/** What holding the registers against the library finds. */
final class RegisterPages {
  private static final String REGISTER = "content/exercises/hp-chair-rise/register.yaml";
  private static final String TOP = "---\nschema: entry/1\nid: hp-chair-rise\n";
  private static final String SHARED = "shared/register.yaml";
  private static final String SIGNATURE_LINE =
      "  - { role: author, by: writer-1, on: 2026-05-01, digest: \"" + "0".repeat(64) + "\" }\n";
  private static final String SIGNATURE = "schema: register/1\nentry:\n" + SIGNATURE_LINE;
  private static final String FROZEN =
      "by: lead-1, on: 2026-05-01, manifest: \"" + "0".repeat(64) + "\" }\n";

  private static final String RISE_ARABIC = "s-rise-wait: { text: \"انهض على مراحل.\" }\n";

  /** Signed for exactly those words, made from other words than the English ones of now. */
  private static final String OUTGROWN =
      "schema: register/1\nstatements:\n  ar:\n    s-rise-wait:\n"
          + "      - { role: translator, by: translator-1, on: 2026-05-01, digest: \""
          + Digest.of("{\"text\":\"انهض على مراحل.\"}")
          + "\", source: \""
          + "0".repeat(64)
          + "\" }\n";

  /** What {@code signature-missing} says of the entry: rule, language, words, reason. */
  private static final String UNSIGNED =
      "signature-missing\n\n`hp-chair-rise` lacks a signature in the role author and a signature in"
          + " the role clinical.\n";

  private RegisterPages() {}

  private static String accepted(String finding, String until) {
    return "schema: register/1\naccepted:\n  - { rule: signature-missing, reason: seen, role: author,"
        + " by: writer-1, on: 2026-05-01, until: "
        + until
        + ", finding: \""
        + finding
        + "\" }\n";
  }

  static List<RulePage> all() {
    return List.of(
        page(
            "signature-missing",
            "A text, statement, rule file or phrase file lacks a signature that it needs: a note.",
            "Only a text that the right people stand by reaches a patient as final; until then the"
                + " sheet carries a band of words.",
            Example.in(CHAIR_RISE, TOP, "«»" + TOP)),
        page(
            "signature-void",
            "What was signed has been edited since.",
            "A signature stands for exactly the words and numbers that were read.",
            Example.in(CHAIR_RISE, TOP, "«»" + TOP).alongside(REGISTER, "", SIGNATURE)),
        page(
            "signature-conflict",
            "One person has signed a text in two roles that exclude each other.",
            "Nobody sees their own mistakes: a second person must read it.",
            Example.in(CHAIR_RISE, TOP, "«»" + TOP)
                .alongside(REGISTER, "", SIGNATURE + SIGNATURE_LINE.replace("author", "clinical"))),
        page(
            "translation-stale",
            "A statement or the phrases of a language were signed as put into words from a source"
                + " text that has changed since: a warning.",
            "It may say something else than what the clinic now stands by. A safety wording that"
                + " lags behind is not printed.",
            Example.in(ExampleFiles.STATEMENTS_ARABIC, RISE_ARABIC, "«»" + RISE_ARABIC)
                .insteadOf("")
                .where(ExampleFiles.STATEMENTS_ARABIC, "\ns-rise-wait:", "\n# s-rise-wait:")
                .alongside(SHARED, "", OUTGROWN)),
        page(
            "version-missing",
            "An entry has no version in a language of the clinic: a note.",
            "Its sheet cannot be printed in that language.",
            Example.in(CHAIR_RISE, TOP, "«»" + TOP)
                .alongside(CHAIR_RISE_ARABIC, Example.Edit.WHOLE, "")),
        page(
            "version-unrecorded",
            "Nobody has said which source text a language version was made from: a note.",
            "Without the record nobody notices when the source text changes.",
            Example.in(CHAIR_RISE_ARABIC, "# النهوض عن الكرسي\n", "«»# النهوض عن الكرسي\n")),
        page(
            "recalled",
            "An entry or a statement was recalled.",
            "Someone decided that it must no longer reach a patient.",
            Example.in(CHAIR_RISE, TOP, "«»" + TOP)
                .alongside(
                    SHARED,
                    "",
                    "schema: register/1\nrecalls:\n  - { id: hp-chair-rise, reason: \"a knee was"
                        + " hurt\", by: lead-1, on: 2026-09-14 }\n")),
        page(
            "register-damaged",
            "A register file holds no register.",
            "Without it nobody can tell what has been signed.",
            Example.in(REGISTER, "", "«signed by everyone»\n"),
            Example.in(SHARED, "", "«signed by everyone»\n")),
        page(
            "acceptance-expired",
            "The last day of an acceptance is over: a warning.",
            "What was to be looked at again has not been.",
            Example.in(REGISTER, "", "«»" + accepted("0".repeat(64), "2026-05-02"))),
        page(
            "acceptance-unused",
            "An acceptance is about nothing that is found any more: a warning.",
            "It would hide the next warning of the kind, if that happened to read the same.",
            Example.in(REGISTER, "", "«»" + accepted("0".repeat(64), "2099-05-02"))),
        page(
            "acceptance-refused",
            "Something was accepted by a role that may not, or that no file can accept.",
            "A safety error goes away only by mending it, or by changing the signed table.",
            Example.in(REGISTER, "", "«»" + accepted(Digest.of(UNSIGNED), "2099-05-02"))),
        page(
            "register-release-name",
            "The name of a release is not made of letters, digits, dots and hyphens.",
            "It names a file, and stands at the foot of every sheet.",
            Example.in(
                SHARED,
                "",
                "schema: register/1\nreleases:\n  - { name: «\"spring 26\"», " + FROZEN)),
        page(
            "release-edited",
            "The manifest of a release is missing or is not the one that was frozen.",
            "Codes on paper are looked up in it.",
            Example.in("shared/releases/2026.1.yaml", "", "«»")
                .alongside(
                    SHARED, "", "schema: register/1\nreleases:\n  - { name: 2026.1, " + FROZEN)),
        page(
            "register-code",
            "A sheet code in the manifest of a release is not ten letters and digits of which the"
                + " last two prove the others.",
            "The code on paper could not be looked up.",
            Example.in(
                    "shared/releases/2026.1.yaml",
                    "",
                    "schema: release/1\nname: 2026.1\nby: lead-1\non: 2026-05-01\nsheets:\n"
                        + "  - { code: «\"K7F3\"», entry: hp-chair-rise, language: en, digest: \""
                        + "0".repeat(64)
                        + "\" }\n")
                .alongside(
                    SHARED, "", "schema: register/1\nreleases:\n  - { name: 2026.1, " + FROZEN)),
        page(
            "register-digest",
            "A digest in a register file is not 64 digits and letters a to f.",
            "The signature beside it cannot be held against anything.",
            Example.in(REGISTER, "", SIGNATURE.replace("\"" + "0".repeat(64) + "\"", "«\"12\"»"))));
  }

  private static RulePage page(String name, String what, String why, Example... examples) {
    return RulePage.of(name, what, why, RulePage.HOUSE, Acceptance.NOBODY, examples);
  }
}
