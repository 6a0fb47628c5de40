package goniograph.cli;

import goniograph.library.Library;
import goniograph.register.Claim;
import goniograph.register.Role;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Signs an entry, a language version, the statements, the rules or the phrases. */
@Command(
    name = "sign",
    description = {
      "Signs a text as it stands; any later edit voids the signature.",
      "Who must sign: an entry its author and a clinician; the statements and the rules two"
          + " clinicians; the phrases their author; whatever is in another language its translator"
          + " and a second reader (role language)."
    })
final class SignCommand implements Callable<Integer> {
  @Mixin private final Common common;

  @Parameters(
      paramLabel = "ENTRY|statements|rules|phrases",
      description = "What is signed: the id of an entry, or one of these words.")
  private String what = "";

  @Option(
      names = "--language",
      paramLabel = "L",
      description = "The language version that is signed; the source language unless said.")
  private String language = Library.SOURCE_LANGUAGE;

  @Mixin private final Signatory signatory = new Signatory();

  @Option(
      names = "--unqualified",
      description =
          "The translator or language reviewer lacks the qualification; the sheet will say so.")
  private boolean unqualified;

  SignCommand(World world) {
    common = new Common(world);
  }

  @Override
  public Integer call() {
    if (unqualified && signatory.role() != Role.TRANSLATOR && signatory.role() != Role.LANGUAGE) {
      throw new Refusal(
          "--unqualified is said of translators and language reviewers alone. Leave it out.");
    }
    Claim claim = new Claim(signatory.role(), signatory.id(), common.today(), !unqualified);
    common.out().println(new Signer(common.files(), claim).sign(what, language));
    return Exit.CLEAN;
  }
}
