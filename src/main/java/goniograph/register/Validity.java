package goniograph.register;

import goniograph.source.Digest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Judges whether sheets may be printed as final: source text, language version, the statements on
 * the sheet, the rules and the phrases of its language must all be validly signed.
 *
 * @param shared what all sheets use, as it stands
 * @param register who has signed it
 * @param today the day that counts as today
 */
public record Validity(SharedDigests shared, SharedRegister register, LocalDate today) {

  /** How things stand with an entry in its source language. */
  public Standing standing(EntryDigests entry, EntryRegister signed) {
    return standing(entry, signed, shared.sourceLanguage(), List.of(), Optional.empty());
  }

  /** How things stand with an entry in another language. */
  public Standing standing(EntryDigests entry, EntryRegister signed, VersionDigests version) {
    VersionReasons reasons = new VersionReasons(entry, version, signed);
    return standing(entry, signed, version.language(), reasons.all(), Optional.of(version));
  }

  private Standing standing(
      EntryDigests entry,
      EntryRegister signed,
      String language,
      List<Reason> ofVersion,
      Optional<VersionDigests> version) {
    List<Reason> reasons = new ArrayList<>(ofVersion);
    reasons.addAll(source(entry, signed));
    reasons.addAll(new Calendar(entry, register, today).reasons());
    reasons.addAll(shared(entry, language));
    List<Reason> named = reasons.stream().map(one -> one.withEntry(entry.id())).toList();
    List<Signature> text = text(signed, language);
    boolean ready = named.stream().allMatch(one -> one.state() == State.READY);
    return new Standing(
        entry.id(),
        language,
        digest(entry, language, version),
        named,
        text.stream().map(Signature::on).max(Comparator.naturalOrder()).filter(day -> ready),
        Stream.concat(text.stream(), used(entry, language)).allMatch(Signature::qualified));
  }

  private List<Reason> source(EntryDigests entry, EntryRegister signed) {
    return new SignatureReasons(
            Duty.ENTRY, "`" + entry.id() + "`", entry.id(), entry.file(), Print.STALE)
        .of(signed.entry(), Text.source(entry.source()));
  }

  /** What keeps all sheets of a language that print these statements from being final. */
  private List<Reason> shared(EntryDigests entry, String language) {
    SharedReasons reasons = new SharedReasons(shared, register);
    List<Reason> all = new ArrayList<>(reasons.rules());
    all.addAll(reasons.phrases(language));
    for (String id : entry.statements()) {
      all.addAll(reasons.statement(language, id));
    }
    return all;
  }

  private List<Signature> text(EntryRegister signed, String language) {
    List<Signature> all = new ArrayList<>(signed.entry().all());
    all.addAll(signed.version(language).all());
    return all;
  }

  private Stream<Signature> used(EntryDigests entry, String language) {
    return Stream.concat(
        register.phrases(language).all().stream(),
        entry.statements().stream().flatMap(id -> register.statement(language, id).all().stream()));
  }

  private String digest(EntryDigests entry, String language, Optional<VersionDigests> version) {
    List<String> parts = new ArrayList<>(List.of(entry.source(), language));
    version.ifPresent(one -> parts.addAll(one.pieces()));
    for (String id : entry.statements()) {
      parts.add(id + " " + shared.statement(language, id).map(Text::digest).orElse(""));
    }
    parts.add(shared.phrases(language).map(Text::digest).orElse(""));
    return Digest.of(String.join("\n", parts));
  }
}
