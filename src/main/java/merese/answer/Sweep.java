package merese.answer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.PagesNaming.Named;
import merese.answer.Swept.Place;
import merese.answer.Swept.Searched;
import merese.search.Highlights.Mark;
import merese.shelf.AttachedText;
import merese.shelf.Shelf;
import merese.shelf.SourcedPage;
import merese.vocabulary.PageReading;

/** Goes through the pages of books for a feature by any of its names. */
public final class Sweep {
  private final Shelf shelf;
  private final SourceLines lines;

  private Sweep(Shelf shelf) {
    this.shelf = shelf;
    this.lines = new SourceLines();
  }

  /**
   * @param term a word or words, or the id of a concept
   * @param limit how many places to give, from 1
   * @throws TermException for a term of several meanings or of none
   */
  public static Swept answer(Shelf shelf, String term, int limit) {
    return shelf.ask(s -> new Sweep(s).answer(term, limit));
  }

  private Swept answer(String term, int limit) {
    Topic topic = Topic.of(shelf, List.of(term), Optional.empty()).get(0);
    List<SourcedPage> naming = shelf.pagesNaming(List.of(topic.concept()));
    PagesNaming pages =
        new PagesNaming(shelf, List.of(ConceptCoverage.of(shelf, topic.concept())), naming);
    List<Named> noted = new ArrayList<>();
    List<Named> found = onceAPage(pages.notNoted(new Wanted(shelf, Narrowing.NONE), lines, noted));
    int texts = 0;
    int all = 0;
    int withoutText = 0;
    Set<String> files = new HashSet<>();
    for (List<Named> some : List.of(found, noted)) {
      some.forEach(each -> files.add(each.page().file()));
    }
    List<Searched> searched = new ArrayList<>();
    for (AttachedText text : shelf.attachedTexts()) {
      if (!text.source().mine()) {
        if (text.withoutText() < text.pages()) {
          searched.add(searched(text, files.contains(text.file())));
        }
        texts++;
        all += text.pages();
        withoutText += text.withoutText();
      }
    }
    List<Place> places = new ArrayList<>();
    for (Named each : found.subList(0, Math.min(limit, found.size()))) {
      places.add(place(pages, each));
    }
    return new Swept(
        term,
        topic.heading(),
        texts,
        all,
        withoutText,
        onceAPage(noted).size(),
        found.size(),
        places,
        searched);
  }

  private Searched searched(AttachedText text, boolean found) {
    String pages =
        text.unnumbered()
            + (text.unnumbered() == 1 ? " page of " : " pages of ")
            + text.name()
            + " without a known number";
    return new Searched(
        lines.of(text.source()),
        text.extent(),
        text.unnumbered() == 0
            ? Optional.empty()
            : Optional.of(text.extent().isPresent() ? "and " + pages : pages + " alone"),
        found);
  }

  /** A name that stands on a page with a capital and without is one. */
  private static List<Named> onceAPage(List<Named> found) {
    List<Named> once = new ArrayList<>();
    Set<List<Object>> known = new HashSet<>();
    for (Named each : found) {
      SourcedPage page = each.page();
      String words = each.name().words().toLowerCase(Locale.ROOT);
      if (known.add(List.of(page.file(), page.page(), words))) {
        once.add(each);
      }
    }
    return once;
  }

  private Place place(PagesNaming pages, Named named) {
    SourcedPage page = named.page();
    PageReading reading = shelf.read(page);
    Mark mark = new Mark(named.name().start(), named.name().end());
    return new Place(
        lines.of(page.source()),
        page.locator(),
        page.cited(),
        named.name().words(),
        pages.lines(named.concepts()),
        pages.isNarrower(named.concepts()),
        named.name().doubtful(),
        named.name().loose(),
        PageLines.sentence(reading, List.of(mark)));
  }
}
