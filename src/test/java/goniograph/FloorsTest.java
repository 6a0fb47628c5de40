package goniograph;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The rooms and floors of docs/architecture.md: imports go down, never up or sideways. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FloorsTest {
  /** Bottom floor first; rooms of one floor do not know each other. */
  private static final List<Set<String>> FLOORS =
      List.of(
          Set.of("source"),
          Set.of("finding"),
          Set.of("language", "dose", "body", "type"),
          Set.of("matter"),
          Set.of("library", "pose"),
          Set.of("figure", "translation", "register"),
          Set.of("check"),
          Set.of("sheet"),
          Set.of("render"),
          Set.of("pack"),
          Set.of("build", "exchange"),
          Set.of("desk"),
          Set.of("cli"));

  private final JavaClasses classes =
      new ClassFileImporter()
          .withImportOption(location -> !location.contains("/test-classes/"))
          .importPackages("goniograph");

  @Test
  void everyClassLivesInARoom() {
    Set<String> rooms = new TreeSet<>();
    FLOORS.forEach(rooms::addAll);
    Set<String> homeless = new TreeSet<>();
    for (JavaClass type : classes) {
      if (!rooms.contains(room(type))) {
        homeless.add(type.getName());
      }
    }
    assertEquals(Set.of(), homeless);
  }

  @Test
  void importsGoDown() {
    for (int floor = 0; floor < FLOORS.size(); floor++) {
      for (String room : new TreeSet<>(FLOORS.get(floor))) {
        List<String> closed = new ArrayList<>();
        for (int other = floor; other < FLOORS.size(); other++) {
          for (String name : FLOORS.get(other)) {
            if (!name.equals(room)) {
              closed.add("goniograph." + name + "..");
            }
          }
        }
        if (!closed.isEmpty()) {
          noClasses()
              .that(resideInAPackage("goniograph." + room + ".."))
              .should()
              .dependOnClassesThat(resideInAnyPackage(closed.toArray(String[]::new)))
              .as(room + " knows only rooms below its own floor")
              .allowEmptyShould(true)
              .check(classes);
        }
      }
    }
  }

  @Test
  void roomsAreFreeOfCycles() {
    slices().matching("goniograph.(*)..").should().beFreeOfCycles().check(classes);
  }

  @Test
  void onlySourceOpensFiles() {
    noClasses()
        .that(resideInAPackage("goniograph..").and(notIn("source")))
        .should()
        .dependOnClassesThat(
            named(
                "java.io.File",
                "java.io.FileInputStream",
                "java.io.FileOutputStream",
                "java.io.FileReader",
                "java.io.FileWriter",
                "java.io.RandomAccessFile",
                "java.nio.file.Files",
                "java.nio.file.FileSystems",
                "java.nio.channels.FileChannel"))
        .check(classes);
  }

  @Test
  void onlyTheCommandsPrintOrEnd() {
    noClasses()
        .that(resideInAPackage("goniograph..").and(notIn("cli")))
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "exit", int.class)
        .orShould()
        .callMethod(Throwable.class, "printStackTrace")
        .check(classes);
  }

  @Test
  void onlySourceReadsTheClock() {
    TreeMap<String, String> readers = new TreeMap<>();
    for (JavaClass type : classes) {
      if (room(type).equals("source")) {
        continue;
      }
      for (JavaAccess<?> access : type.getAccessesFromSelf()) {
        if (readsClock(access)) {
          readers.put(type.getName(), access.getTarget().getFullName());
        }
      }
    }
    assertEquals(new TreeMap<>(), readers);
  }

  private static boolean readsClock(JavaAccess<?> access) {
    String owner = access.getTargetOwner().getName();
    String name = access.getTarget().getName();
    return owner.equals("java.time.Clock")
        || (owner.startsWith("java.time.") && name.equals("now"))
        || (owner.equals("java.lang.System") && name.equals("currentTimeMillis"));
  }

  private static DescribedPredicate<JavaClass> notIn(String room) {
    return DescribedPredicate.describe("not in " + room, type -> !room(type).equals(room));
  }

  private static DescribedPredicate<JavaClass> named(String... names) {
    Set<String> set = Set.of(names);
    return DescribedPredicate.describe("opening files", type -> set.contains(type.getName()));
  }

  private static String room(JavaClass type) {
    String[] parts = type.getPackageName().split("\\.");
    return parts.length < 2 ? "" : parts[1];
  }
}
