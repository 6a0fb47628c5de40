package goniograph.library;

import goniograph.dose.Measure;
import goniograph.dose.Quantity;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.util.List;
import java.util.Optional;

/** Reads the stock and the sources. */
final class StockReader {
  private final SharedFiles files;

  StockReader(SharedFiles files) {
    this.files = files;
  }

  Stock stock() {
    return files.read("shared/bands.yaml", "the stock", StockReader::stock).orElse(Stock.NONE);
  }

  private static Stock stock(Form form) {
    Spelling<Quantity> length = DoseSpellings.amount(Measure.LENGTH);
    return new Stock(
        form.optional("bands").list(item -> SharedFiles.row(item, StockReader::band)),
        form.optional("weights").list(DoseSpellings.amount(Measure.MASS)),
        form.optional("seats").list(length),
        form.optional("steps").list(length));
  }

  private static Optional<Stock.Band> band(Form form) {
    var id = form.required("id", "band-light").as(Spellings.ID_WORD);
    var twin = form.optional("latex_free").as(Spellings.ID_WORD);
    var forces =
        form.required("force_at", "[ { length: 130 cm, force: 9 N } ]")
            .list(item -> SharedFiles.row(item, StockReader::force));
    return id.map(given -> new Stock.Band(given, twin, forces));
  }

  private static Optional<Stock.ForceAt> force(Form form) {
    var length = form.required("length", "130 cm").as(DoseSpellings.amount(Measure.LENGTH));
    var force = form.required("force", "9 N").as(DoseSpellings.amount(Measure.FORCE));
    return length.flatMap(l -> force.map(f -> new Stock.ForceAt(l.value(), f.value())));
  }

  List<Source> sources() {
    String path = "shared/sources.yaml";
    Optional<Node> root = files.root(path);
    if (root.orElse(null) instanceof Node.Fields fields) {
      return fields.fields().stream().flatMap(field -> keyed(field).stream()).toList();
    }
    return new Value("sources", root, files.findings())
        .list(item -> item.fields().flatMap(fields -> listed(fields)));
  }

  private Optional<Source> keyed(Node.Field field) {
    return new Value(field.key(), Optional.of(field.value()), files.findings())
        .fields()
        .map(fields -> new Source(new Located<>(field.key(), field.keyAt()), fields));
  }

  private Optional<Source> listed(Node.Fields fields) {
    Form form = new Form(fields, "a source", files.findings());
    form.entries();
    var id = form.required("id", "who-2020").as(Spellings.ID_WORD);
    form.finish();
    return id.map(given -> new Source(given, fields));
  }
}
