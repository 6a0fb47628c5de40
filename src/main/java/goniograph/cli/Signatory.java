package goniograph.cli;

import goniograph.register.Role;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Who signs or accepts, and in which capacity; to be mixed in. */
final class Signatory {
  @Option(
      names = "--as",
      required = true,
      paramLabel = "ID",
      description = "Who: a role id such as clinician-1, never a name.")
  private String by = "";

  @Option(
      names = "--role",
      required = true,
      paramLabel = "ROLE",
      converter = RoleWord.class,
      description = "In which capacity: author, clinical, translator or language.")
  private Role role = Role.AUTHOR;

  /** The role id; refused where it is none. */
  String id() {
    return Blanks.id(by);
  }

  Role role() {
    return role;
  }

  /** Reads the word of a role. */
  static final class RoleWord implements ITypeConverter<Role> {
    @Override
    public Role convert(String word) {
      for (Role role : Role.values()) {
        if (role.word().equals(word.toLowerCase(Locale.ROOT))) {
          return role;
        }
      }
      throw new TypeConversionException(
          "`" + word + "` is not a role. Write author, clinical, translator or language.");
    }
  }
}
