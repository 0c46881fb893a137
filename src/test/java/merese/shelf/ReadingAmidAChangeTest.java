package merese.shelf;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import merese.model.Edition;
import merese.model.Work;
import merese.store.ChangeSet;
import merese.store.LibraryFolder;
import merese.store.Stored;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingAmidAChangeTest {
  @TempDir Path dir;

  private LibraryFolder library() {
    return new SmallLibrary()
        .book("Calloway", 1930, "Collars", says("bladed ring", "ring-bladed").text("p. 1"))
        .book("Tulk", 1931, "Feet", says("knife ring", "ring-bladed").text("p. 2"))
        .write(dir);
  }

  /** Makes one work of the two, as somebody else would while the index is being made. */
  private static void merge(LibraryFolder library) {
    Stored<Work> kept = library.findWork("calloway-1930").orElseThrow();
    Stored<Work> gone = library.findWork("tulk-1931").orElseThrow();
    List<Edition> both = new ArrayList<>(kept.value().editions());
    both.addAll(gone.value().editions());
    try (ChangeSet change = library.change("a test")) {
      change.save(kept, kept.value().withEditions(both), List.of(gone));
      change.delete(gone);
      change.commit();
    }
  }

  /** Meddles once, before the last file is read, which is the second work's. */
  private static final class Meddling implements Watcher {
    private final Runnable change;
    private int total;
    private boolean done;

    Meddling(Runnable change) {
      this.change = change;
    }

    @Override
    public void start(int files) {
      total = files;
    }

    @Override
    public void at(int files) {
      if (!done && files == total - 1) {
        done = true;
        change.run();
      }
    }
  }

  @Test
  void anIndexMissesNoWorkThatMovedWhileItWasMade() {
    LibraryFolder library = library();
    Meddling meddling = new Meddling(() -> merge(library));
    try (Shelf shelf = Shelf.open(library, meddling)) {
      assertTrue(meddling.done);
      assertEquals(
          List.of("calloway-1930 of calloway-1930", "tulk-1931 of calloway-1930"),
          shelf.sources().stream().map(s -> s.key() + " of " + s.work().id()).sorted().toList());
    }
  }

  @Test
  void anIndexHasAllOfAChangeOrNothing() {
    LibraryFolder library = library();
    Meddling meddling =
        new Meddling(
            () -> {
              try (ChangeSet change = library.change("a test")) {
                for (String id : List.of("calloway-1930", "tulk-1931")) {
                  Stored<Work> work = library.findWork(id).orElseThrow();
                  change.save(work, work.value().withAlternateTitles(List.of("New")));
                }
                change.commit();
              }
            });
    try (Shelf shelf = Shelf.open(library, meddling)) {
      assertTrue(meddling.done);
      assertEquals(
          List.of(List.of("New"), List.of("New")),
          shelf.sources().stream().map(s -> s.work().alternateTitles()).toList());
    }
  }

  @Test
  void recordsThatDescribeNoSourceStopNoQuestion() throws IOException {
    LibraryFolder library = library();
    Shelf.open(library, Watcher.NONE).close();
    Files.writeString(library.resolve("received.json"), "{");
    try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
      assertEquals(List.of(), shelf.upToDate().opened());
      assertEquals(2, shelf.sources().size());
    }
  }
}
