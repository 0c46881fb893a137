package merese.exchange.skos;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.exchange.skos.Statements.Said;
import merese.model.Homonym;
import merese.model.ReceivedRecord.Field;
import merese.vocabulary.Skos;

/** Puts collections and schemes together. */
final class GroupMaker {
  private final Statements statements;

  GroupMaker(Statements statements) {
    this.statements = statements;
  }

  List<SkosGroup> groups(Collection<String> uris) {
    List<SkosGroup> groups = new ArrayList<>();
    uris.forEach(uri -> groups.add(group(uri)));
    return groups;
  }

  List<SkosScheme> schemes(Collection<String> uris) {
    List<SkosScheme> schemes = new ArrayList<>();
    uris.forEach(uri -> schemes.add(scheme(uri)));
    return schemes;
  }

  private SkosGroup group(String uri) {
    List<SkosText> labels = new ArrayList<>();
    List<String> notations = new ArrayList<>();
    Set<String> members = new LinkedHashSet<>();
    List<String> optional = new ArrayList<>();
    List<Field> rest = new ArrayList<>();
    boolean ordered = false;
    Optional<String> headNoun = Optional.empty();
    for (Said said : statements.of(uri)) {
      if (said.object() instanceof RdfTerm.Literal literal) {
        String text = literal.text();
        boolean note = said.property().equals(Rdf.EDITORIAL_NOTE);
        if (isLabel(said.property())) {
          labels.add(new SkosText(text, literal.language()));
        } else if (said.property().equals(Rdf.NOTATION)) {
          notations.add(text);
        } else if (note && OwnNotes.readHeadNoun(text).isPresent()) {
          headNoun = OwnNotes.readHeadNoun(text);
        } else if (note && OwnNotes.readMayBeLeftOut(text).isPresent()) {
          optional.add(OwnNotes.readMayBeLeftOut(text).get());
        } else {
          rest.add(new Field(said.property(), literal.printed()));
        }
      } else {
        RdfTerm.Resource object = (RdfTerm.Resource) said.object();
        switch (said.property()) {
          case Skos.MEMBER -> members.add(object.name());
          case Skos.MEMBER_LIST -> {
            ordered = true;
            members.addAll(list(object.name()));
          }
          case Skos.TYPE -> ordered |= object.name().equals(Skos.ORDERED_COLLECTION);
          default -> rest.add(new Field(said.property(), object.printed()));
        }
      }
    }
    return new SkosGroup(
        uri, labels, notations, List.copyOf(members), ordered, headNoun, optional, rest);
  }

  private SkosScheme scheme(String uri) {
    List<SkosText> labels = new ArrayList<>();
    List<String> top = new ArrayList<>();
    List<Homonym> register = new ArrayList<>();
    List<Field> rest = new ArrayList<>();
    for (Said said : statements.of(uri)) {
      if (said.object() instanceof RdfTerm.Literal literal) {
        Optional<Homonym> asks =
            said.property().equals(Rdf.EDITORIAL_NOTE)
                ? OwnNotes.readAsks(literal.text())
                : Optional.empty();
        if (isLabel(said.property())) {
          labels.add(new SkosText(literal.text(), literal.language()));
        } else if (asks.isPresent()) {
          register.add(asks.get());
        } else {
          rest.add(new Field(said.property(), literal.printed()));
        }
      } else if (said.property().equals(Skos.HAS_TOP_CONCEPT)) {
        top.add(((RdfTerm.Resource) said.object()).name());
      } else if (!said.property().equals(Skos.TYPE)) {
        rest.add(new Field(said.property(), said.object().printed()));
      }
    }
    return new SkosScheme(uri, labels, top, register, rest);
  }

  private static boolean isLabel(String property) {
    return property.equals(Skos.PREF_LABEL)
        || property.equals(Rdf.LABEL)
        || property.equals(Rdf.TITLE)
        || property.equals(Rdf.OLD_TITLE);
  }

  /** The members of a list; one that comes round to itself ends there. */
  private List<String> list(String first) {
    List<String> members = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    String at = first;
    while (!at.equals(Rdf.NIL) && seen.add(at)) {
      String next = Rdf.NIL;
      for (Said said : statements.of(at)) {
        if (said.object() instanceof RdfTerm.Resource object) {
          if (said.property().equals(Rdf.FIRST)) {
            members.add(object.name());
          } else if (said.property().equals(Rdf.REST)) {
            next = object.name();
          }
        }
      }
      at = next;
    }
    return members;
  }

  static boolean isListNode(List<Said> all) {
    return !all.isEmpty()
        && all.stream().allMatch(said -> said.property().startsWith(Rdf.NAMESPACE));
  }
}
