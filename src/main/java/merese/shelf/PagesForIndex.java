package merese.shelf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.model.Homonym;
import merese.model.Locator;
import merese.model.PageText;
import merese.search.IndexUpdate;
import merese.search.IndexedPage;
import merese.search.NoteIndex;
import merese.search.PageHits.PageHit;
import merese.vocabulary.NameOnPage;
import merese.vocabulary.NamesOnPages;
import merese.vocabulary.PageReading;
import merese.vocabulary.Thesaurus;

/**
 * Makes of the pages of books what the index takes: with each goes which concepts are named on it,
 * so that no question looks for names in texts. A change of the vocabulary makes again, from the
 * index itself, the pages that name a changed concept or have the words of a changed label.
 */
final class PagesForIndex {
  private final Thesaurus thesaurus;
  private NamesOnPages names;

  PagesForIndex(Thesaurus thesaurus) {
    this.thesaurus = thesaurus;
  }

  /** The pages of a text, one after another, so that a long one is never in memory twice. */
  void add(String file, PageText text, IndexUpdate update) {
    for (int i = 0; i < text.pages().size(); i++) {
      int page = i + 1;
      List<String> next = page < text.pages().size() ? text.pages().get(page).lines() : List.of();
      PageReading reading = PageReading.of(text.pages().get(i).lines(), next);
      Optional<String> locator = text.map().at(page).map(Locator::printed);
      update.add(file, page(text.source(), page, locator, text.map().cited(page), reading));
    }
  }

  private IndexedPage page(
      String edition, int page, Optional<String> locator, String cited, PageReading reading) {
    if (names == null) {
      names = thesaurus.namesOnPages();
    }
    List<NameOnPage> found = names.of(reading);
    Set<String> concepts = new LinkedHashSet<>();
    for (NameOnPage name : found) {
      for (String concept : name.concepts()) {
        concepts.add(concept);
        concepts.addAll(thesaurus.broader(concept));
      }
    }
    return new IndexedPage(
        edition, page, concepts, reading, PackedPage.pack(locator, cited, found));
  }

  /**
   * Makes again the pages, of files that did not change, which a change of the vocabulary moves.
   *
   * @param changed the concepts whose labels or ancestors differ, or which only one of the two has
   * @return how many
   */
  int again(
      NoteIndex index, Thesaurus before, Set<String> changed, Changes changes, IndexUpdate update) {
    Set<Homonym> register = new HashSet<>(before.register());
    register.addAll(thesaurus.register());
    register.removeIf(h -> before.register().contains(h) && thesaurus.register().contains(h));
    if (changed.isEmpty() && register.isEmpty() || index.recordHits(RecordTypes.PAGES).isEmpty()) {
      return 0;
    }
    names = thesaurus.namesOnPages();
    Set<List<String>> labels = before.namesOnPages().wordsOf(changed, register);
    labels.addAll(names.wordsOf(changed, register));
    List<PageHit> hits = new ArrayList<>(index.pagesNaming(changed));
    hits.addAll(index.pagesHolding(labels));
    Set<String> done = new HashSet<>();
    for (PageHit hit : hits) {
      if (!changes.concerns(hit.file()) && done.add(hit.file() + '\n' + hit.page())) {
        PackedPage.Unpacked known = PackedPage.unpack(hit.payload());
        PageReading reading = PageReading.ofKept(index.pageText(hit.file(), hit.page()));
        update.replace(
            hit.file(),
            page(
                hit.edition(),
                hit.page(),
                known.locator().map(Locator::printed),
                known.cited(),
                reading));
      }
    }
    return done.size();
  }
}
