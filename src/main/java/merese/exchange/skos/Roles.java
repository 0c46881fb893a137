package merese.exchange.skos;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.exchange.skos.Statements.Said;
import merese.vocabulary.Skos;

/**
 * Which of the resources of a file are concepts, collections and schemes. A resource that is only
 * named by others, and of which the file itself says nothing, is none of the file's.
 */
final class Roles {
  private static final Set<String> BETWEEN_CONCEPTS =
      Set.of(
          Skos.BROADER,
          Skos.NARROWER,
          Skos.RELATED,
          Skos.BROADER_TRANSITIVE,
          Skos.NARROWER_TRANSITIVE,
          Skos.SEMANTIC_RELATION,
          Skos.MAPPING_RELATION,
          Skos.EXACT_MATCH,
          Skos.CLOSE_MATCH,
          Skos.BROAD_MATCH,
          Skos.NARROW_MATCH,
          Skos.RELATED_MATCH);

  final Set<String> concepts = new LinkedHashSet<>();
  final Set<String> groups = new LinkedHashSet<>();
  final Set<String> schemes = new LinkedHashSet<>();

  /** What has labels of SKOS and nothing that says what it is. */
  final Set<String> unknown = new LinkedHashSet<>();

  private Roles() {}

  static Roles of(Map<String, List<Said>> bySubject) {
    Roles roles = new Roles();
    Set<String> named = new HashSet<>();
    Set<String> inSchemes = new HashSet<>();
    bySubject.forEach(
        (subject, all) -> {
          for (Said said : all) {
            if (said.object() instanceof RdfTerm.Resource object) {
              roles.resource(subject, said.property(), object.name(), named, inSchemes);
            }
          }
        });
    for (String subject : bySubject.keySet()) {
      boolean known = roles.groups.contains(subject) || roles.schemes.contains(subject);
      if (named.contains(subject) || (!known && inSchemes.contains(subject))) {
        roles.concepts.add(subject);
      } else if (!known && !roles.concepts.contains(subject) && isLabelled(bySubject, subject)) {
        roles.unknown.add(subject);
      }
    }
    roles.schemes.retainAll(bySubject.keySet());
    roles.groups.retainAll(bySubject.keySet());
    return roles;
  }

  private void resource(
      String subject, String property, String object, Set<String> named, Set<String> inSchemes) {
    if (property.equals(Skos.TYPE)) {
      switch (object) {
        case Skos.CONCEPT -> named.add(subject);
        case Skos.COLLECTION, Skos.ORDERED_COLLECTION -> groups.add(subject);
        case Skos.CONCEPT_SCHEME -> schemes.add(subject);
        default -> {}
      }
    } else if (BETWEEN_CONCEPTS.contains(property)) {
      named.add(subject);
      named.add(object);
    } else if (property.equals(Skos.TOP_CONCEPT_OF)) {
      named.add(subject);
      schemes.add(object);
    } else if (property.equals(Skos.HAS_TOP_CONCEPT)) {
      named.add(object);
      schemes.add(subject);
    } else if (property.equals(Skos.IN_SCHEME)) {
      inSchemes.add(subject);
      schemes.add(object);
    } else if (property.equals(Skos.MEMBER) || property.equals(Skos.MEMBER_LIST)) {
      groups.add(subject);
    }
  }

  private static boolean isLabelled(Map<String, List<Said>> bySubject, String subject) {
    return bySubject.get(subject).stream()
        .anyMatch(
            said ->
                said.property().equals(Skos.PREF_LABEL)
                    || Rdf.XL_LABELS.getOrDefault(said.property(), "").equals(Skos.PREF_LABEL));
  }
}
