package goniograph.build;

import goniograph.body.Side;
import goniograph.dose.Sides;
import goniograph.finding.Finding;
import goniograph.library.Clinic;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.Programme;
import goniograph.register.Standing;
import goniograph.render.Layout;
import goniograph.source.Files;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/**
 * Builds a library: every sheet that may be printed, and an index that shows them. A fault in one
 * entry never stops the others.
 */
public final class Builder {
  private static final List<Optional<Side>> BOTH =
      List.of(Optional.of(Side.LEFT), Optional.of(Side.RIGHT));

  private final Examined examined;
  private final LocalDate today;
  private final BuildOrder order;
  private final Consumer<String> stage;

  /**
   * A build.
   *
   * @param stage takes one line a stage
   */
  public Builder(Examined examined, LocalDate today, BuildOrder order, Consumer<String> stage) {
    this.examined = examined;
    this.today = today;
    this.order = order;
    this.stage = stage;
  }

  /** Makes the sheets and writes them. */
  public BuildReport build(Files out) {
    Library library = examined.library();
    Optional<Clinic> clinic = library.clinic();
    if (clinic.isEmpty() || !examined.sharedErrors().isEmpty()) {
      return new BuildReport(examined.findings(), List.of(), List.of());
    }
    List<Printed> printed = make(library, clinic.get());
    List<Finding> findings = new ArrayList<>(examined.findings());
    printed.forEach(one -> findings.addAll(one.findings()));
    String index = new IndexMaker(library, clinic.get(), today, examined.approvals()).html(printed);
    write(out, printed, index);
    return new BuildReport(
        findings.stream().distinct().sorted(Finding.ORDER).toList(),
        printed.stream()
            .filter(one -> one.sheet().isPresent())
            .map(one -> one.job().path())
            .toList(),
        printed.stream().filter(one -> one.sheet().isEmpty()).map(Builder::leftOut).toList());
  }

  private static String leftOut(Printed printed) {
    return printed.job().path() + ": " + printed.leftOut();
  }

  private List<Printed> make(Library library, Clinic clinic) {
    SheetPrinter printer =
        new SheetPrinter(
            library,
            clinic,
            PhraseBooks.of(library),
            examined.checked().poses(),
            new Scenes(examined.checked().poses()),
            new PageStanding(examined.approvals().releases()),
            today);
    List<Job> jobs = jobs(library);
    stage.accept("setting  " + jobs.size() + (jobs.size() == 1 ? " sheet" : " sheets"));
    Set<String> faulty = examined.faulty();
    ExecutorService workers = Executors.newFixedThreadPool(order.jobs());
    try {
      List<Future<Printed>> waiting = new ArrayList<>();
      jobs.forEach(job -> waiting.add(workers.submit(() -> print(printer, job, faulty))));
      List<Printed> printed = new ArrayList<>();
      for (Future<Printed> one : waiting) {
        printed.add(one.get());
      }
      return printed;
    } catch (ExecutionException fault) {
      throw new IllegalStateException("a sheet could not be made", fault.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped", stopped);
    } finally {
      workers.shutdownNow();
    }
  }

  private Printed print(SheetPrinter printer, Job job, Set<String> faulty) {
    if (faulty.contains(job.entry().id())) {
      return Printed.nothing(job, "the entry has errors", List.of());
    }
    if (examined.faultyLanguages().contains(job.language())) {
      return Printed.nothing(
          job, "what all sheets in " + job.language() + " share has errors", List.of());
    }
    Optional<Standing> standing = examined.approvals().standing(job.entry().id(), job.language());
    return standing
        .map(one -> printer.print(job, one))
        .orElseGet(() -> Printed.nothing(job, "no version in this language", List.of()));
  }

  private List<Job> jobs(Library library) {
    List<Job> jobs = new ArrayList<>();
    for (Entry entry : library.entries()) {
      if (entry instanceof Programme || !order.takesEntry(entry.id())) {
        continue;
      }
      for (String language : library.languages()) {
        if (order.takesLanguage(language)) {
          jobs.addAll(jobs(entry, language));
        }
      }
    }
    return jobs;
  }

  private List<Job> jobs(Entry entry, String language) {
    List<Job> jobs = new ArrayList<>();
    for (Layout layout : order.layouts()) {
      for (String paper : order.papers()) {
        for (Optional<Side> side : sides(entry)) {
          jobs.add(new Job(entry, language, side, layout, paper));
        }
      }
    }
    return jobs;
  }

  /**
   * A drawer copy has nobody to ask: an entry whose side is asked, or is the sore one, gives both;
   * one that is for a single side gives that side.
   */
  static List<Optional<Side>> sides(Entry entry) {
    if (!(entry instanceof Exercise exercise)) {
      return List.of(Optional.empty());
    }
    Sides sides = exercise.sides().value();
    return switch (sides.mode()) {
      case LEFT -> List.of(Optional.of(Side.LEFT));
      case RIGHT -> List.of(Optional.of(Side.RIGHT));
      case AFFECTED -> BOTH;
      default -> sides.askAtPrint() ? BOTH : List.of(Optional.empty());
    };
  }

  private void write(Files out, List<Printed> printed, String index) {
    Set<String> written = new TreeSet<>();
    for (Printed one : printed) {
      if (one.sheet().isPresent()) {
        String path = one.job().path();
        out.write(path + ".pdf", one.pdf());
        out.write(path + ".html", one.html().getBytes(StandardCharsets.UTF_8));
        written.add(path + ".pdf");
        written.add(path + ".html");
      }
    }
    printed.stream().filter(one -> one.sheet().isEmpty()).forEach(one -> remove(out, one));
    if (order.isWhole()) {
      out.write("index.html", index.getBytes(StandardCharsets.UTF_8));
      removeOthers(out, written);
    }
    stage.accept("written  " + written.size() + " files");
  }

  /** A sheet that may no longer be printed must not lie about from an earlier build. */
  private static void remove(Files out, Printed gone) {
    out.delete(gone.job().path() + ".pdf");
    out.delete(gone.job().path() + ".html");
  }

  private void removeOthers(Files out, Set<String> written) {
    for (String language : examined.library().languages()) {
      out.list(language).stream().filter(path -> !written.contains(path)).forEach(out::delete);
    }
  }
}
