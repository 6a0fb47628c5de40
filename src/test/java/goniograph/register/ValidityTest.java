package goniograph.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.source.Digest;
import goniograph.source.MemoryFiles;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The states of a sheet; the days of G3 (60 before, the day, 90 behind) from the job's features.
 */
class ValidityTest {
  private static final LocalDate SIGNED = LocalDate.of(2026, 11, 20);
  private static final LocalDate DUE = LocalDate.of(2027, 5, 31);
  private static final String TEXT = Digest.of("the entry");
  private static final String PIECE = Digest.of("a piece");
  private static final String TRANSLATED = Digest.of("its translation");

  private final SharedDigests now =
      new SharedDigests(
          "en",
          map("dose-limits", Digest.of("rules")),
          map(
              "en",
              map("s-chest", Digest.of("chest")),
              "ar",
              map("s-chest", Digest.of("chest-ar"))),
          map("en", Digest.of("words"), "ar", Digest.of("words-ar")));

  private static <V> SortedMap<String, V> map(String key, V value) {
    return new TreeMap<>(Map.of(key, value));
  }

  private static <V> SortedMap<String, V> map(String a, V first, String b, V second) {
    return new TreeMap<>(Map.of(a, first, b, second));
  }

  private static Signing signing(Role role, String by, boolean qualified) {
    return new Signing(new Claim(role, by, SIGNED, qualified));
  }

  private SharedRegister shared() {
    SharedRegister register = SharedRegister.NONE;
    for (String clinician : List.of("clinician-1", "clinician-2")) {
      Signing clinical = signing(Role.CLINICAL, clinician, true);
      register = clinical.rules(now, clinical.statements("en", now, register));
    }
    register = signing(Role.AUTHOR, "author-1", true).phrases("en", now, register);
    for (Signing one :
        List.of(
            signing(Role.TRANSLATOR, "translator-ar", true),
            signing(Role.LANGUAGE, "reviewer-ar", true))) {
      register = one.phrases("ar", now, one.statements("ar", now, register));
    }
    return register;
  }

  private static EntryRegister entry(boolean qualified) {
    Text text = Text.source(TEXT);
    EntryRegister register =
        signing(Role.AUTHOR, "author-1", true).entry("x", EntryRegister.NONE, text);
    register = signing(Role.CLINICAL, "clinician-1", true).entry("x", register, text);
    List<PiecePair> pairs = List.of(new PiecePair(PIECE, TRANSLATED));
    register =
        signing(Role.TRANSLATOR, "translator-ar", qualified).version("x", "ar", register, pairs);
    return signing(Role.LANGUAGE, "reviewer-ar", true).version("x", "ar", register, pairs);
  }

  private static EntryDigests digests(String text) {
    return new EntryDigests(
        "x",
        "content/exercises/x/en.md",
        text,
        new TreeSet<>(List.of("s-chest")),
        Optional.of(DUE));
  }

  private static VersionDigests version(
      List<String> pieces, List<String> stale, List<String> missing) {
    return new VersionDigests("ar", "content/exercises/x/ar.md", pieces, stale, missing);
  }

  private static VersionDigests good() {
    return version(List.of(TRANSLATED), List.of(), List.of());
  }

  private Standing on(LocalDate today) {
    return new Validity(now, shared(), today).standing(digests(TEXT), entry(true), good());
  }

  private static void assertStands(State state, Print print, Standing standing) {
    assertEquals(state, standing.state(), standing.because());
    assertEquals(print, standing.print(), standing.because());
  }

  @Test
  void signedByAllItIsReady() {
    Standing standing = on(SIGNED);
    assertStands(State.READY, Print.FINAL, standing);
    assertEquals(Optional.of(SIGNED), standing.approved());
    assertTrue(standing.qualified());
    assertEquals(List.of(), standing.reasons());
  }

  @Test
  void theReviewDayIsEnforced() {
    assertEquals(List.of(), on(DUE.minusDays(60)).reasons());
    Standing near = on(DUE.minusDays(59));
    assertStands(State.READY, Print.FINAL, near);
    assertEquals("The review of `x` is due by 2027-05-31.", near.reasons().get(0).finding().what());
    assertStands(State.READY, Print.FINAL, on(DUE));
    assertStands(State.OVERDUE, Print.OVERDUE, on(DUE.plusDays(1)));
    assertStands(State.OVERDUE, Print.OVERDUE, on(DUE.plusDays(90)));
    assertStands(State.OVERDUE, Print.NONE, on(DUE.plusDays(91)));
  }

  @Test
  void anEditedSourceTextVoidsAllLanguages() {
    Validity validity = new Validity(now, shared(), SIGNED);
    EntryDigests edited = digests(Digest.of("the entry, edited"));
    assertStands(State.VOID, Print.NONE, validity.standing(edited, entry(true)));
    assertStands(State.VOID, Print.NONE, validity.standing(edited, entry(true), good()));
    assertEquals(Optional.empty(), validity.standing(edited, entry(true)).approved());
  }

