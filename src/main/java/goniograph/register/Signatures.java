package goniograph.register;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The signatures under one text, in a fixed order.
 *
 * @param all the signatures, void ones too until their role signs again
 */
public record Signatures(List<Signature> all) {
  private static final Comparator<Signature> ORDER =
      Comparator.comparing(Signature::role).thenComparing(Signature::by);

  /** Under a text that nobody has signed. */
  public static final Signatures NONE = new Signatures(List.of());

  public Signatures {
    all = all.stream().sorted(ORDER).toList();
  }

  /**
   * Why this signature may not be added: its signer has signed the same text in a role that
   * conflicts. Empty if it may.
   */
  public Optional<Signature> conflict(Signature added) {
    return all.stream()
        .filter(other -> other.by().equals(added.by()))
        .filter(other -> other.role().conflictsWith(added.role()))
        .findFirst();
  }

  /** Pairs of signatures by one id in conflicting roles; only editing by hand can make one. */
  public List<Signature> conflicts() {
    return all.stream().filter(signature -> conflict(signature).isPresent()).toList();
  }

  /**
   * With one more signature. It takes the place of an earlier one by the same id in the same role.
   * When all whom the duty asks for in this role have signed, signatures that the text has outgrown
   * go.
   */
  public Signatures with(Signature added, Duty duty) {
    List<Signature> kept = new ArrayList<>(all);
    kept.removeIf(one -> one.role() == added.role() && one.by().equals(added.by()));
    kept.add(added);
    Text text = new Text(added.digest(), added.source());
    if (people(new Signatures(kept).valid(added.role(), text)) >= duty.signers(added.role())) {
      kept.removeIf(one -> one.role() == added.role() && !one.covers(text));
    }
    return new Signatures(kept);
  }

  /** How many different people these are. */
  static int people(List<Signature> signatures) {
    return (int) signatures.stream().map(Signature::by).distinct().count();
  }

  /** Those in a role that hold for the text as it stands. */
  List<Signature> valid(Role role, Text text) {
    return in(role).stream().filter(signature -> signature.covers(text)).toList();
  }

  List<Signature> in(Role role) {
    return all.stream().filter(signature -> signature.role() == role).toList();
  }
}
