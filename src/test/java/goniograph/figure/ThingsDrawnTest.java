package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.Side;
import goniograph.finding.Finding;
import goniograph.pose.Moment;
import goniograph.pose.PoseFile;
import goniograph.pose.PoseReader;
import goniograph.pose.PoseSolver;
import goniograph.pose.Scene;
import goniograph.pose.Support;
import goniograph.source.DiskFiles;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;

/** Supports and held things, drawn: what hides what, and that each can be seen. */
class ThingsDrawnTest {
  /** A standing adult of 170 cm on a panel of the standard sheet is drawn at about this scale. */
  private static final double SCALE = 50;

  private static final List<Scene> SCENES =
      Stream.of("supports.yaml", "props.yaml")
          .flatMap(name -> read(name).stream())
          .map(pose -> PoseSolver.solve(pose).scene())
          .toList();

  static Stream<Named<Scene>> samples() {
    return SCENES.stream().map(scene -> Named.of(scene.id(), scene));
  }

  private static List<PoseFile> read(String name) {
    List<Finding> findings = new ArrayList<>();
    Path folder = Path.of("src/test/resources/goniograph/pose");
    List<PoseFile> poses =
        PoseReader.read(DiskFiles.at(folder).text(name).orElseThrow(), findings::add);
    assertEquals(List.of(), findings);
    return poses;
  }

  private static Scene scene(String id) {
    return SCENES.stream().filter(scene -> scene.id().equals(id)).findFirst().orElseThrow();
  }

  /** The parts of a scene's first key frame, farthest first. */
  private static List<Part> ordered(Scene scene) {
    Projection paper = Projection.of(scene.camera(), SCALE);
    Moment key = scene.keys().get(0);
    List<Boolean> carries = new ArrayList<>();
    for (Support support : scene.supports()) {
      support.boxes().forEach(box -> carries.add(support.carries()));
    }
    boolean[] flags = new boolean[carries.size()];
    for (int i = 0; i < flags.length; i++) {
      flags[i] = carries.get(i);
    }
    return new DepthOrder(paper, key.skeleton(), flags)
        .sorted(new SceneParts(paper, scene).of(key, false));
  }

  private static int place(List<Part> parts, Part.Id id) {
    return parts.stream().map(Part::id).toList().indexOf(id);
  }

  private static Geometry seen(List<Part> parts, Part part) {
    int at = parts.indexOf(part);
    List<Geometry> nearer =
        parts.subList(at + 1, parts.size()).stream().map(Part::outline).toList();
    return Hulls.minus(part.outline(), Hulls.union(nearer));
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everyHeldThingIsSeenInPart(Scene scene) {
    List<Part> parts = ordered(scene);
    List<Part> things = parts.stream().filter(part -> part.id().kind() == Kind.PROP).toList();
    assertEquals(scene.keys().get(0).props().isEmpty(), things.isEmpty());
    double area = things.stream().mapToDouble(part -> part.outline().getArea()).sum();
    double seen = things.stream().mapToDouble(part -> seen(parts, part).getArea()).sum();
    assertTrue(seen >= .25 * area, scene.id() + " shows " + seen / area);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void noBandOrBarIsThinnerThanTwoLinesWithWhiteBetween(Scene scene) {
    double least = 2 * Weights.STANDARD.near() / 2 + Weights.STANDARD.halo();
    for (Part part : ordered(scene)) {
      if (part.id().kind() == Kind.PROP || part.id().kind() == Kind.GRIP) {
        assertTrue(
            !Hulls.widened(part.outline(), -least / 2).isEmpty(), scene.id() + " " + part.id());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void everySampleIsDrawnInBothStyles(Scene scene) {
    for (Style style : Style.values()) {
      String svg =
          Figure.of(scene, FigureOptions.STANDARD.in(style)).svg("x", "title", "description");
      assertTrue(svg.contains("<path") && !svg.contains("NaN"), scene.id());
    }
  }

  @Test
  void aFistClosesOverABarAndABandGoesRoundTheFist() {
    List<Part> stick = ordered(scene("stick-in-hands"));
    int bar = place(stick, thing(stick, Kind.PROP));
    for (Side side : Side.values()) {
      assertTrue(bar < place(stick, Part.Id.of(Kind.HAND, side)), side + " fist over the stick");
    }
    List<Part> band = ordered(scene("band-from-door"));
    int hand = place(band, Part.Id.of(Kind.HAND, Side.RIGHT));
    Geometry fist = band.get(hand).outline();
    assertTrue(
        band.subList(hand + 1, band.size()).stream()
            .anyMatch(p -> p.id().kind() == Kind.GRIP && p.outline().intersects(fist)));
  }

  private static Part.Id thing(List<Part> parts, Kind kind) {
    return parts.stream().map(Part::id).filter(id -> id.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void theNearArmRestHidesTheThighAndTheSeatDoesNot() {
    List<Part> parts = ordered(scene("chair-with-arms"));
    int thigh = place(parts, Part.Id.of(Kind.THIGH, Side.RIGHT));
    List<Part> nearer =
        parts.subList(thigh + 1, parts.size()).stream()
            .filter(part -> part.id().kind() == Kind.SUPPORT)
            .filter(part -> part.outline().intersects(parts.get(thigh).outline()))
            .toList();
    assertTrue(!nearer.isEmpty());
    for (Part part : nearer) {
      Solid.Block block = (Solid.Block) part.solid();
      assertTrue(block.box().centre().z() > .12, "on the right, outside the seat");
    }
  }

  @Test
  void aBallIsBehindTheNearHandAndBeforeTheFarOne() {
    Scene scene = scene("ball-in-hands");
    List<Part> parts = ordered(scene);
    int ball = place(parts, thing(parts, Kind.PROP));
    assertTrue(ball < place(parts, Part.Id.of(Kind.HAND, Side.RIGHT)));
    assertTrue(ball > place(parts, Part.Id.of(Kind.HAND, Side.LEFT)));
  }
}
