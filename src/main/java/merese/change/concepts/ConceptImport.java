package merese.change.concepts;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.change.concepts.ConceptResult.Added;
import merese.change.concepts.ConceptResult.Kind;
import merese.change.concepts.ConceptResult.Question;
import merese.change.concepts.ConceptResult.There;
import merese.change.concepts.ConceptResult.Waiting;
import merese.change.concepts.Matching.Asked;
import merese.change.concepts.Matching.Found;
import merese.change.concepts.Matching.Same;
import merese.exchange.FilePlace;
import merese.exchange.Refused;
import merese.exchange.skos.SkosConcept;
import merese.exchange.skos.SkosReading;
import merese.exchange.skos.SkosReading.RefusedConcept;
import merese.model.Concept;
import merese.model.ReceivedRecord;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.vocabulary.Thesaurus;

/**
 * What a file of SKOS would bring into the vocabulary of a library.
 *
 * <p>Guarantees: nothing is written before {@link #apply}, which writes all of it or nothing; no
 * word gets a second meaning, no definition, preferred label or hierarchy of the library is
 * replaced, and no concept is taken for another on a doubtful label, unless the user has said so; a
 * concept that can't be taken changes none of the others; a second import changes nothing.
 */
public final class ConceptImport {
  /** The definition of a concept whose file has none. */
  public static final String UNDEFINED = "No definition yet.";

  private final LibraryFolder folder;
  private final SkosReading reading;
  private final ConceptOptions options;
  private final Vocabulary vocabulary;
  private final Changes changes;
  private final Set<String> answersUsed = new HashSet<>();
  private final Map<String, Understood> understood = new LinkedHashMap<>();
  private final List<Refused> refused = new ArrayList<>();
  private final List<Added> added = new ArrayList<>();
  private final List<There> there = new ArrayList<>();
  private final List<Question> questions = new ArrayList<>();
  private final List<Waiting> waiting = new ArrayList<>();
  private final List<String> circles = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private ConceptResult result;

  private ConceptImport(LibraryFolder folder, SkosReading reading, ConceptOptions options) {
    this.folder = folder;
    this.reading = reading;
    this.options = options;
    this.vocabulary = Vocabulary.of(folder);
    this.changes = new Changes(folder, vocabulary);
  }

  /**
   * Compares a file with a library.
   *
   * @throws ChoiceException where an answer fits no question
   */
  public static ConceptImport plan(
      LibraryFolder folder, SkosReading reading, ConceptOptions options) {
    ConceptImport plan = new ConceptImport(folder, reading, options);
    plan.plan();
    return plan;
  }

  /** What would be done. */
  public ConceptResult result() {
    return result;
  }

