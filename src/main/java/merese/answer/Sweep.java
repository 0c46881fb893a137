package merese.answer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import merese.answer.PagesNaming.Named;
import merese.answer.Swept.Place;
import merese.answer.Swept.Searched;
import merese.search.Highlights.Mark;
import merese.search.PagesOfSource;
import merese.search.SourceSelection;
import merese.shelf.AttachedText;
import merese.shelf.AttachedTexts;
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
   * @param withTexts whether to say of each attached text that it was searched
   * @throws TermException for a term of several meanings or of none
   */
  public static Swept answer(Shelf shelf, String term, int limit, boolean withTexts) {
    return shelf.ask(s -> new Sweep(s).answer(term, limit, withTexts));
  }

  private Swept answer(String term, int limit, boolean withTexts) {
    Topic topic = Topic.of(shelf, List.of(term), Optional.empty()).get(0);
    List<PagesOfSource> sources =
        shelf.sourcesNaming(List.of(topic.concept()), SourceSelection.ALL);
    Set<String> keys = new HashSet<>();
    sources.forEach(source -> keys.add(source.owner().edition()));
    PagesNaming naming =
        new PagesNaming(shelf, List.of(ConceptCoverage.of(shelf, topic.concept())), keys);
    int all = 0;
    int noted = 0;
    Set<String> files = new HashSet<>();
    List<Place> places = new ArrayList<>();
    for (PagesOfSource source : sources) { // its pages are counted and let go
      List<Named> notedHere = new ArrayList<>();
      List<Named> found = onceAPage(naming.notNoted(shelf.pages(source), notedHere));
      noted += onceAPage(notedHere).size();
      for (Named each : found.subList(0, Math.min(limit - places.size(), found.size()))) {
        places.add(place(naming, each));
      }
      all += found.size();
      for (List<Named> some : List.of(found, notedHere)) {
        some.forEach(each -> files.add(each.page().file()));
      }
    }
    AttachedTexts texts = shelf.attachedTexts();
    return new Swept(
        term,
        topic.heading(),
        texts.texts(),
        texts.pages(),
        texts.withoutText(),
        noted,
        all,
        places,
        withTexts ? searched(files) : List.of());
  }

  /**
   * @param files those of the texts in which a name stands
   */
  private List<Searched> searched(Set<String> files) {
    List<Searched> searched = new ArrayList<>();
    for (AttachedText text : shelf.eachAttachedText()) {
      if (text.withoutText() < text.pages()) {
        searched.add(searched(text, files.contains(text.file())));
      }
    }
    return searched;
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
