package goniograph.register;

import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** Whose signatures a kind of text needs before it counts as approved. */
public enum Duty {
  /** An entry in its source language: its author and a clinician. */
  ENTRY(Role.AUTHOR, Role.CLINICAL),
  /** Anything put into another language: its translator and a second reader. */
  VERSION(Role.TRANSLATOR, Role.LANGUAGE),
  /** A safety statement in the source language: two clinicians. */
  STATEMENT(Role.CLINICAL, Role.CLINICAL),
  /** A rule file: two clinicians. */
  RULES(Role.CLINICAL, Role.CLINICAL),
  /** The phrases in the source language: their author. */
  PHRASES(Role.AUTHOR);

  private final List<Role> roles;

  Duty(Role... roles) {
    this.roles = List.of(roles);
  }

  /** The roles that sign, each once. */
  public List<Role> roles() {
    return roles.stream().distinct().toList();
  }

  /** How many different people must sign in this role. */
  public int signers(Role role) {
    return Collections.frequency(roles, role);
  }

  /** The roles in words, for instance "author or clinical". */
  public String choice() {
    return roles().stream().map(Role::word).collect(Collectors.joining(" or "));
  }
}
