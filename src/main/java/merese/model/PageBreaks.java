package merese.model;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.model.LocatorLevel.Numbered;

/**
 * Which pages a note's quotation is broken at. Their numbers come from a place in words that names
 * just as many pages, leaves or columns as the quotation has; they are never made up.
 *
 * @param marked the quotation, each break in square brackets
 * @param numbers the numbers of its pages, as printed; none where they are not known
 * @param doubt why they are not, or that a break is not marked: the start of a sentence
 */
public record PageBreaks(String marked, List<String> numbers, Optional<String> doubt) {
  public PageBreaks {
    numbers = List.copyOf(numbers);
  }

  /** Those of a note with a quotation. */
  public static PageBreaks of(Note note) {
    QuotedText text = QuotedText.of(note.quotation().orElseThrow());
    List<Place> places = inWords(note);
    if (text.breaks() == 0) {
      return new PageBreaks(text.marked(List.of()), List.of(), unmarked(places));
    }
    Set<List<String>> fitting = new LinkedHashSet<>();
    for (Place place : places) {
      List<String> numbers = numbers(place.locator());
      if (numbers.size() == text.pages().size()) {
        fitting.add(numbers);
      }
    }
    if (fitting.size() == 1) {
      List<String> numbers = fitting.iterator().next();
      return new PageBreaks(text.marked(numbers), numbers, Optional.empty());
    }
    String breaks =
        text.breaks() == 1 ? "a page break is marked" : text.breaks() + " page breaks are marked";
    String why =
        fitting.isEmpty()
            ? "no place in words names " + text.pages().size() + " pages"
            : "several places could be those pages";
    return new PageBreaks(text.marked(List.of()), List.of(), Optional.of(breaks + ", and " + why));
  }

  /** A quotation that stands on one page of several, or on all: nobody has said. */
  private static Optional<String> unmarked(List<Place> places) {
    for (Place place : places) {
      if (numbers(place.locator()).size() < 2) {
        return Optional.empty();
      }
    }
    return places.isEmpty()
        ? Optional.empty()
        : Optional.of("if it runs over a page, where that ends is not marked");
  }

  private static List<Place> inWords(Note note) {
    List<Place> places = new ArrayList<>();
    for (Place place : note.places()) {
      if (!place.medium().isPicture()) {
        places.add(place);
      }
    }
    return places;
  }

  /** The numbers of the pages, leaves or columns that a locator names; none for anything else. */
  private static List<String> numbers(Locator locator) {
    List<String> numbers = new ArrayList<>();
    for (Locator member : locator.members()) {
      List<LocatorLevel> levels = member.levels();
      LocatorLevel last = levels.get(levels.size() - 1);
      if (!(last instanceof Numbered page) || !isPage(page.kind())) {
        return List.of();
      }
      numbers.add(page.value());
    }
    return numbers;
  }

  private static boolean isPage(LocatorKind kind) {
    return kind == LocatorKind.PAGE || kind == LocatorKind.FOLIO || kind == LocatorKind.COLUMN;
  }
}
