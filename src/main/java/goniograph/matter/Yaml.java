package goniograph.matter;

import goniograph.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What was read from a YAML text.
 *
 * @param documents the trees of its documents, as far as they could be read
 * @param whole whether all of it could be read; if not, missing keys mean nothing
 * @param findings what is wrong with its spelling, in the order of the text
 */
public record Yaml(List<Node> documents, boolean whole, List<Finding> findings) {
  public Yaml {
    documents = List.copyOf(documents);
    findings = List.copyOf(findings);
  }

  /** The first document, or empty where the text holds none. */
  public Optional<Node> root() {
    return documents.stream().findFirst();
  }
}
