package merese.exchange.skos;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import merese.exchange.skos.Statements.Said;

/**
 * Labels that are resources of their own, by the rule of SKOS-XL that makes plain labels of them
 * (SKOS Reference, S55–S57).
 */
final class XlLabels {
  private final Statements statements;
  private final Set<String> used = new HashSet<>();

  XlLabels(Statements statements) {
    this.statements = statements;
    for (List<Said> all : statements.bySubject().values()) {
      for (Said said : all) {
        if (Rdf.XL_LABELS.containsKey(said.property())
            && said.object() instanceof RdfTerm.Resource label) {
          used.add(label.name());
        }
      }
    }
  }

  boolean isLabel(String subject) {
    return used.contains(subject);
  }

  /** The plain labels that a subject has by its label resources. */
  List<Said> of(String subject) {
    List<Said> plain = new ArrayList<>();
    for (Said said : statements.of(subject)) {
      String property = Rdf.XL_LABELS.get(said.property());
      if (property != null && said.object() instanceof RdfTerm.Resource label) {
        for (Said form : statements.of(label.name())) {
          if (form.property().equals(Rdf.XL_LITERAL_FORM)
              && form.object() instanceof RdfTerm.Literal) {
            plain.add(new Said(property, form.object()));
          }
        }
      }
    }
    return plain;
  }
}
