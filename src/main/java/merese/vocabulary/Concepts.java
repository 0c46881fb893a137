package merese.vocabulary;

import java.util.List;
import java.util.Map;
import merese.model.Concept;

/**
 * The concepts of a vocabulary and what they state of each other. A thesaurus asks for one by one,
 * so that they may be kept packed until somebody does.
 *
 * <p>Immutable, and safe for several threads. No list here is to be changed by who asks.
 */
public interface Concepts {
  /** All, by their ids, in the order of the vocabulary. */
  Map<String, Concept> all();

  /** The concept of an id; null where there is none. */
  Concept find(String id);

  /** Whether there is a concept of that id, which need not be read for it. */
  boolean has(String id);

  /** The ids that a concept names as broader, known or not. */
  List<String> broader(String id);

  /** The ids of the concepts that name this one as broader, in the order of the vocabulary. */
  List<String> narrower(String id);

  /** Whether a concept names others that it is mistaken for. */
  boolean namesLookAlikes(String id);

  /**
   * The ids of the concepts that name this one as what they are mistaken for, each once, in the
   * order of the vocabulary.
   */
  List<String> mistakenFor(String id);
}
