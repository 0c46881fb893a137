package merese.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
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
    List<String> own = new ArrayList<>(Folding.words(key));
    if (words.equals(own) || words.equals(Folding.words(reference))) {
      return 3;
    }
    own.addAll(Folding.words(reference));
    own.addAll(Folding.words(title));
    if (own.containsAll(words)) {
      return 2;
    }
    for (String word : words) {
      if (!beginsOne(word, own)) {
        return 0;
      }
    }
    return 1;
  }

  private static boolean beginsOne(String word, List<String> own) {
    for (String each : own) {
      if (each.startsWith(word)) {
        return true;
      }
    }
    return false;
  }
}
