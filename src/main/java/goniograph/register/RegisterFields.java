package goniograph.register;

import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Reads the parts of which register files are made. What cannot be read is left out. */
final class RegisterFields {
  private static final Pattern HEX = Pattern.compile("[0-9a-f]{64}");
  private static final Pattern NAME = Pattern.compile("[0-9A-Za-z]+([.-][0-9A-Za-z]+)*");
  private static final String EXAMPLE_DAY = "2026-11-25";

  /** A digest. */
  static final Spelling<String> DIGEST =
      (raw, refusal) -> {
        if (HEX.matcher(raw).matches()) {
          return Optional.of(raw);
        }
        refusal.because(
            "register-digest",
            "`" + raw + "` is not a digest of 64 digits and letters a to f.",
            "Take the old file back from version control, or sign again.");
        return Optional.empty();
      };

  /** The name of a release. */
  static final Spelling<String> RELEASE =
      (raw, refusal) -> {
        if (NAME.matcher(raw).matches()) {
          return Optional.of(raw);
        }
        refusal.because(
            "register-release-name",
            "`" + raw + "` is not the name of a release.",
            "Use letters, digits, dots and hyphens, for instance `2026.3`.");
        return Optional.empty();
      };

  private RegisterFields() {}

  static void schema(Form form, String schema) {
    form.required("schema", schema).as(Spellings.oneOf(List.of(schema)));
  }

  static Signatures signatures(Value value) {
    return new Signatures(
        value.list(item -> item.form("a signature", RegisterFields::signature).flatMap(whole())));
  }

  private static Optional<Signature> signature(Form form) {
    Optional<Role> role = plain(form.required("role", "author").as(Spellings.oneOf(Role.class)));
    Optional<String> by = by(form);
    Optional<LocalDate> on = on(form);
    boolean qualified = plain(form.optional("qualified").as(Spellings.TRUTH)).orElse(true);
    Optional<String> digest = plain(form.required("digest", "…").as(DIGEST));
    Optional<String> source = plain(form.optional("source").as(DIGEST));
    if (role.isEmpty() || by.isEmpty() || on.isEmpty() || digest.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Signature(role.get(), by.get(), on.get(), qualified, digest.get(), source));
  }

  static List<PieceRecord> pieces(Value value) {
    return value.list(item -> item.form("a piece", RegisterFields::piece).flatMap(whole()));
  }

  private static Optional<PieceRecord> piece(Form form) {
    Optional<String> source = plain(form.required("source", "…").as(DIGEST));
    Optional<String> target = plain(form.required("target", "…").as(DIGEST));
    Optional<String> by = by(form);
    Optional<LocalDate> on = on(form);
    if (source.isEmpty() || target.isEmpty() || by.isEmpty() || on.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new PieceRecord(source.get(), target.get(), by.get(), on.get()));
  }

  static Optional<AcceptedFinding> accepted(Form form) {
    Optional<String> rule = plain(form.required("rule", "sentence-long").as(Spellings.ID_WORD));
    String language = plain(form.optional("language").as(Spellings.TEXT)).orElse("");
    Optional<String> finding = plain(form.required("finding", "…").as(DIGEST));
    Optional<String> reason = plain(form.required("reason", "…").as(Spellings.TEXT));
    Optional<Role> role = plain(form.required("role", "author").as(Spellings.oneOf(Role.class)));
    Optional<String> by = by(form);
    Optional<LocalDate> on = on(form);
    Optional<LocalDate> until = plain(form.required("until", EXAMPLE_DAY).as(Spellings.DAY));
    if (rule.isEmpty()
        || finding.isEmpty()
        || reason.isEmpty()
        || role.isEmpty()
        || by.isEmpty()
        || on.isEmpty()
        || until.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new AcceptedFinding(
            rule.get(),
            language,
            finding.get(),
            reason.get(),
            role.get(),
            by.get(),
            on.get(),
            until.get()));
  }

  static Optional<Recall> recall(Form form) {
    Optional<String> id = plain(form.required("id", "hp-chair-rise").as(Spellings.ID_WORD));
    Optional<String> reason = plain(form.required("reason", "…").as(Spellings.TEXT));
    Optional<String> by = by(form);
    Optional<LocalDate> on = on(form);
    Optional<String> instead = plain(form.optional("replaced_by").as(Spellings.ID_WORD));
    if (id.isEmpty() || reason.isEmpty() || by.isEmpty() || on.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Recall(id.get(), reason.get(), by.get(), on.get(), instead));
  }

  static Optional<ReleaseRecord> release(Form form) {
    Optional<String> name = plain(form.required("name", "2026.3").as(RELEASE));
    Optional<String> by = by(form);
    Optional<LocalDate> on = on(form);
    Optional<String> manifest = plain(form.required("manifest", "…").as(DIGEST));
    if (name.isEmpty() || by.isEmpty() || on.isEmpty() || manifest.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new ReleaseRecord(name.get(), by.get(), on.get(), manifest.get()));
  }

  static Optional<String> by(Form form) {
    return plain(form.required("by", "clinician-1").as(Spellings.ID_WORD));
  }

  static Optional<LocalDate> on(Form form) {
    return plain(form.required("on", EXAMPLE_DAY).as(Spellings.DAY));
  }

  /** A map with free keys. */
  static <T> SortedMap<String, T> map(Value value, String name, Function<Value, T> reader) {
    TreeMap<String, T> read = new TreeMap<>();
    value
        .form(name)
        .ifPresent(
            form ->
                form.entries().forEach(e -> read.put(e.key().value(), reader.apply(e.value()))));
    return read;
  }

  /** A list of maps, each read whole or left out. */
  static <T> List<T> list(Value value, String name, Function<Form, Optional<T>> reader) {
    return value.list(item -> item.form(name, reader).flatMap(whole()));
  }

  static <T> Function<Located<Optional<T>>, Optional<T>> whole() {
    return Located::value;
  }

  static <T> Optional<T> plain(Optional<Located<T>> located) {
    return located.map(Located::value);
  }
}
