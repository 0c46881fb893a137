package merese.change.concepts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.change.concepts.AatResult.Candidate;
import merese.change.concepts.AatResult.Link;
import merese.change.concepts.AatResult.Question;
import merese.change.concepts.AatResult.There;
import merese.change.concepts.AatWords.Hit;
import merese.exchange.skos.AatTerms;
import merese.exchange.skos.AatTerms.AatConcept;
import merese.model.Concept;
import merese.model.Concept.Match;
import merese.model.Concept.Match.Kind;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.store.Stored;
import merese.store.VocabularyFile;
import merese.vocabulary.Thesaurus;

/**
 * Links the concepts of a library to the Art &amp; Architecture Thesaurus by the words that both
 * have, compared by R7.
 *
 * <p>Guarantees: nothing is written before {@link #apply}; a concept that has a link to the
 * thesaurus gets no second one unless the user names it; a word never decides between two concepts
 * of the thesaurus, nor one of them between two of ours.
 *
 * <ul>
 *   <li>exactMatch: our preferred label is a term of one concept, and of no other.
 *   <li>closeMatch: the same, but our label has a scope, the term a qualifier, or the usage of our
 *       concept is uncertain; or one of our other labels is the thesaurus's preferred term.
 *   <li>asked: anything else, also a word that is no preferred one on either side.
 * </ul>
 */
public final class AatLinks {
  /** The answer that leaves a concept without a link. */
  public static final String NONE = "none";

  private final LibraryFolder folder;
  private final Vocabulary vocabulary;
  private final AatWords words;
  private final Map<String, String> answers;
  private final Map<String, AatConcept> byId = new LinkedHashMap<>();
  private final List<Link> links = new ArrayList<>();
  private final List<Question> questions = new ArrayList<>();
  private final List<There> there = new ArrayList<>();
  private int without;

  private AatLinks(LibraryFolder folder, AatTerms terms, Map<String, String> answers) {
    this.folder = folder;
    this.vocabulary = Vocabulary.of(folder);
    this.words = new AatWords(terms);
    this.answers = answers;
    terms.concepts().forEach(concept -> byId.put(concept.id(), concept));
  }

  /**
   * Compares a library with a table of terms.
   *
   * @param answers what the user has chosen: a concept of ours (its id, or one of its labels) is to
   *     be linked to a number ("300010175"), by another relation than the proposed one if that
   *     stands before it ("close:300010175"), or not at all ({@value #NONE})
   * @throws ChoiceException where an answer names no concept, or none of the table
   */
  public static AatLinks plan(LibraryFolder folder, AatTerms terms, Map<String, String> answers) {
    AatLinks plan = new AatLinks(folder, terms, answers);
    plan.plan();
    return plan;
  }

  /** What would be done. */
  public AatResult result() {
    return new AatResult(links, questions, there, without, AatTerms.LICENCE_NOTICE);
  }

  /** Writes all links, or none where it fails. */
  public AatResult apply() {
    Map<String, List<Match>> byConcept = new LinkedHashMap<>();
    for (Link link : links) {
      byConcept
          .computeIfAbsent(link.id(), id -> new ArrayList<>())
          .add(new Match(link.kind(), AatTerms.ADDRESS + link.to().aatId()));
    }
    try (ChangeSet set = folder.change("links to the Art & Architecture Thesaurus")) {
      for (Stored<VocabularyFile> file : vocabulary.files) {
        List<Concept> concepts = new ArrayList<>();
        for (Concept concept : file.value().concepts()) {
          ConceptDraft draft = ConceptDraft.of(concept);
          if (concept.equals(vocabulary.concepts.get(concept.id()))) {
            draft.matches.addAll(byConcept.getOrDefault(concept.id(), List.of()));
          }
          concepts.add(draft.make());
        }
        set.save(file, new VocabularyFile(file.value().facet(), concepts));
      }
      set.commit();
    }
    return result();
  }

  private void plan() {
    Map<String, Answer> answered = new LinkedHashMap<>();
    answers.forEach((key, value) -> answered.put(conceptOf(key, value), answer(key, value)));
    Map<String, Map<String, Hit>> found = new LinkedHashMap<>();
    Map<String, Set<String>> wantedBy = new LinkedHashMap<>();
    for (Concept concept : vocabulary.concepts.values()) {
      for (Match match : concept.matches()) {
        AatTerms.idOf(match.uri())
            .ifPresent(
                id -> {
                  there.add(new There(concept.id(), label(concept), match.kind(), match.uri()));
                  wantedBy.computeIfAbsent(id, i -> new LinkedHashSet<>()).add(concept.id());
                });
      }
      Map<String, Hit> hits = words.of(concept);
      found.put(concept.id(), hits);
      hits.keySet()
          .forEach(
              id -> wantedBy.computeIfAbsent(id, i -> new LinkedHashSet<>()).add(concept.id()));
    }
    for (Concept concept : vocabulary.concepts.values()) {
      Answer answer = answered.get(concept.id());
      if (answer != null) {
        chosen(concept, answer, found.get(concept.id()));
      } else if (!isLinked(concept)) {
        propose(concept, found.get(concept.id()), wantedBy);
      }
    }
  }

