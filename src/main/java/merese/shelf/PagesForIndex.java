package merese.shelf;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.model.Concept;
import merese.model.Locator;
import merese.model.PageText;
import merese.search.IndexUpdate;
import merese.search.IndexedPage;
import merese.search.NoteIndex;
import merese.vocabulary.NameOnPage;
import merese.vocabulary.NamesOnPages;
import merese.vocabulary.PageReading;
import merese.vocabulary.Thesaurus;

/**
 * Makes of the pages of books what the index takes: with each goes which concepts are named on it,
 * so that no question looks for names in texts. A change of the vocabulary makes again, from the
 * index itself, the pages that have the words of a changed label or name a concept that is
 * elsewhere.
 */
final class PagesForIndex {
  private final Thesaurus thesaurus;
  private NamesOnPages names;

  PagesForIndex(Thesaurus thesaurus) {
    this.thesaurus = thesaurus;
  }

  /** The pages of a text, one after another, so that a long one is never in memory twice. */
  void add(String file, PageText text, IndexUpdate update) {
    for (int page = 1; page <= text.pages().size(); page++) {
      update.add(file, page(text, page));
    }
  }

  /**
   * @param page from 1
   */
  IndexedPage page(PageText text, int page) {
    List<String> next = page < text.pages().size() ? text.pages().get(page).lines() : List.of();
    PageReading reading = PageReading.of(text.pages().get(page - 1).lines(), next);
    Optional<Locator> locator = text.map().at(page);
    return page(text.source(), page, locator, text.map().cited(page), reading);
  }

  private IndexedPage page(
      String edition, int page, Optional<Locator> locator, String cited, PageReading reading) {
    if (names == null) {
      names = thesaurus.namesOnPages();
    }
    List<NameOnPage> found = names.of(reading);
    return new IndexedPage(
        edition,
        page,
        locator.isPresent() ? locator.get().keys() : Set.of(),
        counted(found),
        reading,
        PackedPage.pack(locator.map(Locator::printed), cited, found));
  }

  /** How many names of each concept, and of what is broader, there are among some. */
  private Map<String, Integer> counted(List<NameOnPage> found) {
    Map<String, Set<String>> spellings = new LinkedHashMap<>();
    for (NameOnPage name : found) {
      String spelling = name.spelling();
      for (String concept : name.concepts()) {
        spellings.computeIfAbsent(concept, c -> new HashSet<>()).add(spelling);
        for (String broader : thesaurus.broader(concept)) {
          spellings.computeIfAbsent(broader, c -> new HashSet<>()).add(spelling);
        }
      }
    }
    Map<String, Integer> counts = new LinkedHashMap<>();
    spellings.forEach((concept, each) -> counts.put(concept, each.size()));
    return counts;
  }

  /**
   * Makes again the pages, of files that did not change, which a change of the vocabulary moves.
   * Each is read, made and let go.
   *
   * @return how many
   */
  int again(NoteIndex index, Thesaurus before, Changes changes, IndexUpdate update) {
    if (!index.hasRecords(RecordTypes.PAGES)) {
      return 0;
    }
    names = thesaurus.namesOnPages();
    Set<List<String>> labels = names.wordsOtherThan(before.namesOnPages());
    Set<String> moved = moved(before);
    if (labels.isEmpty() && moved.isEmpty()) {
      return 0;
    }
    int[] count = {0};
    index.eachPage(
        moved,
        labels,
        (hit, text) -> {
          if (!changes.concerns(hit.file())) {
            PackedPage.Unpacked known = PackedPage.unpack(hit.payload());
            PageReading reading = PageReading.ofKept(text);
            update.replace(
                hit.file(),
                page(hit.edition(), hit.page(), known.locator(), known.cited(), reading));
            count[0]++;
          }
        });
    return count[0];
  }

  /** The concepts of both vocabularies that have other ancestors now. */
  private Set<String> moved(Thesaurus before) {
    Set<String> moved = new TreeSet<>();
    for (Concept concept : before.concepts()) {
      String id = concept.id();
      if (thesaurus.concept(id).isPresent() && !before.broader(id).equals(thesaurus.broader(id))) {
        moved.add(id);
      }
    }
    return moved;
  }
}
