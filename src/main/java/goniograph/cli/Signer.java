package goniograph.cli;

import goniograph.check.VersionPieces;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.finding.Nearest;
import goniograph.library.Entry;
import goniograph.library.Library;
import goniograph.library.LibraryRead;
import goniograph.library.Version;
import goniograph.register.Claim;
import goniograph.register.Digests;
import goniograph.register.EntryRegister;
import goniograph.register.PiecePair;
import goniograph.register.Read;
import goniograph.register.RegisterReader;
import goniograph.register.RegisterWriter;
import goniograph.register.SharedDigests;
import goniograph.register.SharedRegister;
import goniograph.register.Signing;
import goniograph.register.Text;
import goniograph.source.Files;
import java.util.ArrayList;
import java.util.List;

/** Reads what is to be signed, signs it, and writes the one register file that changes. */
final class Signer {
  private final Files files;
  private final Claim claim;
  private final Signing signing;
  private final LibraryRead read;

  Signer(Files files, Claim claim) {
    this.files = files;
    this.claim = claim;
    this.signing = new Signing(claim);
    this.read = Library.read(files);
  }

  /** Signs, and says what was signed. */
  String sign(String what, String language) {
    known(language);
    return switch (what) {
      case "statements" -> {
        whole(SharedDigests.statementFile(language));
        yield shared(
            "the statements in " + language,
            register -> signing.statements(language, now(), register));
      }
      case "phrases" -> {
        whole(SharedDigests.phraseFile(language));
        yield shared(
            "the phrase file of " + language,
            register -> signing.phrases(language, now(), register));
      }
      case "rules" -> {
        now().rules().keySet().forEach(name -> whole(SharedDigests.ruleFile(name)));
        yield shared("the rules", register -> signing.rules(now(), register));
      }
      default -> entry(what, language);
    };
  }

  private void known(String language) {
    List<String> languages = read.library().languages();
    if (!languages.contains(language)) {
      throw new Refusal(
          "`"
              + language
              + "` is not a language of this clinic. It has "
              + String.join(", ", languages)
              + ".");
    }
  }

  private SharedDigests now() {
    return SharedDigests.read(files, Library.SOURCE_LANGUAGE, read.library().languages());
  }

  private interface SharedChange {
    SharedRegister apply(SharedRegister register);
  }

  private String shared(String what, SharedChange change) {
    SharedRegister register = whole(RegisterReader.shared(files));
    SharedRegister signed = change.apply(register);
    files.write(RegisterReader.SHARED, RegisterWriter.bytes(signed));
    return said(what);
  }

  private String entry(String id, String language) {
    Entry entry = read.library().entry(id).orElseThrow(() -> unknown(id));
    String folder = entry.common().folder();
    whole(entry.common().file().path());
    whole(folder + "/" + language + ".md");
    EntryRegister register = whole(RegisterReader.entry(files, folder));
    EntryRegister signed =
        language.equals(Library.SOURCE_LANGUAGE)
            ? signing.entry(id, register, Text.source(Digests.entry(entry, read.library())))
            : signing.version(id, language, register, pairs(entry, language, register));
    files.write(RegisterReader.file(folder), RegisterWriter.bytes(signed));
    return said("`" + id + "` in " + language);
  }

  private static List<PiecePair> pairs(Entry entry, String language, EntryRegister register) {
    Version version =
        entry
            .version(language)
            .orElseThrow(
                () ->
                    new Refusal(
                        "`"
                            + entry.id()
                            + "` has no version in "
                            + language
                            + ". Write "
                            + language
                            + ".md beside its source text first."));
    VersionPieces pieces = VersionPieces.of(entry, version, register);
    refuse(entry, language, "lacks", pieces.missing(), "Translate it before it is signed.");
    refuse(
        entry,
        language,
        "has more than its source:",
        pieces.surplus(),
        "Take it out, or add it to" + " the source text.");
    return pieces.pairs();
  }

  private static void refuse(
      Entry entry, String language, String fault, List<String> names, String mend) {
    if (!names.isEmpty()) {
      throw new Refusal(
          "`"
              + entry.id()
              + "` in "
              + language
              + " "
              + fault
              + " "
              + String.join(", ", names)
              + ". "
              + mend);
    }
  }

  private Refusal unknown(String id) {
    if (read.library().broken().contains(id)) {
      return new Refusal(
          "`"
              + id
              + "` cannot be read, so nobody can sign it. Mend it: `goniograph check "
              + id
              + "` says how.");
    }
    List<String> ids = new ArrayList<>(List.of("statements", "rules", "phrases"));
    read.library().entries().forEach(entry -> ids.add(entry.id()));
    String hint = Nearest.hint(id, ids);
    return new Refusal(
        "There is no entry `"
            + id
            + "` in this library"
            + (hint.isEmpty() ? "." : hint)
            + " Give the id of an entry, or statements, rules or phrases.");
  }

  /** Refuses to sign what the library could not read whole. */
  private void whole(String path) {
    read.findings().stream()
        .filter(finding -> finding.level() == Level.ERROR)
        .filter(finding -> finding.at().file().equals(path))
        .findFirst()
        .ifPresent(Signer::refuse);
  }

  private static <T> T whole(Read<T> register) {
    register.findings().stream().findFirst().ifPresent(Signer::refuse);
    return register.value();
  }

  private static void refuse(Finding finding) {
    throw Refusal.because("Not signed", finding);
  }

  private String said(String what) {
    return "Signed "
        + what
        + " as "
        + claim.role().word()
        + ", by "
        + claim.by()
        + " on "
        + claim.on()
        + (claim.qualified() ? "." : ", without the qualification.");
  }
}
