package goniograph.register;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Adds one person's signatures to registers. Every method gives the new register, or throws {@link
 * Refused} and changes nothing.
 *
 * @param claim who signs
 */
public record Signing(Claim claim) {

  /** Signs the source text of an entry. */
  public EntryRegister entry(String id, EntryRegister register, Text text) {
    return register.withEntry(add(register.entry(), Duty.ENTRY, "`" + id + "`", text));
  }

  /**
   * Signs a language version. A translator's signature also records what each piece was made from;
   * a language reviewer signs what the translator recorded.
   *
   * @param pairs every piece of the version in order, with the source piece it stands for now
   */
  public EntryRegister version(
      String id, String language, EntryRegister register, List<PiecePair> pairs) {
    String what = "`" + id + "` in " + language;
    EntryRegister recorded =
        claim.role() == Role.TRANSLATOR
            ? register.withPieces(language, records(register.pieces(language), pairs))
            : register;
    List<PieceRecord> pieces = recorded.pieces(language);
    if (claim.role() == Role.LANGUAGE && !pairs(pieces).equals(pairs)) {
      throw new Refused(
          capital(what)
              + " is not yet signed by its translator as it stands. The translator signs first.");
    }
    Text text = Text.source(Digests.version(pieces));
    return recorded.withVersion(
        language, add(recorded.version(language), Duty.VERSION, what, text));
  }

  private List<PieceRecord> records(List<PieceRecord> old, List<PiecePair> pairs) {
    return pairs.stream()
        .map(
            pair ->
                old.stream()
                    .filter(record -> pair(record).equals(pair))
                    .findFirst()
                    .orElseGet(
                        () ->
                            new PieceRecord(pair.source(), pair.target(), claim.by(), claim.on())))
        .toList();
  }

  private static List<PiecePair> pairs(List<PieceRecord> records) {
    return records.stream().map(Signing::pair).toList();
  }

  private static PiecePair pair(PieceRecord record) {
    return new PiecePair(record.source(), record.target());
  }

  /** Signs every statement of a language that the source language has too. */
  public SharedRegister statements(String language, SharedDigests now, SharedRegister register) {
    Duty duty = language.equals(now.sourceLanguage()) ? Duty.STATEMENT : Duty.VERSION;
    SharedRegister signed = register;
    for (String id : ids(now, language)) {
      Optional<Text> text = now.statement(language, id);
      if (text.isPresent()) {
        String what = "`" + id + "` in " + language;
        Signatures more = add(signed.statement(language, id), duty, what, text.get());
        signed = signed.withStatement(language, id, more);
      }
    }
    return signed;
  }

  private static List<String> ids(SharedDigests now, String language) {
    return Optional.ofNullable(now.statements().get(language))
        .map(ids -> List.copyOf(ids.keySet()))
        .orElseThrow(() -> noFile(SharedDigests.statementFile(language)));
  }

  /** Signs every rule file. */
  public SharedRegister rules(SharedDigests now, SharedRegister register) {
    SharedRegister signed = register;
    for (String name : now.rules().keySet()) {
      Text text = now.rule(name).orElseThrow();
      String what = "the rule file `" + name + "`";
      signed = signed.withRules(name, add(signed.rules(name), Duty.RULES, what, text));
    }
    return signed;
  }

  /** Signs the phrases of a language. */
  public SharedRegister phrases(String language, SharedDigests now, SharedRegister register) {
    Duty duty = language.equals(now.sourceLanguage()) ? Duty.PHRASES : Duty.VERSION;
    Text text = now.phrases(language).orElseThrow(() -> noFile(SharedDigests.phraseFile(language)));
    String what = "the phrase file of " + language;
    return register.withPhrases(language, add(register.phrases(language), duty, what, text));
  }

  private static Refused noFile(String path) {
    return new Refused("There is no " + path + ". Write it before it is signed.");
  }

  private Signatures add(Signatures signatures, Duty duty, String what, Text text) {
    if (!duty.roles().contains(claim.role())) {
      throw new Refused(
          capital(what)
              + " is not signed in the role "
              + claim.role().word()
              + ". Sign with --role "
              + duty.choice()
              + ".");
    }
    Signature added = claim.under(text);
    signatures
        .conflict(added)
        .ifPresent(
            other -> {
              throw new Refused(
                  claim.by()
                      + " has signed "
                      + what
                      + " as "
                      + other.role().word()
                      + " and cannot sign it as "
                      + claim.role().word()
                      + ". Have a second person sign.");
            });
    return signatures.with(added, duty);
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
