package merese.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.Coverage.Heading;
import merese.model.Concept;
import merese.model.Facet;
import merese.shelf.Shelf;
import merese.vocabulary.NearTerm;
import merese.vocabulary.Thesaurus;

/**
 * One feature that a question with several of them is about.
 *
 * @param asked as it was typed
 * @param heading what it means, under the user's own label where there is one
 */
public record Topic(String asked, Heading heading) {
  private static final int NEAR_TERMS = 3;

  /** The concept's id. */
  public String concept() {
    return heading.id();
  }

  /**
   * What each term means, without repeats: a concept's id, or a word or words.
   *
   * @throws TermException for a term of several meanings or of none
   */
  public static List<Topic> of(Shelf shelf, List<String> terms, Optional<String> facet) {
    Map<String, Topic> topics = new LinkedHashMap<>();
    for (String term : terms) {
      Topic topic = of(shelf, term, terms, facet);
      topics.putIfAbsent(topic.concept(), topic);
    }
    return List.copyOf(topics.values());
  }

  /**
   * The same, where a term may also be a facet, which stands for all its concepts; a facet's name
   * that is a label as well is taken for the facet.
   *
   * @throws TermException for a term of several meanings or of none
   */
  public static List<Topic> withFacets(Shelf shelf, List<String> terms, Optional<String> facet) {
    Map<String, Topic> topics = new LinkedHashMap<>();
    for (String term : terms) {
      Optional<Facet> whole = shelf.thesaurus().facet(term);
      if (whole.isPresent()) {
        for (Concept concept : shelf.thesaurus().concepts()) {
          if (concept.facet().equals(whole.get().id())) {
            Topic topic = new Topic(term, Headings.of(shelf, concept.id()));
            topics.putIfAbsent(topic.concept(), topic);
          }
        }
      } else {
        Topic topic = of(shelf, term, terms, facet);
        topics.putIfAbsent(topic.concept(), topic);
      }
    }
    return List.copyOf(topics.values());
  }

  private static Topic of(Shelf shelf, String term, List<String> all, Optional<String> facet) {
    Thesaurus thesaurus = shelf.thesaurus();
    if (thesaurus.concept(term).isPresent()) {
      return new Topic(term, Headings.of(shelf, term));
    }
    CoverageQuestion question =
        new CoverageQuestion(
            Optional.of(term),
            Optional.empty(),
            facet,
            CoverageQuestion.Narrowing.NONE,
            CoverageQuestion.Showing.ALL);
    Interpretation meant = Interpretation.of(shelf, question);
    if (meant.concepts().isEmpty()) {
      throw new TermException(unknown(shelf, term, all));
    } else if (meant.ask().isPresent()) {
      throw new TermException(ambiguous(shelf, term, all, meant));
    }
    return new Topic(term, Headings.of(shelf, meant.concepts().get(0)));
  }

  private static String ambiguous(
      Shelf shelf, String term, List<String> all, Interpretation meant) {
    List<String> meanings = new ArrayList<>();
    for (String id : meant.concepts()) {
      meanings.add(id + " (" + shelf.thesaurus().label(id) + ")");
    }
    return "“"
        + term
        + "”: "
        + meant.ask().orElseThrow().reason()
        + "; name one by its id: "
        + String.join(", ", meanings)
        + quoting(shelf, all);
  }

  /** Words that together are one term and were typed as several. */
  private static String quoting(Shelf shelf, List<String> all) {
    String whole = String.join(" ", all);
    return all.size() > 1 && !shelf.meanings(List.of(whole)).get(whole).isEmpty()
        ? "; for one term of several words, write \"" + whole + "\""
        : "";
  }

  private static String unknown(Shelf shelf, String term, List<String> all) {
    List<String> near = new ArrayList<>();
    for (NearTerm known : shelf.thesaurus().nearTerms(term, NEAR_TERMS)) {
      near.add(Thesaurus.display(known.label()));
    }
    String hint = near.isEmpty() ? "" : "; near it: " + String.join("; ", near);
    return "“"
        + term
        + "” is no word of the vocabulary, and no note prints it"
        + hint
        + quoting(shelf, all);
  }
}
