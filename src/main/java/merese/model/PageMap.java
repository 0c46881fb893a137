package merese.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.LocatorNumber.Side;

/**
 * Which printed page, plate or other leaf each page of a file is: "7 = p. [1]; 15–62 = pp. 1–48;
 * plates after 62". File pages are counted from 1, as a reader of the file counts them. Where a
 * file page is a photograph of an open book it holds two printed pages: "8–31 = openings pp. 2–49".
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
  private static final String OPENING = "opening ";
  private static final String OPENINGS = "openings ";

  private final List<Part> parts;

  /**
   * Neighbouring file pages that are counted together.
   *
   * @param to {@link #OPEN} for all that follow
   * @param first what the first of them is, two places for an opening; empty for leaves without a
   *     number
   * @param written the printed side as it is written, such as "pp. 1–48"
   * @param openings whether each file page holds two printed pages, side by side
   */
  record Part(int from, int to, Optional<Locator> first, String written, boolean openings) {
    Part(int from, int to, Optional<Locator> first, String written) {
      this(from, to, first, written, false);
    }

    private boolean names(int filePage) {
      return filePage >= from && filePage <= to;
    }

    /** What stands on a file page; empty where it cannot be counted so far. */
    private Optional<Locator> at(int filePage) {
      int by = filePage - from;
      if (first.isEmpty() || by == 0) {
        return first;
      }
      return openings ? opening(left().get(), 2 * by) : first.get().stepped(by);
    }

    /** The left page of the first opening. */
    private Optional<Locator> left() {
      return openings ? first.map(each -> each.members().get(0)) : Optional.empty();
    }

    @Override
    public String toString() {
      if (to != OPEN) {
        String kind = openings ? (to > from ? OPENINGS : OPENING) : "";
        return from + (to > from ? "–" + to : "") + " = " + kind + written;
      }
      String start = written.startsWith(PLATE) ? written.substring(PLATE.length()) : null;
      String counted = start == null ? written : start.equals("1") ? "plates" : "plates " + start;
      return (openings ? OPENINGS : "") + counted + " after " + (from - 1);
    }
  }

  /** Two pages side by side, so many pages after one. */
  static Optional<Locator> opening(Locator left, int by) {
    Optional<Locator> verso = by == 0 ? Optional.of(left) : left.stepped(by);
    Optional<Locator> recto = left.stepped(by + 1);
    return verso.isEmpty() || recto.isEmpty()
        ? Optional.empty()
        : Optional.of(Locator.ofPages(List.of(verso.get(), recto.get())));
  }

  /**
   * @param parts sorted, none over another
   */
  PageMap(List<Part> parts) {
    this.parts = List.copyOf(parts);
  }

  /**
   * Reads a map: parts with ";" between them, each "15–62 = pp. 1–48", "7 = p. [1]", "8–14 =
   * unnumbered", "plates after 62", "8–31 = openings 2–49" or "openings 2 after 7". Numbers alone
   * on the right are pages. A text without any part is {@link #NONE}.
   *
   * @throws PageMapException if it is not one, saying where, what is wrong and what to write
   */
  public static PageMap parse(String text) {
    return new PageMapParser(text).parse();
  }

  /**
   * The printed page or plate, both pages of an opening; empty for an unnumbered leaf and for what
   * the map does not name.
   */
  public Optional<Locator> at(int filePage) {
    for (Part part : parts) {
      if (part.names(filePage)) {
        return part.at(filePage);
      }
    }
    return Optional.empty();
  }

  /**
   * Openings that begin with what is by custom a right-hand page: an odd number, or the front of a
   * leaf. Books are misnumbered, so that is no error; mostly the map is one page out.
   */
  public List<String> oddOpenings() {
    List<String> odd = new ArrayList<>();
    for (Part part : parts) {
      if (part.left().filter(PageMap::isRightHand).isPresent()) {
        odd.add(part.first().get().printed());
      }
    }
    return odd;
  }

  private static boolean isRightHand(Locator page) {
    LocatorLevel last = page.levels().get(page.levels().size() - 1);
    return switch (last.kind()) {
      case PAGE -> last.number().isPresent() && last.number().get().value() % 2 == 1;
      case FOLIO -> last.number().isPresent() && last.number().get().side() == Side.RECTO;
      default -> false;
    };
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
      boolean counts = part.first().isEmpty() || part.to() != OPEN || part.at(pages).isPresent();
      Require.that(
          counts,
          "the page map says \""
              + part
              + "\", which cannot be counted on to file page "
              + pages
              + (part.openings()
                  ? "; name the last of them, as in \"8–31 = openings 2–49\""
                  : "; name the last of them, as in \"63–86 = pl. I–XXIV\""));
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
