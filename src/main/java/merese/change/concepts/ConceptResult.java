package merese.change.concepts;

import java.util.List;
import java.util.Optional;
import merese.exchange.Refused;

/**
 * What an import of concepts does, or would do.
 *
 * @param file as the user named it
 * @param added new concepts, in the order of the file
 * @param there concepts that the library has, in the order of the file
 * @param questions what is not done unless the user says how
 * @param waiting concepts that are not added before a question is answered
 * @param refused concepts that can't be taken in
 * @param circles links to broader concepts that would have made a circle, each as a sentence
 * @param facets new facets
 * @param register what becomes of the register of homonyms, each as a sentence
 * @param remarks on what was taken otherwise than it stands, or has no place; each a sentence
 * @param kept how many records were added or replaced that keep what has no place in a vocabulary
 * @param mend the file that holds the refused, once the import is done
 */
public record ConceptResult(
    String file,
    List<Added> added,
    List<There> there,
    List<Question> questions,
    List<Waiting> waiting,
    List<Refused> refused,
    List<String> circles,
    List<NewFacet> facets,
    List<String> register,
    List<String> remarks,
    int kept,
    Optional<String> mend) {

  public ConceptResult {
    added = List.copyOf(added);
    there = List.copyOf(there);
    questions = List.copyOf(questions);
    waiting = List.copyOf(waiting);
    refused = List.copyOf(refused);
    circles = List.copyOf(circles);
    facets = List.copyOf(facets);
    register = List.copyOf(register);
    remarks = List.copyOf(remarks);
  }

  /**
   * A new concept.
   *
   * @param uri in the file
   * @param facetWhy what places it there: "by its collection"
   */
  public record Added(
      String id, String label, String uri, String facet, String facetWhy, List<String> broader) {
    public Added {
      broader = List.copyOf(broader);
    }
  }

  /**
   * A concept that the library has.
   *
   * @param why it is the same: "same preferred label"
   * @param changes those that are made, and those that are not
   */
  public record There(String id, String label, String uri, String why, List<Change> changes) {
    public There {
      changes = List.copyOf(changes);
    }

    public boolean isChanged() {
      return changes.stream().anyMatch(change -> change.outcome() != Outcome.STAYS);
    }
  }

  /** What becomes of a difference. */
  public enum Outcome {
    /** The library gains it. */
    ADDED,
    /** The file's word replaces the library's, as was asked for. */
    REPLACED,
    /** The library's stands. */
    STAYS
  }

  /**
   * One difference between the library and the file.
   *
   * @param part which part of a concept: "alternative label"
   * @param ours "" where the library says nothing
   */
  public record Change(Outcome outcome, String part, String ours, String theirs) {}

  /** What a question is about. */
  public enum Kind {
    /** Is a concept of the file one of the library's, or new? */
    SAME_OR_NEW,
    /** Should a word get a second meaning? */
    SECOND_MEANING,
    /** Which facet does a new concept belong in? */
    WHICH_FACET
  }

  /**
   * A question.
   *
   * @param uri of the concept of the file
   * @param words what is asked
   * @param candidates concepts of the library that it may be about
   * @param answers what to choose between, as it is typed; or the option to give
   */
  public record Question(
      Kind kind,
      String uri,
      String label,
      String words,
      List<Candidate> candidates,
      List<String> answers) {
    public Question {
      candidates = List.copyOf(candidates);
      answers = List.copyOf(answers);
    }
  }

  public record Candidate(String id, String label, String definition) {}

  /** A concept that waits, and for which. */
  public record Waiting(String uri, String label, String waitsFor) {}

  public record NewFacet(String id, String why) {}

  public List<There> changed() {
    return there.stream().filter(There::isChanged).toList();
  }

  public List<There> unchanged() {
    return there.stream().filter(one -> !one.isChanged()).toList();
  }

  /** Whether the library would be as it was; questions may be open all the same. */
  public boolean changesNothing() {
    return added.isEmpty() && changed().isEmpty() && register.isEmpty() && kept == 0;
  }
}
