package goniograph.language;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part;
import goniograph.language.PhraseProblem.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** An ICU message taken apart: its arguments, its select words, and what is wrong with it. */
final class Message {
  private final String id;
  private final MessagePattern pattern;
  private final SortedMap<String, Boolean> arguments = new TreeMap<>();
  private final SortedMap<String, Set<String>> selects = new TreeMap<>();
  private final List<PhraseProblem> problems = new ArrayList<>();

  Message(String id, MessagePattern pattern, PluralForms forms) {
    this.id = id;
    this.pattern = pattern;
    for (int i = 0; i < pattern.countParts(); i++) {
      if (pattern.getPartType(i) == Part.Type.ARG_START) {
        visit(i, forms);
      }
    }
  }

  /** Every argument, by name: whether it must be a number. */
  SortedMap<String, Boolean> arguments() {
    return Collections.unmodifiableSortedMap(arguments);
  }

  /** The words each select argument tells apart. */
  SortedMap<String, Set<String>> selects() {
    return Collections.unmodifiableSortedMap(selects);
  }

  List<PhraseProblem> problems() {
    return List.copyOf(problems);
  }

  private void visit(int start, PluralForms forms) {
    String name = pattern.getSubstring(pattern.getPart(start + 1));
    ArgType type = pattern.getPart(start).getArgType();
    switch (type) {
      case NONE -> arguments.merge(name, false, Boolean::logicalOr);
      case SELECT -> {
        arguments.merge(name, false, Boolean::logicalOr);
        selects.computeIfAbsent(name, key -> new TreeSet<>()).addAll(words(start));
      }
      case PLURAL, SELECTORDINAL -> {
        arguments.put(name, true);
        checkPlural(start, type == ArgType.SELECTORDINAL, forms);
      }
      case SIMPLE -> visitSimple(start, name);
      default -> problem(Kind.ARGUMENT_KIND, name, start);
    }
  }

  private void visitSimple(int start, String name) {
    boolean number = pattern.partSubstringMatches(pattern.getPart(start + 2), "number");
    arguments.merge(name, number, Boolean::logicalOr);
    if (!number) {
      problem(Kind.ARGUMENT_KIND, name, start);
    }
  }

  private void checkPlural(int start, boolean ordinals, PluralForms forms) {
    Set<Double> exact = new TreeSet<>();
    for (int i : selectors(start)) {
      if (pattern.getPartType(i + 1).hasNumericValue()) {
        exact.add(pattern.getNumericValue(pattern.getPart(i + 1)));
      }
    }
    boolean shifted = pattern.getPluralOffset(start + 2) != 0;
    forms
        .missing(ordinals, words(start), shifted ? Set.of() : exact)
        .forEach(form -> problem(Kind.PLURAL_FORM_MISSING, form, start));
  }

  private Set<String> words(int start) {
    Set<String> words = new TreeSet<>();
    selectors(start).forEach(i -> words.add(pattern.getSubstring(pattern.getPart(i))));
    return words;
  }

  /** Places of the selectors of this argument itself, not of those nested in it. */
  private List<Integer> selectors(int start) {
    List<Integer> selectors = new ArrayList<>();
    for (int i = start + 1; i < pattern.getLimitPartIndex(start); i++) {
      Part.Type type = pattern.getPartType(i);
      if (type == Part.Type.ARG_SELECTOR) {
        selectors.add(i);
      } else if (type == Part.Type.MSG_START) {
        i = pattern.getLimitPartIndex(i);
      }
    }
    return selectors;
  }

  private void problem(Kind kind, String detail, int part) {
    problems.add(new PhraseProblem(kind, id, detail, pattern.getPatternIndex(part)));
  }
}
