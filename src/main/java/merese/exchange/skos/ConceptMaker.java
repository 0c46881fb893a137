package merese.exchange.skos;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.exchange.skos.Statements.Said;
import merese.model.Concept;
import merese.model.ReceivedRecord.Field;
import merese.vocabulary.Skos;

/** Puts one concept together from what is stated of it. */
final class ConceptMaker {
  /** What is taken from all statements together. */
  private static final Set<String> RELATIONS =
      Set.of(
          Skos.BROADER,
          Skos.NARROWER,
          Skos.RELATED,
          Skos.IN_SCHEME,
          Skos.TOP_CONCEPT_OF,
          Skos.TYPE);

  final String uri;
  final List<SkosText> preferred = new ArrayList<>(2);
  final List<String> notations = new ArrayList<>(1);
  final Set<String> broader = new LinkedHashSet<>();
  final Set<String> narrower = new LinkedHashSet<>();
  final Set<String> related = new LinkedHashSet<>();
  final Set<String> schemes = new LinkedHashSet<>();
  final Set<String> groups = new LinkedHashSet<>();
  final List<String> remarks = new ArrayList<>();

  private final List<SkosText> alternative = new ArrayList<>(4);
  private final List<SkosText> hidden = new ArrayList<>(0);
  private final List<SkosText> definitions = new ArrayList<>(1);
  private final List<Concept.Match> matches = new ArrayList<>(1);
  private final List<Said> notes = new ArrayList<>(2);
  private final List<Field> rest = new ArrayList<>();

  ConceptMaker(String uri) {
    this.uri = uri;
  }

  void take(List<Said> all, XlLabels labels) {
    for (Said said : all) {
      if (said.object() instanceof RdfTerm.Literal literal) {
        literal(said, literal);
      } else {
        resource(said, ((RdfTerm.Resource) said.object()).name(), labels);
      }
    }
    for (Said label : labels.of(uri)) {
      literal(label, (RdfTerm.Literal) label.object());
    }
    alternative.removeIf(label -> isIn(preferred, label));
    hidden.removeIf(label -> isIn(preferred, label) || isIn(alternative, label));
  }

  private void literal(Said said, RdfTerm.Literal literal) {
    SkosText text = new SkosText(literal.text(), literal.language());
    switch (said.property()) {
      case Skos.PREF_LABEL -> label(preferred, said, text);
      case Skos.ALT_LABEL -> label(alternative, said, text);
      case Skos.HIDDEN_LABEL -> label(hidden, said, text);
      case Skos.DEFINITION -> {
        if (text.text().isBlank()) {
          rest(said);
        } else if (!isIn(definitions, text)) {
          definitions.add(text);
        }
      }
      case Rdf.NOTATION -> {
        if (!notations.contains(text.text())) {
          notations.add(text.text());
        }
        if (literal.datatype().isPresent() || literal.language().isPresent()) {
          rest(said);
        }
      }
      case Skos.SCOPE_NOTE, Rdf.EDITORIAL_NOTE -> notes.add(said);
      default -> rest(said);
    }
  }

  private void label(List<SkosText> labels, Said said, SkosText text) {
    if (text.text().isBlank()) {
      remarks.add("an empty " + Rdf.local(said.property()) + " is left out");
    } else if (!isIn(labels, text)) {
      labels.add(text);
    }
  }

  private void resource(Said said, String object, XlLabels labels) {
    Concept.Match.Kind match = Rdf.MATCHES.get(said.property());
    if (match != null) {
      Concept.Match one = new Concept.Match(match, object);
      if (!matches.contains(one)) {
        matches.add(one);
      }
    } else if (RELATIONS.contains(said.property())) {
      if (said.property().equals(Skos.TYPE) && !object.equals(Skos.CONCEPT)) {
        rest(said);
      }
    } else if (!(Rdf.XL_LABELS.containsKey(said.property()) && labels.isLabel(object))) {
      rest(said);
    }
  }

  private void rest(Said said) {
    rest.add(new Field(said.property(), said.object().printed()));
  }

  void withoutMatches(String other) {
    matches.removeIf(match -> match.uri().equals(other));
  }

  SkosConcept make(Map<String, String> displayedById) {
    Set<String> labels = new LinkedHashSet<>();
    List.of(preferred, alternative, hidden)
        .forEach(some -> some.forEach(label -> labels.add(label.text())));
    OwnNotes.Reader reader = new OwnNotes.Reader(displayedById, labels);
    for (Said note : notes) {
      if (!reader.take(note.property(), (RdfTerm.Literal) note.object())) {
        rest(note);
      }
    }
    return new SkosConcept(
        uri,
        preferred,
        alternative,
        hidden,
        definitions,
        notations,
        List.copyOf(broader),
        List.copyOf(narrower),
        List.copyOf(related),
        matches,
        List.copyOf(schemes),
        List.copyOf(groups),
        reader.own(),
        rest);
  }

  static boolean isIn(List<SkosText> texts, SkosText text) {
    return texts.stream().anyMatch(text::isSame);
  }
}
