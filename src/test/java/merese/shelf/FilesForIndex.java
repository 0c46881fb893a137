package merese.shelf;

import java.util.ArrayList;
import java.util.List;
import merese.model.PageText;
import merese.model.Work;
import merese.search.FileStamp;
import merese.search.IndexUpdate;
import merese.search.IndexedFile;
import merese.search.IndexedPage;
import merese.vocabulary.Thesaurus;

/** Lets a benchmark make of works and pages what the index takes, as the shelf does. */
public final class FilesForIndex {
  private final ForIndex maker;
  private final PagesForIndex pages;

  public FilesForIndex(Thesaurus thesaurus) {
    maker = new ForIndex(thesaurus);
    pages = new PagesForIndex(thesaurus);
  }

  /** Puts the pages of a text into an index. */
  public void add(String file, PageText text, IndexUpdate update) {
    pages.add(file, text, update);
  }

  public List<IndexedPage> of(PageText text) {
    List<IndexedPage> made = new ArrayList<>();
    for (int page = 1; page <= text.pages().size(); page++) {
      made.add(pages.page(text, page));
    }
    return made;
  }

  public IndexedFile of(Work work) {
    return maker.work(new FileStamp("works/" + work.id() + ".json", 1, 1, "", true), work);
  }

  public List<IndexedFile> of(List<Work> works) {
    List<IndexedFile> files = new ArrayList<>();
    works.forEach(work -> files.add(of(work)));
    return files;
  }
}
