package merese.answer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
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

/**
 * Goes through the pages of books for a feature by any of its names. Pages are read until there are
 * enough places; how many more there are the index counts, and which of these are noted the pages
 * tell that have a note. A name that stands on a page with a capital and without is one.
 */
public final class Sweep {
  /** The notes of so many sources are in memory at a time. */
  private static final int AT_ONCE = 256;

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
    ConceptCoverage coverage = ConceptCoverage.of(shelf, topic.concept());
    List<PagesOfSource> sources =
        shelf.sourcesNaming(List.of(topic.concept()), SourceSelection.ALL);
    int noted = 0;
    List<Place> places = new ArrayList<>();
    for (int from = 0; from < sources.size(); from += AT_ONCE) {
      List<PagesOfSource> some = sources.subList(from, Math.min(from + AT_ONCE, sources.size()));
      noted += addPlaces(some, coverage, limit, places);
    }
    AttachedTexts texts = shelf.attachedTexts();
    return new Swept(
        term,
        topic.heading(),
        texts.texts(),
        texts.pages(),
        texts.withoutText(),
        noted,
        shelf.countPlaces(topic.concept(), sources) - noted,
        places,
        withTexts ? searched(sources) : List.of());
  }

  /**
   * Reads the pages of some sources until there are enough places; of the others' pages only those
   * where a note is.
   *
   * @return how many names are noted
   */
  private int addPlaces(
      List<PagesOfSource> sources, ConceptCoverage coverage, int limit, List<Place> places) {
    Set<String> keys = new HashSet<>();
    sources.forEach(source -> keys.add(source.owner().edition()));
    PagesNaming naming = new PagesNaming(shelf, List.of(coverage), keys);
    int noted = 0;
    int read = 0;
    while (read < sources.size() && places.size() < limit) {
      List<Named> found = new ArrayList<>();
      for (SourcedPage page : shelf.pages(sources.get(read))) {
        noted += naming.spellings(page, found);
      }
      for (Named each : found.subList(0, Math.min(limit - places.size(), found.size()))) {
        places.add(place(naming, each));
      }
      read++;
    }
    List<PagesOfSource> rest = sources.subList(read, sources.size());
    for (SourcedPage page : shelf.pagesNoted(rest, naming.notesAround())) {
      noted += naming.spellings(page, new ArrayList<>());
    }
    return noted;
  }

  /**
   * @param naming the pages on which a name stands
   */
  private List<Searched> searched(List<PagesOfSource> naming) {
    Set<String> files = new HashSet<>();
    naming.forEach(pages -> files.addAll(pages.files()));
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
