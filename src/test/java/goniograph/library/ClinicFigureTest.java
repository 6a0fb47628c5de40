package goniograph.library;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.body.Build;
import goniograph.finding.Finding;
import goniograph.library.Clinic.FigureSettings;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How people are drawn is a setting of the clinic file (job description, part 5.9). */
class ClinicFigureTest {

  private static LibraryRead read(String figure) {
    String clinic = SampleLibrary.CLINIC + "settings: { figure: " + figure + " }\n";
    return Library.read(SampleLibrary.files().with("shared/clinic.yaml", clinic));
  }

  private static FigureSettings settings(String figure) {
    return read(figure).library().clinic().orElseThrow().settings().figure();
  }

  @ParameterizedTest
  @EnumSource(Build.class)
  void everyBuildCanBeAskedFor(Build build) {
    assertEquals(
        new FigureSettings(build, false, false), settings("{ build: " + build.word() + " }"));
  }

  @Test
  void headCoveringAndWheelchairAreSettings() {
    assertEquals(
        new FigureSettings(Build.OLDER, true, true),
        settings("{ build: older, head_covering: true, wheelchair: true }"));
    assertEquals(FigureSettings.DEFAULT, settings("{}"));
  }

  @Test
  void anUnknownBuildIsFoundAndTheAdultStays() {
    List<Finding> findings =
        read("{ build: lager }").findings().stream()
            .filter(finding -> finding.at().file().equals("shared/clinic.yaml"))
            .toList();
    assertEquals(1, findings.size());
    assertEquals("field-word", findings.get(0).rule());
    assertEquals("9:30", findings.get(0).at().line() + ":" + findings.get(0).at().column());
    assertEquals(Build.ADULT, settings("{ build: lager }").build());
  }
}
