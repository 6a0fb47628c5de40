package goniograph.register;

import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** Whose signatures a kind of text needs before it counts as approved. */
public enum Duty {
  /** An entry in its source language: its author and a clinician. */
  ENTRY("an entry", Role.AUTHOR, Role.CLINICAL),
  /** Anything put into another language: its translator and a second reader. */
  VERSION("a language version", Role.TRANSLATOR, Role.LANGUAGE),
  /** A safety statement in the source language: two clinicians. */
  STATEMENT("the statements", Role.CLINICAL, Role.CLINICAL),
  /** A rule file: two clinicians. */
  RULES("the rules", Role.CLINICAL, Role.CLINICAL),
  /** The phrases in the source language: their author. */
  PHRASES("the phrases", Role.AUTHOR);

  private final String what;
  private final List<Role> roles;

  Duty(String what, Role... roles) {
    this.what = what;
    this.roles = List.of(roles);
  }

  /** What it is about, for sentences. */
  public String what() {
    return what;
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
