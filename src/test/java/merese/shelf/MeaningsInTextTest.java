package merese.shelf;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import merese.store.LibraryFolder;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the texts of notes say that a term means, read from the index alone. */
class MeaningsInTextTest {
  @TempDir private Path folder;
  private LibraryFolder library;

  @BeforeEach
  void threeBooksWithOneTerm() throws IOException {
    SmallLibrary small = new SmallLibrary();
    small.book("Arden", 1900, "Of Glass", says("drawn band", "ring-split").text("p. 1"));
    small.book("Quarn", 1901, "Of Rings", says("drawn bands", "ring-bladed").text("p. 2"));
    small.book("Vole", 1902, "Of Necks", says("drawn band", "ring-bladed").text("p. 3"));
    library = small.write(folder);
  }

  @Test
  void ofTwoMeaningsTheOneThatMoreNotesHaveIsFirst() {
    try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
      assertEquals(
          List.of("ring-bladed", "ring-split"), List.copyOf(shelf.meaningsInText("Drawn bands")));
      assertEquals(List.of(), List.copyOf(shelf.meaningsInText("drawn")));
    }
  }

  @Test
  void ofAWorkThatHasBeenWrittenSinceTheFileTells() throws IOException {
    Shelf.open(library, Watcher.NONE).close();
    try (WritingShelf shelf = WritingShelf.open(library, Watcher.NONE)) {
      String file = "works/arden-1900.json";
      Path path = library.resolve(file);
      Files.writeString(path, Files.readString(path).replace("ring-split", "ring-bladed"));
      shelf.reread(file);
      assertEquals(List.of("ring-bladed"), List.copyOf(shelf.meaningsInText("drawn band")));
    }
  }
}
