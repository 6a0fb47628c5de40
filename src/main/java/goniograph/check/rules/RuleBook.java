package goniograph.check.rules;

import goniograph.check.PoseRule;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.pose.PoseFile;
import goniograph.pose.Solved;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The rules there are. A new rule is one class and one line here. */
public final class RuleBook {
  private static final List<Rule> RULES =
      Stream.of(
              List.of(
                  new DoseIncomplete(),
                  new DoseLimits(),
                  new DoseNeeds(),
                  new HoldOrTempo(),
                  new DoseVolume(),
                  new WakingHours(),
                  new RestDay(),
                  new LadderNotHarder(),
                  new LadderJump(),
                  new LadderTension(),
                  new LadderBalance(),
                  new LadderCriteria(),
                  new LadderContradiction(),
                  new LadderDuration(),
                  new BandForce(),
                  new HeightNotInStock(),
                  new ProgrammeEntries(),
                  new ProgrammePhases(),
                  new ProgrammeMinutes(),
                  new ProgrammeSize(),
                  new ProgrammeEasier(),
                  new ProgrammeRegion(),
                  new ProgrammeRest(),
                  new ProgrammeOrder(),
                  new ProgrammeTags(),
                  new SupportWhenUnsteady()),
              PositionRules.all(),
              RegionRules.all(),
              WorkRules.all(),
              TagRules.all(),
              List.of(
                  new TagUnknown(),
                  new PrecautionUnclear(),
                  new PrecautionLimit(),
                  new PrecautionSwap(),
                  new SupervisionMissing(),
                  new SocksStanding(),
                  new StanceAndFigure(),
                  new EquipmentUnchecked(),
                  new StopBoxFull(),
                  new StatementUnknown(),
                  new StatementLevel(),
                  new FigureUnknown(),
                  new PhraseUnknown(),
                  new BandUnknown(),
                  new SourceUnknown(),
                  new ClaimUnknown(),
                  new RuleTableWords(),
                  new SlotUnknown(),
                  new SlotWithoutValue(),
                  new NumberInProse(),
                  new AngleInText(),
                  new SideInText(),
                  new PositionInText(),
                  new EquipmentInText(),
                  new BreathHolding(),
                  new PainWording(),
                  new ClaimUnmarked(),
                  new ClaimArithmetic(),
                  new ClaimSecondLook(),
                  new ClaimDisputed(),
                  new ClaimMarksDiffer(),
                  new WordForbidden(),
                  new WordAmbiguous(),
                  new WordFrightening(),
                  new WordHard(),
                  new PersonalData(),
                  new SentenceLength(),
                  new ReadingLevel(),
                  new ReviewDue(),
                  new PhraseFaulty(),
                  new PhraseMissing(),
                  new StatementTranslation(),
                  new GlyphMissing(),
                  new SlotsDiffer(),
                  new PieceMissing(),
                  new PieceStale(),
                  new PosePosition(),
                  new PoseContactMissed(),
                  new PoseBelowFloor(),
                  new PoseRangeOfMotion(),
                  new PoseEntryRange(),
                  new PoseAimMissed(),
                  new PoseAngleChanged()))
          .flatMap(List::stream)
          .toList();

  private static final List<RulePage> READING =
      Stream.of(
              YamlPages.all(),
              FieldPages.all(),
              QuantityPages.all(),
              EntryPages.all(),
              TextPages.all(),
              LibraryPages.all(),
              PosePages.all(),
              RegisterPages.all())
          .flatMap(List::stream)
          .toList();

  /** Findings that only {@code build} makes; of the others, phrase and glyph rules say the same. */
  private static final List<RulePage> PRINTING = PrintPages.all();

  private RuleBook() {}

  /** The rules, in the order of the book. */
  public static List<Rule> rules() {
    return RULES;
  }

  /** What the rules find in a pose that is looked at without an entry. */
  public static List<Finding> alone(PoseFile pose, Solved solved) {
    return RULES.stream()
        .filter(PoseRule.class::isInstance)
        .map(PoseRule.class::cast)
        .flatMap(rule -> rule.alone(pose, solved))
        .toList();
  }

  /** The pages of all findings: of reading first, then of the rules, then of printing. */
  public static List<RulePage> pages() {
    return Stream.of(READING.stream(), RULES.stream().map(Rule::page), PRINTING.stream())
        .flatMap(all -> all)
        .toList();
  }

  /** The pages of findings that only {@code build} makes. */
  public static List<RulePage> printing() {
    return PRINTING;
  }

  /** The page of a rule. */
  public static Optional<RulePage> page(String name) {
    return pages().stream().filter(page -> page.name().equals(name)).findFirst();
  }
}
