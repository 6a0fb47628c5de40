package goniograph.render.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** Same page and same facts, same bytes, on any thread. */
class SameBytesTest {
  @Test
  void twoRendersAreEqual() {
    for (String language : Pages.LANGUAGES) {
      assertArrayEquals(Pages.render(language).pdf(), Pages.render(language).pdf(), language);
    }
  }

  @Test
  void anotherContentDigestMakesAnotherFile() {
    PdfFacts facts = Pages.facts("en");
    PdfFacts other = new PdfFacts(facts.title(), "en", false, "fedcba9876543210", facts.date());
    byte[] one = new PdfRenderer().render(Pages.source("en"), facts).pdf();
    byte[] two = new PdfRenderer().render(Pages.source("en"), other).pdf();
    assertFalse(Arrays.equals(one, two));
  }

  @Test
  void fourThreadsGiveWhatOneGives() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Future<byte[]>> renders = new ArrayList<>();
      for (int i = 0; i < 24; i++) {
        String language = Pages.LANGUAGES.get(i % Pages.LANGUAGES.size());
        renders.add(threads.submit(() -> Pages.render(language).pdf()));
      }
      for (int i = 0; i < renders.size(); i++) {
        String language = Pages.LANGUAGES.get(i % Pages.LANGUAGES.size());
        assertArrayEquals(Pages.render(language).pdf(), renders.get(i).get(), language);
      }
    } finally {
      threads.shutdown();
    }
  }
}
