package merese.shelf;

import java.util.ArrayList;
import java.util.List;
import merese.model.Work;
import merese.search.FileStamp;
import merese.search.IndexedFile;
import merese.vocabulary.Thesaurus;

/** Lets a benchmark make of works what the index takes, as the shelf does. */
public final class FilesForIndex {
  private FilesForIndex() {}

  public static IndexedFile of(Thesaurus thesaurus, Work work) {
    FileStamp stamp = new FileStamp("works/" + work.id() + ".json", 1, 1, "", true);
    return new ForIndex(thesaurus).work(stamp, work);
  }

  public static List<IndexedFile> of(Thesaurus thesaurus, List<Work> works) {
    List<IndexedFile> files = new ArrayList<>();
    works.forEach(work -> files.add(of(thesaurus, work)));
    return files;
  }
}