  /** Writes everything, or nothing where it fails. */
  public ConceptResult apply() {
    Optional<String> mend = Optional.empty();
    try (ChangeSet set = folder.change("import of concepts")) {
      changes.save(set);
      StringBuilder triples = new StringBuilder();
      for (Refused one : refused) {
        triples.append(new String(one.verbatim(), java.nio.charset.StandardCharsets.UTF_8));
      }
      if (!triples.isEmpty()) {
        byte[] bytes = triples.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8);
        mend = Optional.of(set.reject(rejectedName(), bytes).toString());
      }
      set.commit();
    }
    return new ConceptResult(
        result.file(),
        result.added(),
        result.there(),
        result.questions(),
        result.waiting(),
        result.refused(),
        result.circles(),
        result.facets(),
        result.register(),
        result.remarks(),
        result.kept(),
        mend);
  }

  private String rejectedName() {
    String name = reading.file().substring(reading.file().replace('\\', '/').lastIndexOf('/') + 1);
    int dot = name.lastIndexOf('.');
    return (dot > 0 ? name.substring(0, dot) : name) + ".nt";
  }

  private void plan() {
    understand();
    Matching matching = new Matching(vocabulary, options, answersUsed);
    Map<String, Found> found = matching.all(List.copyOf(understood.values()));
    Map<String, String> ids = new LinkedHashMap<>();
    found.forEach(
        (uri, one) -> {
          if (one instanceof Same same) {
            ids.put(uri, same.id());
          }
        });
    Placing placing = new Placing(vocabulary, options, reading, understood, ids);
    Map<String, String> open = open(found, placing);
    Resolving resolving = new Resolving(vocabulary, options);
    NewIds newIds = new NewIds(vocabulary.concepts.keySet());
    for (Understood concept : understood.values()) {
      String label = Thesaurus.display(concept.preferred());
      if (ids.containsKey(concept.uri())) {
        resolving.is(concept, ids.get(concept.uri()), label);
      } else if (!open.containsKey(concept.uri())) {
        resolving.is(concept, newIds.concept(concept), label);
      }
    }
    Words words = new Words(vocabulary, options, answersUsed);
    Hierarchies hierarchies = new Hierarchies(vocabulary.concepts.values());
    for (Understood concept : understood.values()) {
      if (open.containsKey(concept.uri())) {
        continue;
      }
      Found one = found.get(concept.uri());
      if (one instanceof Same same) {
        merge(concept, same, resolving, words, hierarchies);
      } else {
        boolean asked = one instanceof Matching.New made && made.asked();
        add(concept, asked, placing, resolving, words, hierarchies);
      }
      keep(concept, resolving);
    }
    questions.addAll(words.questions());
    changes.share(words);
    RegisterImport register = new RegisterImport(vocabulary, resolving, options.replace());
    register.take(reading);
    changes.register(register, words);
    remarks.addAll(register.stays());
    remarks();
    requireAnswersUsed();
    changes.requireSound();
    result =
        new ConceptResult(
            reading.file(),
            added,
            there,
            questions,
            waiting,
            refused,
            circles,
            placing.reasons.stream().filter(facet -> changes.uses(facet.id())).toList(),
            changes.registerWords(),
            remarks,
            changes.kept(),
            Optional.empty());
  }

  private void understand() {
    String language = options.language().orElse(folder.settings().language());
    Understanding understanding = new Understanding(language, options.addresses());
    for (RefusedConcept one : reading.refused()) {
      refused.add(one.refused());
    }
    for (SkosConcept concept : reading.concepts()) {
      Optional<Understood> one = understanding.of(concept);
      if (one.isPresent()) {
        understood.put(concept.uri(), one.get());
      } else {
        refused.add(unlabelled(concept, language));
      }
    }
  }

  private Refused unlabelled(SkosConcept concept, String language) {
    Set<String> languages = new TreeSet<>();
    concept.preferred().forEach(label -> languages.add(label.language().orElse("none")));
    String others = languages.isEmpty() ? "none at all" : "some in " + String.join(", ", languages);
    return new Refused(
        new FilePlace(reading.file(), 0, 0, refused.size() + 1),
        concept.uri() + " has no preferred label in the language " + language + " (" + others + ")",
        languages.isEmpty()
            ? "give it a skos:prefLabel"
            : "give it one, or take the labels of another language",
        concept.verbatim());
  }

  /**
   * The concepts that are not taken before a question is answered, each with what it waits for:
   * those that are asked about, and those below them.
   */
  private Map<String, String> open(Map<String, Found> found, Placing placing) {
    Map<String, String> open = new LinkedHashMap<>();
    List<Understood> placeless = new ArrayList<>();
    for (Understood concept : understood.values()) {
      Found one = found.get(concept.uri());
      if (one instanceof Asked asked) {
        questions.add(asked.question());
        open.put(concept.uri(), Thesaurus.display(concept.preferred()));
      } else if (!(one instanceof Same) && placing.of(concept).isEmpty()) {
        placeless.add(concept);
      }
    }
    // One that has a broader one follows it; the rest are asked about, those in a circle last.
    for (Understood concept : placeless) {
      if (concept.source().broader().stream().noneMatch(understood::containsKey)) {
        askFacet(concept, open);
      }
    }
    closeBelow(found, open);
    for (Understood concept : placeless) {
      if (!open.containsKey(concept.uri())) {
        askFacet(concept, open);
      }
    }
    closeBelow(found, open);
    return open;
  }

  private void askFacet(Understood concept, Map<String, String> open) {
    String label = Thesaurus.display(concept.preferred());
    questions.add(
        new Question(
            Kind.WHICH_FACET,
            concept.uri(),
            label,
            "Which facet does “" + label + "” belong in?",
            List.of(),
            List.of("--facet")));
    open.put(concept.uri(), label);
  }

  /** What is new and below something open is open too. */
  private void closeBelow(Map<String, Found> found, Map<String, String> open) {
    ArrayDeque<String> queue = new ArrayDeque<>(open.keySet());
    while (!queue.isEmpty()) {
      String above = queue.remove();
      for (String uri : understood.get(above).source().narrower()) {
        Understood concept = understood.get(uri);
        if (concept != null && !open.containsKey(uri) && !(found.get(uri) instanceof Same)) {
          open.put(uri, open.get(above));
          String label = Thesaurus.display(concept.preferred());
          waiting.add(new Waiting(uri, label, open.get(above)));
          queue.add(uri);
        }
      }
    }
  }

  private void merge(
      Understood concept, Same same, Resolving resolving, Words words, Hierarchies hierarchies) {
    Concept ours = changes.now(same.id());
    Merging merging =
        new Merging(vocabulary, resolving, words, hierarchies, options.replace(), ours, concept);
    changes.put(merging.merge());
    circles.addAll(merging.circles);
    there.add(
        new There(
            same.id(), vocabulary.label(same.id()), concept.uri(), same.why(), merging.changes()));
  }

  private void add(
      Understood concept,
      boolean asked,
      Placing placing,
      Resolving resolving,
      Words words,
      Hierarchies hierarchies) {
    String id = resolving.concept(concept.uri()).orElseThrow();
    Placing.Place place = placing.of(concept).orElseThrow();
    Concept.Label preferred = concept.preferred();
    ConceptDraft draft =
        new ConceptDraft(
            id,
            place.facet(),
            asked ? words.share(preferred, id) : preferred,
            concept.definition().orElse(UNDEFINED));
    concept.alternatives().stream()
        .flatMap(label -> words.allowed(label, id, concept).stream())
        .forEach(draft.alternatives::add);
    concept.hidden().stream()
        .flatMap(label -> words.allowed(label, id, concept).stream())
        .forEach(draft.hidden::add);
    for (String broader : resolving.broader(concept)) {
      if (hierarchies.add(id, broader)) {
        draft.broader.add(broader);
      } else {
        circles.add(Resolving.circle(Thesaurus.display(preferred), resolving.label(broader)));
      }
    }
    draft.lookAlikes.addAll(resolving.lookAlikes(concept));
    draft.lookAlikeRemark = concept.source().own().lookAlikeRemark().stream().findFirst();
    if (concept.definition().isEmpty() || !concept.source().own().status().isEmpty()) {
      draft.status = Concept.Status.UNCERTAIN;
    }
    draft.matches.addAll(Merging.matches(concept, resolving));
    changes.add(draft, placing.made.get(place.facet()));
    added.add(
        new Added(
            id,
            Thesaurus.display(preferred),
            concept.uri(),
            place.facet(),
            place.why(),
            draft.broader.stream().map(resolving::label).toList()));
    lacking(concept, resolving);
  }

  /** What a new concept says that leads nowhere. */
  private void lacking(Understood concept, Resolving resolving) {
    String label = Thesaurus.display(concept.preferred());
    if (concept.definition().isEmpty()) {
      remarks.add("“" + label + "” has no definition in the file; its usage is marked uncertain");
    }
    for (String uri : concept.source().broader()) {
      if (resolving.concept(uri).isEmpty()) {
        remarks.add(
            "“" + label + "”: the broader " + uri + " is neither taken from the file nor here");
      }
    }
    for (Concept.LookAlike one : concept.source().own().lookAlikes()) {
      if (resolving.id(one.concept()).isEmpty()) {
        remarks.add("“" + label + "”: the look-alike " + one.concept() + " is not here");
      }
    }
  }

  private void keep(Understood concept, Resolving resolving) {
    concept.remarks().forEach(r -> remarks.add(Thesaurus.display(concept.preferred()) + ": " + r));
    if (!concept.kept().isEmpty()) {
      String id = resolving.concept(concept.uri()).orElseThrow();
      String address =
          concept.source().isAddressed() ? concept.uri() : options.addresses().concept(id);
      changes.keep(new ReceivedRecord("skos", "Concept", address, concept.kept()));
    }
  }

  private void remarks() {
    for (SkosReading.Remark remark : reading.remarks()) {
      remarks.add(remark.words());
    }
  }

  private void requireAnswersUsed() {
    for (Map.Entry<String, String> answer : options.answers().entrySet()) {
      if (!answersUsed.contains(answer.getKey()) && !isAlreadyTrue(answer)) {
        throw new ChoiceException(
            answer.getKey()
                + "="
                + answer.getValue()
                + " answers no question: "
                + reading.file()
                + " has no concept and no word of that name to ask about");
      }
    }
  }

  /** So that the same command can be given twice. */
  private boolean isAlreadyTrue(Map.Entry<String, String> answer) {
    String key = merese.vocabulary.Folding.key(answer.getKey());
    return answer.getValue().equals(ConceptOptions.TAKE)
        && understood.values().stream()
            .flatMap(
                one ->
                    java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(one.preferred()),
                        java.util.stream.Stream.concat(
                            one.alternatives().stream(), one.hidden().stream())))
            .anyMatch(label -> Vocabulary.key(label).equals(key));
  }
}
