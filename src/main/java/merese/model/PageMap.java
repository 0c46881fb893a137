package merese.model;

import java.util.List;
import java.util.Optional;

/**
 * Which printed page, plate or other leaf each page of a file is: "7 = p. [1]; 15–62 = pp. 1–48;
 * plates after 62". File pages are counted from 1, as a reader of the file counts them.
 *
 * <p>Guarantees: no file page is named twice; {@link #parse} of {@link #toString} is an equal map;
 * the parts stand in the order of the file.
 */
public final class PageMap {
  /** A map that names no page. */
  public static final PageMap NONE = new PageMap(List.of());

  /** The largest number of a file page that a map may name. */
  public static final int LARGEST = 9_999_999;

  /** Stands for the last page, whichever that is. */
  static final int OPEN = Integer.MAX_VALUE;

  private static final String FILE_PAGE = "file page ";
  private static final String PLATE = "pl. ";

  private final List<Part> parts;

  /**
   * Neighbouring file pages that are counted together.
   *
   * @param to {@link #OPEN} for all that follow
   * @param first what the first of them is; empty for leaves without a number
   * @param written the printed side as it is written, such as "pp. 1–48"
   */
  record Part(int from, int to, Optional<Locator> first, String written) {
    int count() {
      return to - from + 1;
    }

    private boolean names(int filePage) {
      return filePage >= from && filePage <= to;
    }

    @Override
    public String toString() {
      if (to != OPEN) {
        return from + (to > from ? "–" + to : "") + " = " + written;
      }
      String start = written.startsWith(PLATE) ? written.substring(PLATE.length()) : null;
      String counted = start == null ? written : start.equals("1") ? "plates" : "plates " + start;
      return counted + " after " + (from - 1);
    }
  }

  /**
   * @param parts sorted, none over another
   */
  PageMap(List<Part> parts) {
    this.parts = List.copyOf(parts);
  }

  /**
   * Reads a map: parts with ";" between them, each "15–62 = pp. 1–48", "7 = p. [1]", "8–14 =
   * unnumbered" or "plates after 62". Numbers alone on the right are pages. A text without any part
   * is {@link #NONE}.
   *
   * @throws PageMapException if it is not one, saying where, what is wrong and what to write
   */
  public static PageMap parse(String text) {
    return new PageMapParser(text).parse();
  }

  /** The printed page or plate; empty for an unnumbered leaf and for what the map does not name. */
  public Optional<Locator> at(int filePage) {
    for (Part part : parts) {
      if (part.names(filePage)) {
        return part.first().flatMap(first -> counted(first, filePage - part.from()));
      }
    }
    return Optional.empty();
  }

  static Optional<Locator> counted(Locator first, int by) {
    return by == 0 ? Optional.of(first) : first.stepped(by);
  }

  /** Whether the map says that the page has no printed number. */
  public boolean isUnnumbered(int filePage) {
    return parts.stream().anyMatch(part -> part.names(filePage) && part.first().isEmpty());
  }

  /**
   * How a page is cited: "pl. XII"; "file page 9, unnumbered"; "file page 9" where nothing says.
   */
  public String cited(int filePage) {
    Optional<Locator> printed = at(filePage);
    return printed.isPresent()
        ? printed.get().printed()
        : FILE_PAGE + filePage + (isUnnumbered(filePage) ? ", unnumbered" : "");
  }

  public boolean isEmpty() {
    return parts.isEmpty();
  }

  /** For each part, the first and the last of the file pages that it names of so many. */
  public List<int[]> stretches(int pages) {
    return parts.stream().map(part -> new int[] {part.from(), Math.min(part.to(), pages)}).toList();
  }

  /**
   * @throws IllegalArgumentException where the map names a page that a file of so many has not
   */
  void requireWithin(int pages) {
    for (Part part : parts) {
      int needed = part.to() == OPEN ? part.from() : part.to();
      Require.that(
          needed <= pages,
          "the page map says \""
              + part
              + "\", but the file has "
              + pages
              + (pages == 1 ? " page" : " pages")
              + "; correct that part of the map");
      boolean counts =
          part.first().isEmpty()
              || part.to() != OPEN
              || counted(part.first().get(), pages - part.from()).isPresent();
      Require.that(
          counts,
          "the page map says \""
              + part
              + "\", which cannot be counted on to file page "
              + pages
              + "; name the last of them, as in \"63–86 = pl. I–XXIV\"");
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PageMap map && parts.equals(map.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  /** As it is kept: in the order of the file, with labels and dashes. */
  @Override
  public String toString() {
    return String.join("; ", parts.stream().map(Part::toString).toList());
  }
}
