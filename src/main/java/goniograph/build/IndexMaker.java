package goniograph.build;

import goniograph.check.Approvals;
import goniograph.language.Dates;
import goniograph.language.Direction;
import goniograph.language.Language;
import goniograph.library.Clinic;
import goniograph.library.Entry;
import goniograph.library.Library;
import goniograph.render.IndexPage;
import goniograph.sheet.Drawings;
import goniograph.sheet.Sheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The page that shows what a build made.
 *
 * @param library the library
 * @param clinic its clinic
 * @param today the day it was built for
 * @param approvals how every sheet stands
 */
record IndexMaker(Library library, Clinic clinic, LocalDate today, Approvals approvals) {

  String html(List<Printed> printed) {
    Map<Entry, List<Printed>> byEntry = new LinkedHashMap<>();
    printed.forEach(
        one -> byEntry.computeIfAbsent(one.job().entry(), e -> new ArrayList<>()).add(one));
    List<IndexPage.Entry> entries = new ArrayList<>();
    byEntry.forEach((entry, sheets) -> entries.add(entry(entry, sheets)));
    return new IndexPage(clinic.name().value(), new Dates(Language.ENGLISH).full(today), entries)
        .html();
  }

  private IndexPage.Entry entry(Entry entry, List<Printed> sheets) {
    return new IndexPage.Entry(
        entry.id(), title(entry, Library.SOURCE_LANGUAGE), drawings(sheets), links(sheets));
  }

  private static String title(Entry entry, String language) {
    return entry
        .version(language)
        .flatMap(version -> version.body().title())
        .map(piece -> piece.plain())
        .orElse(entry.id());
  }

  private static List<String> drawings(List<Printed> sheets) {
    return sheets.stream()
        .flatMap(one -> one.sheet().stream())
        .filter(sheet -> sheet.identity().language().equals(Library.SOURCE_LANGUAGE))
        .flatMap(sheet -> sheet.drawings().stream())
        .findFirst()
        .map(Drawings::panels)
        .map(panels -> panels.stream().map(Drawings.Panel::svg).toList())
        .orElse(List.of());
  }

  private List<IndexPage.Link> links(List<Printed> sheets) {
    return sheets.stream().map(this::link).toList();
  }

  private IndexPage.Link link(Printed one) {
    Language language = Language.of(one.job().language()).orElse(Language.ENGLISH);
    Optional<Sheet> sheet = one.sheet();
    return new IndexPage.Link(
        sheet
            .map(found -> found.head().title())
            .orElseGet(() -> title(one.job().entry(), one.job().language())),
        language.tag(),
        language.ownName() + " (" + language.englishName() + ")",
        language.direction() == Direction.RIGHT_TO_LEFT,
        sheet.map(found -> one.job().path()),
        state(one));
  }

  private String state(Printed one) {
    if (one.sheet().isEmpty()) {
      return "not printed: " + one.leftOut();
    }
    String state =
        approvals
            .standing(one.job().entry().id(), one.job().language())
            .map(standing -> standing.state().word())
            .orElse("");
    boolean unread = one.sheet().get().foot().code().isPresent() && unread(one);
    return unread ? state + ", not yet read by a qualified translator" : state;
  }

  private boolean unread(Printed one) {
    return approvals
        .standing(one.job().entry().id(), one.job().language())
        .map(standing -> !standing.qualified())
        .orElse(false);
  }
}
