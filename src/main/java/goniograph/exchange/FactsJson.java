package goniograph.exchange;

import goniograph.body.Freedom;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.pose.Loads;
import goniograph.pose.MomentFacts;
import goniograph.pose.SceneFacts;
import goniograph.pose.Solved;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What is true of a solved pose, as JSON: solved angles in author words, contact misses, balance
 * margin and static loads of every key frame. Every key names its unit.
 */
public final class FactsJson {
  private FactsJson() {}

  /** The facts of a pose. */
  public static String of(Solved solved) {
    SceneFacts facts = solved.facts();
    ObjectNode root = JsonMapper.shared().createObjectNode();
    root.put("pose", facts.pose());
    root.put("base", solved.scene().base());
    root.put("bodyHeightCm", solved.scene().body().heightCm());
    root.put("bodyMassKg", solved.scene().body().massKg());
    facts.seatHeightCm().ifPresent(cm -> root.put("seatHeightCm", tenth(cm)));
    facts.stepHeightCm().ifPresent(cm -> root.put("stepHeightCm", tenth(cm)));
    ObjectNode supports = root.putObject("supportDistanceCm");
    facts.supportDistanceCm().forEach((name, cm) -> supports.put(name, tenth(cm)));
    facts.keys().forEach(moment -> add(root.withArray("keyFrames").addObject(), moment));
    ObjectNode extremes = root.putObject("extremesDeg");
    facts
        .extremes()
        .forEach(
            (freedom, extreme) -> {
              if (freedom.movement().unit() == Movement.Unit.DEGREES) {
                ObjectNode range = extremes.putObject(words(freedom));
                range.put("low", tenth(extreme.low()));
                range.put("high", tenth(extreme.high()));
              }
            });
    return Json.text(root);
  }

  private static void add(ObjectNode node, MomentFacts moment) {
    node.put("name", moment.name());
    ObjectNode angles = node.putObject("anglesDeg");
    moment
        .angles()
        .values()
        .forEach(
            (freedom, value) -> {
              if (freedom.movement().unit() == Movement.Unit.DEGREES) {
                angles.put(words(freedom), tenth(value));
              }
            });
    node.put("leanDeg", tenth(moment.leanDegrees()));
    node.put("spineFlexionDeg", tenth(moment.spineFlexionDegrees()));
    node.put("craniovertebralDeg", tenth(moment.craniovertebralDegrees()));
    ObjectNode misses = node.putObject("contactMissCm");
    moment.misses().forEach(miss -> misses.put(miss.contact().words(), hundredth(miss.cm())));
    node.put("slipCm", hundredth(moment.slipCm()));
    node.put("belowFloorCm", hundredth(moment.belowFloorCm()));
    put(node, "balanceMarginCm", moment.marginCm());
    put(node, "balanceMarginWithoutHandsCm", moment.marginWithoutHandsCm());
    put(node, "bandLengthCm", moment.bandCm());
    add(node.putObject("staticMomentNm"), moment.loads());
    ArrayNode carried = node.putArray("carried");
    moment.loads().carried().forEach(carried::add);
  }

  private static void add(ObjectNode node, Loads loads) {
    put(node, "neck", loads.neck());
    put(node, "lowBack", loads.lowBack());
    put(node, "shoulder", loads.shoulder());
    put(node, "hip", loads.hip());
    put(node, "knee", loads.knee());
  }

  private static void put(ObjectNode node, String joint, Map<Side, Double> bySide) {
    new TreeMap<>(bySide)
        .forEach(
            (side, value) ->
                node.put(joint + " " + side.name().toLowerCase(Locale.ROOT), tenth(value)));
  }

  private static void put(ObjectNode node, String key, Optional<Double> value) {
    value.ifPresent(number -> node.put(key, tenth(number)));
  }

  private static String words(Freedom freedom) {
    return freedom.jointWords() + ": " + freedom.movement().positive();
  }

  private static double tenth(double value) {
    return Math.round(value * 10) / 10.0;
  }

  private static double hundredth(double value) {
    return Math.round(value * 100) / 100.0;
  }
}
