package goniograph.library;

import goniograph.matter.Form;
import goniograph.matter.Spellings;
import java.util.ArrayList;
import java.util.List;

/** The rows of all rule files. */
record RuleTables(
    List<DoseLimit> limits,
    List<Requirement> requirements,
    List<TagRule> tagRules,
    List<EquipmentCheck> equipmentChecks) {
  private static final String SCHEMA = "rules/1";

  static RuleTables read(SharedFiles files) {
    RuleTables tables =
        new RuleTables(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    files.yamlFiles("shared/rules").forEach(path -> files.read(path, "a rule file", tables::add));
    return tables;
  }

  private boolean add(Form form) {
    form.required("schema", SCHEMA).as(Spellings.oneOf(List.of(SCHEMA)));
    limits.addAll(form.optional("limits").list(row -> SharedFiles.row(row, LimitReader::limit)));
    requirements.addAll(
        form.optional("requires")
            .list(row -> SharedFiles.row(row, RequirementReader::requirement)));
    tagRules.addAll(
        form.optional("tags").list(row -> SharedFiles.row(row, RequirementReader::tagRule)));
    return equipmentChecks.addAll(
        form.optional("equipment_checks")
            .list(row -> SharedFiles.row(row, RequirementReader::check)));
  }
}
