package merese.exchange.skos;

import java.util.Optional;

/** What a statement can have as its object. */
sealed interface RdfTerm {
  /** Where a blank node's name begins. */
  String BLANK = "_:";

  /** As N-Triples write it. */
  String printed();

  /** A resource by its IRI, or by a name that begins with {@value #BLANK}. */
  record Resource(String name) implements RdfTerm {
    @Override
    public String printed() {
      return name.startsWith(BLANK) ? name : "<" + Turtle.iri(name) + ">";
    }
  }

  /**
   * A literal.
   *
   * @param datatype empty for a plain string
   */
  record Literal(String text, Optional<String> language, Optional<String> datatype)
      implements RdfTerm {
    static Literal of(SkosText text) {
      return new Literal(text.text(), text.language(), Optional.empty());
    }

    @Override
    public String printed() {
      String quoted = Turtle.string(text);
      if (language.isPresent()) {
        return quoted + "@" + language.get();
      }
      return datatype.map(type -> quoted + "^^<" + Turtle.iri(type) + ">").orElse(quoted);
    }
  }
}
