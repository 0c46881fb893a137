package merese.shelf;

import java.util.ArrayList;
import java.util.List;
import merese.model.Work;
import merese.search.FileStamp;
import merese.search.IndexedFile;
import merese.vocabulary.Thesaurus;

/** Lets a benchmark make of works what the index takes, as the shelf does. */
public final class FilesForIndex {
  private final ForIndex maker;

  public FilesForIndex(Thesaurus thesaurus) {
    maker = new ForIndex(thesaurus);
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
