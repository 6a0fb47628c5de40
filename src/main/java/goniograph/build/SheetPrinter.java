package goniograph.build;

import goniograph.check.Poses;
import goniograph.check.PrintedStatements;
import goniograph.figure.Person;
import goniograph.finding.Finding;
import goniograph.language.Phrases;
import goniograph.library.Clinic;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.Rung;
import goniograph.matter.Body;
import goniograph.pose.Scene;
import goniograph.register.Print;
import goniograph.register.Standing;
import goniograph.render.Paper;
import goniograph.render.PaperRenderer;
import goniograph.render.ScreenRenderer;
import goniograph.sheet.DrawingMaker;
import goniograph.sheet.Drawings;
import goniograph.sheet.SheetMaker;
import goniograph.sheet.SheetOrder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes one sheet whole: words, drawings, screen page and paper.
 *
 * @param library the library
 * @param clinic its clinic
 * @param books the phrases of every language
 * @param poses the solved poses that rules looked at
 * @param scenes the same as scenes, for either side
 * @param approvals what the registers say on the page
 * @param today the day that counts as today
 */
record SheetPrinter(
    Library library,
    Clinic clinic,
    PhraseBooks books,
    Poses poses,
    Scenes scenes,
    PageStanding approvals,
    LocalDate today) {

  /** Makes the sheet, or says why there is none. */
  Printed print(Job job, Standing standing) {
    if (standing.print() == Print.NONE) {
      return Printed.nothing(job, standing.because(), List.of());
    }
    Optional<Phrases> phrases = books.in(job.language());
    Optional<Body> body = job.entry().version(job.language()).map(version -> version.body());
    return phrases.isEmpty() || body.isEmpty()
        ? Printed.nothing(job, "no version in this language", List.of())
        : print(job, standing, phrases.get(), body.get());
  }

  private Printed print(Job job, Standing standing, Phrases phrases, Body body) {
    Optional<Exercise> exercise =
        job.entry() instanceof Exercise one ? Optional.of(one) : Optional.empty();
    Optional<Rung> rung = exercise.map(Exercise::start);
    Optional<Drawings> drawings =
        rung.flatMap(step -> step.conditions().figure())
            .flatMap(figure -> scenes.scene(figure.value(), job.side()))
            .map(scene -> drawings(scene, job, phrases, body));
    PrintedStatements statements =
        exercise
            .map(e -> PrintedStatements.of(library, poses, e, rung.orElseThrow()))
            .orElseGet(() -> PrintedStatements.of(library, job.entry()));
    SheetMaker.Made made =
        new SheetMaker(library, clinic, phrases)
            .make(
                new SheetOrder(
                    job.entry(),
                    job.language(),
                    job.side(),
                    rung,
                    job.layout().name(),
                    job.paper()),
                statements,
                drawings,
                approvals.of(standing));
    List<Finding> findings = new ArrayList<>(new PrintFindings(job).of(made.gaps()));
    if (!findings.isEmpty()) {
      return Printed.nothing(job, "a phrase is missing", findings);
    }
    return set(job, standing, made);
  }

  private Printed set(Job job, Standing standing, SheetMaker.Made made) {
    Paper paper = new PaperRenderer().render(made.sheet(), job.layout(), standing.digest(), today);
    List<Finding> findings = new PrintFindings(job).of(paper);
    return findings.isEmpty()
        ? new Printed(
            job,
            "",
            Optional.of(made.sheet()),
            ScreenRenderer.html(made.sheet()),
            paper.pdf(),
            findings)
        : Printed.nothing(job, "it does not fit or cannot be shown", findings);
  }

  private Drawings drawings(Scene scene, Job job, Phrases phrases, Body body) {
    String title = body.title().map(piece -> piece.plain()).orElse("");
    return new DrawingMaker(phrases, Person.of(clinic.settings().figure()))
        .drawings(scene, job.entry().id(), title, body, job.side());
  }
}
