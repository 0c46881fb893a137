package merese.change.concepts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.change.concepts.ConceptResult.NewFacet;
import merese.exchange.skos.SkosGroup;
import merese.exchange.skos.SkosReading;
import merese.exchange.skos.SkosText;
import merese.model.Facet;
import merese.vocabulary.Thesaurus;

/**
 * Finds the facet of a new concept: that of a collection which is a facet of ours, or has the name
 * of one; else that of a broader concept; else the one the user gave; else one made of its
 * collection.
 */
final class Placing {
  /** The files of the register and of the key have these names. */
  private static final Set<String> TAKEN = Set.of("homonyms", "characters");

  /**
   * Where a concept belongs.
   *
   * @param why "by its collection"
   */
  record Place(String facet, String why) {}

  private final Vocabulary vocabulary;
  private final Thesaurus thesaurus;
  private final ConceptOptions options;
  private final Map<String, Understood> concepts;
  private final Map<String, SkosGroup> groups = new HashMap<>();
  private final Map<String, Optional<Place>> known = new HashMap<>();
  private final Set<String> open = new HashSet<>();
  private final Map<String, String> ids;

  /** Facets to be made, by their ids. */
  final Map<String, Facet> made = new LinkedHashMap<>();

  final List<NewFacet> reasons = new ArrayList<>();

  /**
   * @param concepts all of the file, by address
   * @param ids of those of the file that the library has, by address
   */
  Placing(
      Vocabulary vocabulary,
      ConceptOptions options,
      SkosReading reading,
      Map<String, Understood> concepts,
      Map<String, String> ids) {
    this.vocabulary = vocabulary;
    this.thesaurus = vocabulary.thesaurus();
    this.options = options;
    this.concepts = concepts;
    this.ids = ids;
    reading.groups().forEach(group -> groups.put(group.uri(), group));
  }

  /** Empty where nothing places it. */
  Optional<Place> of(Understood concept) {
    Optional<Place> there = known.get(concept.uri());
    if (there == null) {
      if (!open.add(concept.uri())) {
        return Optional.empty(); // broader than itself
      }
      there =
          byKnownCollection(concept)
              .or(() -> byBroader(concept))
              .or(() -> options.facet().map(this::given))
              .or(() -> byNewCollection(concept));
      open.remove(concept.uri());
      known.put(concept.uri(), there);
    }
    return there;
  }

  private Optional<Place> byKnownCollection(Understood concept) {
    for (String uri : concept.source().groups()) {
      SkosGroup group = groups.get(uri);
      if (group == null) {
        continue;
      }
      Optional<String> own = options.addresses().facetId(uri);
      if (own.isPresent()) {
        String id = own.get();
        if (thesaurus.facets().stream().noneMatch(facet -> facet.id().equals(id))) {
          make(new Facet(id, group.headNoun(), group.optionalWords()), "a facet of the file");
        }
        return Optional.of(new Place(id, "by its facet"));
      }
      for (SkosText label : group.labels()) {
        Optional<Facet> facet = thesaurus.facet(label.text());
        if (facet.isPresent()) {
          return Optional.of(
              new Place(facet.get().id(), "by its collection “" + label.text() + "”"));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Place> byBroader(Understood concept) {
    for (String uri : concept.source().broader()) {
      Optional<String> id = inLibrary(uri);
      if (id.isPresent()) {
        String facet = vocabulary.concepts.get(id.get()).facet();
        return Optional.of(new Place(facet, "that of " + vocabulary.label(id.get())));
      }
      Understood broader = concepts.get(uri);
      Optional<Place> above = broader == null ? Optional.empty() : of(broader);
      if (above.isPresent()) {
        String label = Thesaurus.display(broader.preferred());
        return Optional.of(new Place(above.get().facet(), "that of " + label));
      }
    }
    return Optional.empty();
  }

  private Optional<String> inLibrary(String uri) {
    return Optional.ofNullable(ids.get(uri))
        .or(() -> vocabulary.concept(uri, options.addresses()))
        .filter(vocabulary.concepts::containsKey);
  }

  private Place given(String name) {
    Optional<Facet> facet = thesaurus.facet(name);
    String id = facet.map(Facet::id).orElseGet(() -> usable(NewIds.slug(name)));
    if (facet.isEmpty()) {
      make(new Facet(id, Optional.empty(), List.of()), "as you said");
    }
    return new Place(id, "as you said");
  }

  private Optional<Place> byNewCollection(Understood concept) {
    for (String uri : concept.source().groups()) {
      SkosGroup group = groups.get(uri);
      if (group != null && !group.labels().isEmpty()) {
        String label = group.labels().get(0).text();
        String id = usable(NewIds.slug(label));
        make(new Facet(id, Optional.empty(), List.of()), "the collection “" + label + "”");
        return Optional.of(new Place(id, "by its collection “" + label + "”"));
      }
    }
    return Optional.empty();
  }

  private static String usable(String slug) {
    return slug.isEmpty() ? "facet" : TAKEN.contains(slug) ? slug + "-2" : slug;
  }

  private void make(Facet facet, String why) {
    if (made.putIfAbsent(facet.id(), facet) == null) {
      reasons.add(new NewFacet(facet.id(), why));
    }
  }
}
