package merese.shelf;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import merese.model.Edition;
import merese.model.ShortReference;
import merese.model.Work;
import merese.vocabulary.Folding;

/**
 * A source as somebody who writes needs it: what it is called and which file it is in.
 *
 * @param file the path of its work's file below the library folder
 * @param reference author and year, as in "Quenby 1949"
 */
public record SourceAddress(
    String key, String file, String reference, String title, OptionalInt year) {

  static final int BEGUN = 1;
  static final int WHOLE_WORDS = 2;

  static SourceAddress of(String file, Work work, Edition edition) {
    return new SourceAddress(
        edition.key(),
        file,
        ShortReference.of(work, edition),
        work.title(),
        edition.imprint().year());
  }

  static SourceAddress of(String file, Source.Brief brief) {
    return new SourceAddress(brief.key(), file, brief.reference(), brief.title(), brief.year());
  }

  /** The folded words that the source can be called by. */
  Set<String> ownWords() {
    Set<String> own = new LinkedHashSet<>(Folding.words(key));
    own.addAll(Folding.words(reference));
    own.addAll(Folding.words(title));
    return own;
  }

  /** In one line, as in "Quenby 1949, Neck and Stopper (quenby-1949)". */
  public String words() {
    return reference + ", " + title + " (" + key + ")";
  }

  /**
   * How well words name the source: 3 where they are just those of its key, or its author and year,
   * 2 where each is a whole word of its key, author, year or title, 1 where each begins one, else
   * 0.
   *
   * @param words folded
   */
  int answersTo(List<String> words) {
    if (words.equals(Folding.words(key)) || words.equals(Folding.words(reference))) {
      return 3;
    }
    Set<String> own = ownWords();
    if (own.containsAll(words)) {
      return WHOLE_WORDS;
    }
    for (String word : words) {
      if (!beginsOne(word, own)) {
        return 0;
      }
    }
    return BEGUN;
  }

  private static boolean beginsOne(String word, Set<String> own) {
    for (String each : own) {
      if (each.startsWith(word)) {
        return true;
      }
    }
    return false;
  }
}
