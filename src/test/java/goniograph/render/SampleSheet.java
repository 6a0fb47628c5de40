package goniograph.render;

import goniograph.figure.FigureOptions;
import goniograph.figure.Motion;
import goniograph.pose.PoseFile;
import goniograph.pose.PoseReader;
import goniograph.pose.PoseSolver;
import goniograph.sheet.Back;
import goniograph.sheet.Band;
import goniograph.sheet.Contact;
import goniograph.sheet.Counter;
import goniograph.sheet.Diary;
import goniograph.sheet.DoseTable;
import goniograph.sheet.Drawings;
import goniograph.sheet.Foot;
import goniograph.sheet.Head;
import goniograph.sheet.Identity;
import goniograph.sheet.LabelledLine;
import goniograph.sheet.LabelledLines;
import goniograph.sheet.LadderPicture;
import goniograph.sheet.Sheet;
import goniograph.sheet.Steps;
import goniograph.sheet.StopBox;
import goniograph.sheet.TickLine;
import goniograph.sheet.Writing;
import goniograph.source.DiskFiles;
import goniograph.source.SourceFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A page model written by hand, for tests of rendering alone. */
final class SampleSheet {
  private SampleSheet() {}

  static Sheet chairRise() {
    String chair =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"52mm\" height=\"50mm\" viewBox=\"0 0 52 50\""
            + " role=\"img\" alt=\"A person sits\" aria-label=\"A person sits\">"
            + "<rect x=\"10\" y=\"5\" width=\"30\" height=\"44\" fill=\"#FFFFFF\" stroke=\"#000000\""
            + " stroke-width=\"0.42\"/></svg>";
    List<Integer> week = List.of(1, 1, 0, 1, 1, 0, 1);
    return new Sheet(
        new Identity("hp-chair-rise", "en", false, "standard", "a4", Optional.empty(), 1),
        Optional.of(new Band("DRAFT – NOT FOR PATIENTS")),
        new Head("Chair rise", Optional.empty(), "", "Name", "Sheet ___ of ___"),
        List.of(
            new TickLine("Replaces all older sheets"), new TickLine("Do as well as older sheets")),
        new LabelledLine("Why", "To get up from any chair without pulling."),
        Optional.of(
            new DoseTable(
                "Do it",
                List.of(
                    new DoseTable.Row(
                        "Stand up 8 times. Rest 1 minute.",
                        List.of(new Counter.Rings(8, "8 rings"), new Counter.Clock("1 minute"))),
                    new DoseTable.Row(
                        "Stand up 8 times more.", List.of(new Counter.Rings(8, "8 rings"))),
                    new DoseTable.Row(
                        "1 time a day, 5 days a week.",
                        List.of(new Counter.Week(week, "5 days of exercise")))))),
        Optional.of(
            new Drawings(
                List.of(
                    new Drawings.Panel("Sit tall", chair, "A person sits", 47),
                    new Drawings.Panel("Lean", chair, "A person leans", 47),
                    new Drawings.Panel("Stand tall", chair, "A person stands", 47)),
                motion())),
        new Steps(
            "How",
            List.of(
                new Steps.CareLine("Firm chair, no wheels, its back against the wall."),
                new Steps.Step(
                    1, "Sit tall near the front of the seat. Feet flat, under your knees."),
                new Steps.Step(2, "Lean forward until your nose is over your toes."),
                new Steps.Step(3, "Push through your feet. Stand tall."),
                new Steps.Step(4, "Sit down slowly. Take 3 seconds.")),
            "Take care",
            List.of("Get up in stages. Wait until you feel steady before you walk.")),
        Optional.empty(),
        new StopBox(
            "Stop and call",
            List.of(
                new StopBox.Row(
                    3,
                    "Call 0000 now",
                    List.of(
                        "Chest pain, pressure or tightness. Hard to breathe at rest. Passing out.")),
                new StopBox.Row(
                    2,
                    "Stop and call us",
                    List.of(
                        "Dizzy: sit down or hold on, and stop. Call if it comes back or lasts.",
                        "Pain not settled on two mornings running, although you went one step down.")),
                new StopBox.Row(
                    1,
                    "Ease off, carry on",
                    List.of(
                        "Pain up to 3 of 10: carry on. Up to 5: do less today. Over 5: stop for today, next day one step down.",
                        "Judge by the next morning. Settled: carry on. Not settled: one step down.")))),
        new Contact("Phone", "+00 0000 0100", "Mon–Fri 8:00–17:00.", "Closed? +00 0000 0199"),
        new Foot(
            "Quillhaven Community Physiotherapy",
            List.of(
                "Release 2026.3 · Approved 2 June 2026",
                "Review by 31 May 2027 · English (English)"),
            "Sheet code",
            Optional.of("K7F3 2M9D 4Q"),
            List.of("#.#", ".#.", "#.#"),
            ""),
        Optional.of(back(week)));
  }

  private static Back back(List<Integer> week) {
    return new Back(
        "Chair rise",
        List.of(
            new LabelledLine(
                "You should feel",
                "Your thighs and seat muscles work. A little out of breath is fine."),
            new LabelledLine(
                "It is all right if",
                "soreness stays at 3 of 10 or less and is settled the next morning."),
            new LabelledLine(
                "Easier", "Put a firm cushion on the seat. Push with your hands on your thighs.")),
        Optional.of(
            new LadderPicture(
                "Ladder",
                List.of(
                    new LadderPicture.Rung("12 + 12 + 12", "seat 42 cm", ""),
                    new LadderPicture.Rung("12 + 12", "", ""),
                    new LadderPicture.Rung("10 + 10", "", ""),
                    new LadderPicture.Rung("8 + 8", "", "today")))),
        List.of(
            new LabelledLines(
                "Go up when",
                List.of(
                    "you did all of it 3 days running",
                    "soreness 3 of 10 or less",
                    "settled the next morning")),
            new LabelledLines(
                "Go down when", List.of("soreness over 5 of 10", "not settled the next morning"))),
        Optional.of(new LabelledLines("You need", List.of("a firm chair: no wheels"))),
        new Writing(
            "Finish, or see us by",
            List.of(new TickLine("Shown and done today")),
            List.of("My chair"),
            "From your therapist"),
        new Diary(
            "My four weeks",
            "Week",
            List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"),
            List.of("1", "2", "3", "4"),
            week,
            "How hard, 0–10",
            "Sore next morning",
            List.of("no", "a little", "a lot"),
            "My question:"));
  }

  /** The movement of the demo library's chair rise. */
  static Optional<Drawings.Motion> motion() {
    SourceFile file = DiskFiles.at(Path.of("figures")).text("hp-chair-rise.yaml").orElseThrow();
    PoseFile pose = PoseReader.read(file, finding -> {}).get(0);
    String id = "hp-chair-rise-motion";
    return Motion.of(PoseSolver.solve(pose).scene(), FigureOptions.STANDARD)
        .map(
            motion ->
                new Drawings.Motion(
                    id,
                    motion.svg(id, "A person stands up"),
                    motion.style(id),
                    "Show the movement"));
  }
}
