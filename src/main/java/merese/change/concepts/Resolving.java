package merese.change.concepts;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.model.Concept;

/** Which concept of the library an address or a notation of the file comes to be. */
final class Resolving {
  private final Vocabulary vocabulary;
  private final ConceptOptions options;
  private final Map<String, String> byUri = new HashMap<>();
  private final Map<String, String> byNotation = new HashMap<>();
  private final Map<String, String> newLabels = new HashMap<>();

  Resolving(Vocabulary vocabulary, ConceptOptions options) {
    this.vocabulary = vocabulary;
    this.options = options;
  }

  /** That a concept of the file is, or becomes, one of the library. */
  void is(Understood concept, String id, String label) {
    byUri.put(concept.uri(), id);
    concept.source().notations().forEach(notation -> byNotation.putIfAbsent(notation, id));
    newLabels.putIfAbsent(id, label);
  }

  Optional<String> concept(String uri) {
    String known = byUri.get(uri);
    if (known != null) {
      return Optional.of(known);
    }
    return vocabulary.concept(uri, options.addresses());
  }

  boolean isOwn(String uri) {
    return options.addresses().conceptId(uri).filter(vocabulary.concepts::containsKey).isPresent();
  }

  List<String> broader(Understood concept) {
    Set<String> ids = new LinkedHashSet<>();
    concept.source().broader().forEach(uri -> concept(uri).ifPresent(ids::add));
    return List.copyOf(ids);
  }

  /** Those of concepts that are neither in the file nor in the library are left out. */
  List<Concept.LookAlike> lookAlikes(Understood concept) {
    List<Concept.LookAlike> all = new ArrayList<>();
    for (Concept.LookAlike one : concept.source().own().lookAlikes()) {
      id(one.concept()).ifPresent(id -> all.add(new Concept.LookAlike(id, one.test())));
    }
    return all;
  }

  /** The concept that a note of the file names by its notation. */
  Optional<String> id(String notation) {
    String known = byNotation.get(notation);
    return known != null
        ? Optional.of(known)
        : Optional.of(notation).filter(vocabulary.concepts::containsKey);
  }

  String label(String id) {
    return vocabulary.concepts.containsKey(id)
        ? vocabulary.label(id)
        : newLabels.getOrDefault(id, id);
  }

  String labels(List<String> ids) {
    return String.join(", ", ids.stream().map(this::label).toList());
  }

  static String circle(String narrower, String broader) {
    return "“"
        + broader
        + "” is not taken as broader than “"
        + narrower
        + "”: it would be its own ancestor";
  }
}
