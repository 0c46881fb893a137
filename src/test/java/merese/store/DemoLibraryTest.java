package merese.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import merese.model.Claim;
import merese.model.Edition;
import merese.model.Note;
import merese.model.SourceKind;
import merese.model.Work;
import org.junit.jupiter.api.Test;

/** The demo library is rich enough to learn from, and sound. */
class DemoLibraryTest {
  private final LibraryFolder library = LibraryFolder.open(Path.of("library"));

  private List<Work> works() {
    return library.scan().stream()
        .filter(file -> file.kind() == LibraryFile.Kind.WORK)
        .map(file -> library.readWork(file.path()).value())
        .toList();
  }

  private Stream<Note> notes() {
    return works().stream()
        .flatMap(work -> work.editions().stream())
        .map(Edition::notes)
        .flatMap(List::stream);
  }

  @Test
  void hasNothingWrongInIt() {
    assertEquals(List.of(), library.check());
  }

  @Test
  void hasWorksOfEveryKindAndSomeThreeHundredNotes() {
    Set<SourceKind> kinds = EnumSet.noneOf(SourceKind.class);
    works().forEach(work -> kinds.add(work.kind()));
    assertEquals(EnumSet.allOf(SourceKind.class), kinds);
    assertTrue(works().size() >= 30, "works: " + works().size());
    assertTrue(notes().count() >= 300, "notes: " + notes().count());
  }

  @Test
  void neverWordsTwoNotesAlike() {
    Map<String, String> seen = new HashMap<>();
    notes()
        .forEach(
            note ->
                Stream.of(
                        note.quotation().stream(),
                        note.reading().stream(),
                        note.claims().stream().map(Claim::words).filter(w -> w.length() > 40))
                    .flatMap(words -> words)
                    .forEach(
                        words ->
                            assertEquals(
                                null, seen.put(words, note.id()), "said twice: " + words)));
  }
}
