package merese.shelf;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import merese.vocabulary.Thesaurus;

/** What words mean in a library: by its vocabulary, and by what its sources say in their texts. */
public interface Lexicon {
  Thesaurus thesaurus();

  /**
   * What terms mean by the vocabulary alone: the ids of the concepts that have one as a label, or
   * that the register of homonyms gives it. A term that is no word of the vocabulary means nothing.
   */
  Map<String, Set<String>> meanings(Collection<String> terms);

  /** The concepts that sources which print just this term give it as its meaning in their text. */
  Set<String> meaningsInText(String term);
}
