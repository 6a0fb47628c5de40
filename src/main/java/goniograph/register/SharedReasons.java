package goniograph.register;

import goniograph.finding.Finding;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the shared files lack before sheets may be final.
 *
 * @param shared the shared files as they stand
 * @param register who has signed them
 */
public record SharedReasons(SharedDigests shared, SharedRegister register) {

  /** About the rule files. */
  public List<Reason> rules() {
    List<Reason> reasons = new ArrayList<>();
    for (String name : shared.rules().keySet()) {
      SignatureReasons duty =
          new SignatureReasons(
              Duty.RULES,
              "the rule file `" + name + "`",
              "rules",
              SharedDigests.ruleFile(name),
              Print.DRAFT);
      shared.rule(name).ifPresent(text -> reasons.addAll(duty.of(register.rules(name), text)));
    }
    return reasons;
  }

  /** About the phrases of a language. */
  public List<Reason> phrases(String language) {
    boolean source = language.equals(shared.sourceLanguage());
    String file = SharedDigests.phraseFile(language);
    Optional<Text> text = shared.phrases(language);
    if (text.isEmpty()) {
      return List.of(missing("There are no phrases in " + language + ".", file, language));
    }
    return new SignatureReasons(
            source ? Duty.PHRASES : Duty.VERSION,
            "the phrase file of " + language,
            "phrases --language " + language,
            file,
            Print.STALE)
        .of(register.phrases(language), text.get()).stream()
            .map(reason -> reason.withLanguage(language))
            .toList();
  }

  /** About one statement: its wording in the source language and in this language. */
  public List<Reason> statement(String language, String id) {
    List<Reason> reasons = new ArrayList<>(wording(shared.sourceLanguage(), id));
    if (!language.equals(shared.sourceLanguage())) {
      reasons.addAll(wording(language, id));
    }
    register.recall(id).ifPresent(recall -> reasons.add(Calendar.recalled(recall, file(language))));
    return reasons;
  }

  /** About the wording of one statement in one language; a safety wording never lags behind. */
  public List<Reason> wording(String language, String id) {
    boolean source = language.equals(shared.sourceLanguage());
    Optional<Text> text = shared.statement(language, id);
    if (text.isEmpty()) {
      return List.of(
          missing("There is no `" + id + "` in " + language + ".", file(language), language)
              .about("`" + id + "`"));
    }
    return new SignatureReasons(
            source ? Duty.STATEMENT : Duty.VERSION,
            "the wording of `" + id + "` in " + language,
            "statements --language " + language,
            file(language),
            Print.NONE)
        .of(register.statement(language, id), text.get()).stream()
            .map(reason -> reason.withLanguage(language).about("`" + id + "`"))
            .toList();
  }

  private static String file(String language) {
    return SharedDigests.statementFile(language);
  }

  private static Reason missing(String what, String file, String language) {
    return new Reason(
        State.MISSING,
        Print.NONE,
        Finding.note(
                "version-missing",
                Span.of(file),
                what,
                "A sheet is printed in one language whole, never mixed.",
                "Have it translated, or leave the language out of the clinic's list.")
            .withLanguage(language));
  }
}
