package merese.shelf;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Edition;
import merese.model.Scope;
import merese.model.SourceKind;
import merese.model.Work;

/**
 * An edition as a question needs it. All that its work and edition hold, except the notes, is there
 * on request.
 */
public final class Source {
  /** By year of the edition, undated last; then author, A to Z; then key (R4). */
  public static final Comparator<Source> BY_YEAR = new ByYear();

  /** As a library files them: by author, A to Z, each by year and then by key. */
  public static final Comparator<Source> BY_AUTHOR = new ByAuthor();

  /** What every question needs to know. */
  record Brief(
      String key,
      String workId,
      String title,
      String reference,
      SourceKind kind,
      OptionalInt year,
      boolean mine,
      boolean owned,
      Optional<String> whereabouts,
      Optional<Scope> scope,
      byte[] filing) {}

  private final Brief brief;
  private final String file;
  private final Shelf shelf;
  private Work whole;

  /** How many sources have its author and year; 0 while nobody has asked. */
  private int called;

  /**
   * @param file the library's file that it is from
   */
  Source(Brief brief, String file, Shelf shelf) {
    this.brief = brief;
    this.file = file;
    this.shelf = shelf;
  }

  public String key() {
    return brief.key();
  }

  public String workId() {
    return brief.workId();
  }

  public String title() {
    return brief.title();
  }

  /** Author and year, as in "Quenby 1949". */
  public String reference() {
    return brief.reference();
  }

  public SourceKind kind() {
    return brief.kind();
  }

  /** Whether no other source has the same author and year. */
  public boolean isAloneCalledSo() {
    if (called == 0) {
      called = shelf.sourcesCalled(reference());
    }
    return called == 1;
  }

  /** The year of the edition; empty for an undated one. */
  public OptionalInt year() {
    return brief.year();
  }

  /** Its filing key, of {@code Filing.WORD_BY_WORD}. */
  public byte[] filing() {
    return brief.filing().clone();
  }

  /** Whether it is an article or film of the user's own, which is never a witness. */
  public boolean mine() {
    return brief.mine();
  }

  /** Whether the user has a copy of their own, on the shelf or not. */
  public boolean owned() {
    return brief.owned();
  }

  /** Where the user's copy is when it is not on its shelf, or who has one when the user has not. */
  public Optional<String> whereabouts() {
    return brief.whereabouts();
  }

  public Optional<Scope> scope() {
    return brief.scope();
  }

  /** The work with this edition alone, without its notes. */
  public Work work() {
    shelf.quote(file);
    if (whole == null) {
      whole = shelf.whole(key());
    }
    return whole;
  }

  public Edition edition() {
    return work().editions().get(0);
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

  private static final class ByYear implements Comparator<Source> {
    @Override
    public int compare(Source a, Source b) {
      int years =
          Integer.compare(a.year().orElse(Integer.MAX_VALUE), b.year().orElse(Integer.MAX_VALUE));
      if (years != 0) {
        return years;
      }
      int authors = Arrays.compareUnsigned(a.brief.filing(), b.brief.filing());
      return authors != 0 ? authors : a.key().compareTo(b.key());
    }
  }

  private static final class ByAuthor implements Comparator<Source> {
    @Override
    public int compare(Source a, Source b) {
      int authors = Arrays.compareUnsigned(a.brief.filing(), b.brief.filing());
      return authors != 0 ? authors : BY_YEAR.compare(a, b);
    }
  }
}