  private boolean isLinked(Concept concept) {
    return concept.matches().stream().anyMatch(m -> AatTerms.idOf(m.uri()).isPresent());
  }

  private void propose(Concept concept, Map<String, Hit> hits, Map<String, Set<String>> wantedBy) {
    if (hits.isEmpty()) {
      without++;
      return;
    }
    if (hits.size() > 1) {
      ask(concept, hits, "its words are terms of " + hits.size() + " concepts there");
      return;
    }
    Hit hit = hits.values().iterator().next();
    Set<String> others = new LinkedHashSet<>(wantedBy.get(hit.to().id()));
    others.remove(concept.id());
    if (!others.isEmpty()) {
      String named = String.join(", ", others.stream().map(vocabulary::label).toList());
      ask(concept, hits, "the same concept there has words of " + named + " too");
    } else if (!hit.ourPreferred() && !hit.theirPreferred()) {
      ask(concept, hits, "“" + hit.term() + "” is preferred on neither side");
    } else {
      link(concept, hit.kind(), hit.to(), hit.why());
    }
  }

  private void ask(Concept concept, Map<String, Hit> hits, String why) {
    List<Candidate> candidates = new ArrayList<>();
    List<String> choices = new ArrayList<>();
    for (Hit hit : hits.values()) {
      candidates.add(candidate(hit.to()));
      choices.add(concept.id() + "=" + hit.to().id());
    }
    choices.add(concept.id() + "=" + NONE);
    questions.add(
        new Question(concept.id(), label(concept), concept.definition(), why, candidates, choices));
  }

  private void link(Concept concept, Kind kind, AatConcept to, String why) {
    links.add(
        new Link(concept.id(), label(concept), concept.definition(), kind, candidate(to), why));
  }

  private static Candidate candidate(AatConcept concept) {
    return new Candidate(concept.id(), concept.facet(), concept.terms());
  }

  private static String label(Concept concept) {
    return Thesaurus.display(concept.preferred());
  }

  /**
   * What the user chose.
   *
   * @param to empty for no link
   */
  private record Answer(Optional<AatConcept> to, Optional<Kind> kind) {}

  private void chosen(Concept concept, Answer answer, Map<String, Hit> hits) {
    if (answer.to().isEmpty()) {
      return;
    }
    AatConcept to = answer.to().get();
    boolean there =
        concept.matches().stream()
            .anyMatch(match -> AatTerms.idOf(match.uri()).equals(Optional.of(to.id())));
    if (!there) {
      Hit hit = hits.get(to.id());
      Kind usual = hit == null ? Kind.CLOSE_MATCH : hit.kind();
      link(concept, answer.kind().orElse(usual), to, "you said so");
    }
  }

  private Answer answer(String key, String value) {
    if (value.equals(NONE)) {
      return new Answer(Optional.empty(), Optional.empty());
    }
    int colon = value.indexOf(':');
    String id = value.substring(colon + 1).strip();
    Optional<Kind> kind = Optional.empty();
    if (colon >= 0) {
      String named = value.substring(0, colon).strip() + "-match";
      for (Kind one : Kind.values()) {
        kind = one.code().equals(named) ? Optional.of(one) : kind;
      }
      if (kind.isEmpty()) {
        throw new ChoiceException(
            key
                + "="
                + value
                + ": before the number stands exact, close, broad, narrow or related");
      }
    }
    AatConcept to = byId.get(id);
    if (to == null) {
      throw new ChoiceException(
          key
              + "="
              + value
              + ": "
              + (AatTerms.isId(id)
                  ? id + " is not in the table"
                  : "\"" + id + "\" is no number of the thesaurus, such as 300010175"));
    }
    return new Answer(Optional.of(to), kind);
  }

  private String conceptOf(String key, String value) {
    if (vocabulary.concepts.containsKey(key)) {
      return key;
    }
    Set<String> ids = vocabulary.withWord(merese.vocabulary.Folding.key(key));
    if (ids.size() == 1) {
      return ids.iterator().next();
    }
    throw new ChoiceException(
        key
            + "="
            + value
            + ": "
            + (ids.isEmpty()
                ? "the library has no concept \"" + key + "\""
                : "\"" + key + "\" is a label of " + String.join(" and ", ids) + "; give the id"));
  }
}