  @Test
  void anEditedTranslationVoidsThatLanguageAlone() {
    Validity validity = new Validity(now, shared(), SIGNED);
    VersionDigests edited = version(List.of(Digest.of("other")), List.of(), List.of());
    assertStands(State.VOID, Print.NONE, validity.standing(digests(TEXT), entry(true), edited));
    assertStands(State.READY, Print.FINAL, validity.standing(digests(TEXT), entry(true)));
  }

  @Test
  void staleMissingAndUnrecordedVersions() {
    Validity validity = new Validity(now, shared(), SIGNED);
    EntryDigests x = digests(TEXT);
    assertStands(
        State.STALE,
        Print.STALE,
        validity.standing(
            x, entry(true), version(List.of(TRANSLATED), List.of("do 2"), List.of())));
    assertStands(
        State.MISSING,
        Print.NONE,
        validity.standing(
            x, entry(true), version(List.of(TRANSLATED), List.of(), List.of("do 2"))));
    assertStands(
        State.MISSING,
        Print.NONE,
        validity.standing(x, entry(true), version(List.of(), List.of(), List.of())));
    EntryRegister sourceOnly =
        new EntryRegister(entry(true).entry(), new TreeMap<>(), new TreeMap<>(), List.of());
    assertStands(State.UNRECORDED, Print.DRAFT, validity.standing(x, sourceOnly, good()));
  }

  @Test
  void withoutTheSharedSignaturesEverythingIsADraft() {
    Validity validity = new Validity(now, SharedRegister.NONE, SIGNED);
    assertStands(State.UNSIGNED, Print.DRAFT, validity.standing(digests(TEXT), entry(true)));
  }

  @Test
  void aSafetyWordingBehindItsSourceIsNotPrinted() {
    SharedDigests changed =
        new SharedDigests(
            "en",
            now.rules(),
            map(
                "en",
                map("s-chest", Digest.of("new")),
                "ar",
                map("s-chest", Digest.of("chest-ar"))),
            now.phrases());
    SharedRegister register = shared();
    for (String clinician : List.of("clinician-1", "clinician-2")) {
      register = signing(Role.CLINICAL, clinician, true).statements("en", changed, register);
    }
    Validity validity = new Validity(changed, register, SIGNED);
    assertStands(State.READY, Print.FINAL, validity.standing(digests(TEXT), entry(true)));
    assertStands(State.STALE, Print.NONE, validity.standing(digests(TEXT), entry(true), good()));
  }

  @Test
  void oneClinicianTwiceIsNotTwoClinicians() {
    Signing one = signing(Role.CLINICAL, "clinician-1", true);
    SharedRegister register = one.rules(now, one.rules(now, SharedRegister.NONE));
    List<Reason> reasons = new SharedReasons(now, register).rules();
    assertEquals(
        "The rule file `dose-limits` lacks a signature in the role clinical.",
        reasons.get(0).finding().what());
  }

  @Test
  void aRecallStopsThePrint() {
    SharedRegister all = shared();
    Recall recall = new Recall("s-chest", "wrong number", "manager-1", SIGNED, Optional.empty());
    SharedRegister recalled =
        new SharedRegister(
            all.rules(), all.statements(), all.phrases(), List.of(recall), List.of());
    Validity validity = new Validity(now, recalled, SIGNED);
    assertStands(State.RECALLED, Print.NONE, validity.standing(digests(TEXT), entry(true)));
  }

  @Test
  void theSheetSaysWhereSomeoneLackedTheQualification() {
    Standing standing =
        new Validity(now, shared(), SIGNED).standing(digests(TEXT), entry(false), good());
    assertStands(State.READY, Print.FINAL, standing);
    assertFalse(standing.qualified());
  }

  @Test
  void aRegisterEditedByHandInTwoRolesIsAnError() {
    Signature author = new Signature(Role.AUTHOR, "a-1", SIGNED, true, TEXT, Optional.empty());
    Signature clinical = new Signature(Role.CLINICAL, "a-1", SIGNED, true, TEXT, Optional.empty());
    EntryRegister forged =
        new EntryRegister(
            new Signatures(List.of(author, clinical)), new TreeMap<>(), new TreeMap<>(), List.of());
    Standing standing = new Validity(now, shared(), SIGNED).standing(digests(TEXT), forged);
    assertStands(State.VOID, Print.NONE, standing);
    assertEquals("`x` is signed by a-1 in two roles that exclude each other.", standing.because());
  }

  @Test
  void registersReadBackAsTheyWereWritten() {
    MemoryFiles files = new MemoryFiles();
    files.write("content/exercises/x/register.yaml", RegisterWriter.bytes(entry(false)));
    files.write("shared/register.yaml", RegisterWriter.bytes(shared()));
    assertEquals(
        new Read<>(entry(false), List.of()), RegisterReader.entry(files, "content/exercises/x"));
    assertEquals(new Read<>(shared(), List.of()), RegisterReader.shared(files));
  }
}
