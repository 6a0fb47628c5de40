package goniograph.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NearestTest {
  private static final List<String> KEYS = List.of("hold", "relax", "rest", "reps", "review_due");

  @Test
  void offersTheWordThatWasMeant() {
    assertEquals(Optional.of("relax"), Nearest.of("realx", KEYS));
    assertEquals(Optional.of("review_due"), Nearest.of("reviewdue", KEYS));
    assertEquals(Optional.of("review_due"), Nearest.of("review_date", KEYS));
    assertEquals("; did you mean `hold`?", Nearest.hint("holds", KEYS));
  }

  @Test
  void offersNothingWhereNothingIsNear() {
    assertEquals(Optional.empty(), Nearest.of("angles", KEYS));
    assertEquals(Optional.empty(), Nearest.of("x", KEYS));
    assertEquals("", Nearest.hint("x", List.of()));
  }

  /** Wagner and Fischer 1974 give kitten–sitting 3; Damerau's swap of neighbours counts one. */
  @Test
  void countsAsPublished() {
    assertEquals(3, Nearest.distance("kitten", "sitting"));
    assertEquals(1, Nearest.distance("hodl", "hold"));
    assertEquals(3, Nearest.distance("ca", "abc"));
  }

  @Test
  void isADistance() {
    Random random = new Random(1);
    for (int i = 0; i < 2000; i++) {
      String a = word(random);
      String b = word(random);
      assertEquals(Nearest.distance(a, b), Nearest.distance(b, a));
      assertEquals(a.equals(b), Nearest.distance(a, b) == 0);
    }
  }

  private static String word(Random random) {
    return random
        .ints(random.nextInt(6), 'a', 'd')
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }
}
