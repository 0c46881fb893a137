package merese.change.concepts;

import java.util.List;
import merese.model.Concept;

/**
 * Links to the Art &amp; Architecture Thesaurus that are made, or would be.
 *
 * @param there concepts that have a link already, and are left as they are
 * @param without how many concepts share no word with the table
 * @param licence the notice that goes with whatever is made of the thesaurus
 */
public record AatResult(
    List<Link> links, List<Question> questions, List<There> there, int without, String licence) {

  public AatResult {
    links = List.copyOf(links);
    questions = List.copyOf(questions);
    there = List.copyOf(there);
  }

  /**
   * A new link.
   *
   * @param definition of the library's concept, to be read against the other
   * @param why "same preferred label"
   */
  public record Link(
      String id,
      String label,
      String definition,
      Concept.Match.Kind kind,
      Candidate to,
      String why) {}

  /** A concept of the thesaurus: its terms, the preferred one first. */
  public record Candidate(String aatId, String facet, List<String> terms) {
    public Candidate {
      terms = List.copyOf(terms);
    }
  }

  /**
   * A link that is made only if the user says so.
   *
   * @param words why it is asked
   * @param answers what to choose between, as it is typed
   */
  public record Question(
      String id,
      String label,
      String definition,
      String words,
      List<Candidate> candidates,
      List<String> answers) {
    public Question {
      candidates = List.copyOf(candidates);
      answers = List.copyOf(answers);
    }
  }

  /** A link that is there. */
  public record There(String id, String label, Concept.Match.Kind kind, String uri) {}

  /** Whether the library would be as it was; questions may be open all the same. */
  public boolean changesNothing() {
    return links.isEmpty();
  }
}
