package merese.shelf;

import java.util.Arrays;
import java.util.Comparator;
import java.util.OptionalInt;
import merese.model.Edition;
import merese.model.Work;

/**
 * An edition with its work; neither carries the notes, which are asked for by what they say.
 *
 * @param filing compares as unsigned bytes in the order of authors, A to Z; anonymous works file
 *     under their title
 */
public record Source(Work work, Edition edition, byte[] filing) {
  /** By year of the edition, undated last; then author, A to Z; then key (R4). */
  public static final Comparator<Source> BY_YEAR =
      Comparator.comparingInt((Source s) -> s.year().orElse(Integer.MAX_VALUE))
          .thenComparing(Source::filing, Arrays::compareUnsigned)
          .thenComparing(Source::key);

  public String key() {
    return edition.key();
  }

  public OptionalInt year() {
    return edition.imprint().year();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Source source && source.key().equals(key());
  }

  @Override
  public int hashCode() {
    return key().hashCode();
  }

  @Override
  public String toString() {
    return key();
  }
}
