package merese.answer;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.model.SourceKind;

/**
 * Which sources cover a feature.
 *
 * @param phrase a word or words for the feature
 * @param concept the id of a concept; where given, the phrase is not looked up
 * @param facet the facet that supplies a head noun left out of the phrase
 * @param narrowing which sources are wanted
 * @param showing how many sources of a group are shown; all are counted
 */
public record CoverageQuestion(
    Optional<String> phrase,
    Optional<String> concept,
    Optional<String> facet,
    Narrowing narrowing,
    Showing showing) {

  public CoverageQuestion {
    if (phrase.isEmpty() && concept.isEmpty()) {
      throw new IllegalArgumentException("a question needs a term or a concept");
    }
  }

  /** A question by a word or words, with nothing narrowed. */
  public static CoverageQuestion of(String phrase) {
    return new CoverageQuestion(
        Optional.of(phrase), Optional.empty(), Optional.empty(), Narrowing.NONE, Showing.ALL);
  }

  /** A question by a concept's id, with nothing narrowed. */
  public static CoverageQuestion ofConcept(String id) {
    return new CoverageQuestion(
        Optional.empty(), Optional.of(id), Optional.empty(), Narrowing.NONE, Showing.ALL);
  }

  public CoverageQuestion with(Narrowing other) {
    return new CoverageQuestion(phrase, concept, facet, other, showing);
  }

  /** The same for so many sources of each group at most. */
  public CoverageQuestion first(int number) {
    return with(Showing.first(number));
  }

  public CoverageQuestion with(Showing other) {
    return new CoverageQuestion(phrase, concept, facet, narrowing, other);
  }

  /**
   * How many sources of a group are shown.
   *
   * @param whole a group of so many is shown whole
   * @param first so many of a larger one are
   * @param wholeBeside the same of the groups beside what counts
   * @param firstBeside the same of the groups beside what counts
   */
  public record Showing(int whole, int first, int wholeBeside, int firstBeside) {
    public static final Showing ALL = first(Integer.MAX_VALUE);

    /** Whoever owns a hundred books on a thing wants them all; nobody reads a thousand at once. */
    public static final Showing USUAL = new Showing(100, 20, 40, 5);

    /** So many of each group. */
    public static Showing first(int number) {
      return new Showing(number, number, number, number);
    }

    /** How many sources are shown of a group that counts. */
    public int of(int sources) {
      return sources <= whole ? sources : first;
    }

    /** The same for the groups beside it. */
    public Showing beside() {
      return new Showing(wholeBeside, firstBeside, wholeBeside, firstBeside);
    }

    public boolean isAll() {
      return whole == Integer.MAX_VALUE;
    }
  }

  /**
   * Which sources are wanted. What a narrowing leaves out is named, never dropped.
   *
   * @param pictured only sources that picture the feature
   * @param owned only sources of which the user has a copy
   * @param kinds only sources of these kinds; empty for all
   * @param years years of the edition
   * @param place only sources that claim the feature for this place
   */
  public record Narrowing(
      boolean pictured,
      boolean owned,
      Set<SourceKind> kinds,
      Optional<Years> years,
      Optional<String> place) {
    public static final Narrowing NONE =
        new Narrowing(false, false, Set.of(), Optional.empty(), Optional.empty());

    public Narrowing {
      kinds = Set.copyOf(kinds);
    }
  }

  /** A span of years, both ends included; an end left open is empty. */
  public record Years(OptionalInt from, OptionalInt to) {
    /**
     * Reads "1795", "1790..1800", "..1800" or "1790..".
     *
     * @throws IllegalArgumentException for anything else, with a message for the user
     */
    public static Years read(String text) {
      int dots = text.indexOf("..");
      if (dots < 0) {
        OptionalInt only = year(text, text);
        return new Years(only, only);
      }
      String start = text.substring(0, dots).strip();
      String end = text.substring(dots + 2).strip();
      Years years =
          new Years(
              start.isEmpty() && !end.isEmpty() ? OptionalInt.empty() : year(start, text),
              end.isEmpty() ? OptionalInt.empty() : year(end, text));
      if (years.from().isPresent()
          && years.to().isPresent()
          && years.from().getAsInt() > years.to().getAsInt()) {
        throw new IllegalArgumentException(text + " runs backwards");
      }
      return years;
    }

    private static OptionalInt year(String part, String whole) {
      try {
        return OptionalInt.of(Integer.parseInt(part.strip()));
      } catch (NumberFormatException e) {
        throw new IllegalArgumentException(
            "\"" + whole + "\" is no year or span; write 1795, 1790..1800, ..1800 or 1790..", e);
      }
    }

    public boolean contains(OptionalInt year) {
      return year.isPresent()
          && (from.isEmpty() || year.getAsInt() >= from.getAsInt())
          && (to.isEmpty() || year.getAsInt() <= to.getAsInt());
    }
  }
}
