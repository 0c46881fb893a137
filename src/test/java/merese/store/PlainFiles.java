package merese.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import merese.model.PageText;
import merese.model.Work;

/**
 * Lets a test make files of a library that are byte for byte what the store would write, without
 * its lock, its history and its waiting for the disk.
 */
public final class PlainFiles {
  private PlainFiles() {}

  public static byte[] of(Work work) {
    return bytes(work, WorkCodec.WORK);
  }

  public static byte[] of(VocabularyFile file) {
    return bytes(file, VocabularyCodec.VOCABULARY);
  }

  public static byte[] of(PageText text) {
    return bytes(text, PageTextCodec.PAGES);
  }

  /** Where the store would put the text of an edition's pages. */
  public static Path place(Path library, PageText text) {
    return PagesFolder.of(library, text.source())
        .resolve(LibraryFolder.nameOfPages(text.file()) + FolderScan.ENDING);
  }

  private static <T> byte[] bytes(T value, Codec<T> codec) {
    return JsonPrinter.lines(ObjectBuilder.object(value, codec));
  }

  /**
   * Where the store would put the file of a work.
   *
   * @param works the folder of works
   * @param among how many works come into the library together with it
   */
  public static Path place(Path works, String id, int among) {
    Path folder = among > TakenNames.FLAT ? FileNames.shard(works, id) : works;
    return folder.resolve(id + FolderScan.ENDING);
  }

  /** The files of concepts that a new library starts with. */
  public static List<VocabularyFile> starter() {
    List<VocabularyFile> files = new ArrayList<>();
    for (String name : LibraryMaker.names(LibraryMaker.STARTER)) {
      boolean facet = !name.equals(FolderScan.HOMONYMS) && !name.equals(FolderScan.CHARACTERS);
      if (facet && name.endsWith(FolderScan.ENDING)) {
        Source source = Source.of(Path.of(name), LibraryMaker.resource(LibraryMaker.STARTER, name));
        files.add(Reading.decode(source, JsonReader.read(source), VocabularyCodec.VOCABULARY));
      }
    }
    return files;
  }
}
