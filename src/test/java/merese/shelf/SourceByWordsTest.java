package merese.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import merese.vocabulary.Folding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A source that words single out is found by the index as by looking at all sources. */
class SourceByWordsTest {
  @TempDir private Path folder;

  /** Each of all sources held against the words. */
  private static List<String> among(List<SourceAddress> all, String typed) {
    for (SourceAddress each : all) {
      if (each.key().equals(typed)) {
        return List.of(typed);
      }
    }
    List<String> words = Folding.words(typed);
    int best = all.stream().mapToInt(each -> each.answersTo(words)).max().orElse(0);
    return all.stream()
        .filter(each -> best > 0 && each.answersTo(words) == best)
        .sorted(
            Comparator.comparing((SourceAddress s) -> s.year().orElse(Integer.MAX_VALUE))
                .thenComparing(SourceAddress::key))
        .map(SourceAddress::key)
        .toList();
  }

  private static Set<String> questions(List<SourceAddress> all) {
    Set<String> questions = new LinkedHashSet<>(List.of("qqqq", "quenby qqqq", "the of"));
    for (SourceAddress each : all) {
      List<String> words = List.copyOf(each.ownWords());
      questions.add(each.key());
      questions.add(each.reference());
      for (int i = 0; i < words.size(); i++) {
        String word = words.get(i);
        String next = words.get((i + 1) % words.size());
        questions.add(word);
        questions.add(word + " " + next);
        questions.add(word.substring(0, 1));
        questions.add(word.substring(0, Math.min(3, word.length())) + " " + next);
      }
    }
    return questions;
  }

  private static void holdsToAll(WritingShelf shelf) {
    List<SourceAddress> all = shelf.sources();
    List<String> several = new ArrayList<>();
    for (String typed : questions(all)) {
      List<String> found = shelf.find(typed).stream().map(SourceAddress::key).toList();
      assertEquals(among(all, typed), found, typed);
      if (found.size() > 1) {
        several.add(typed);
      }
    }
    assertTrue(several.size() > 20, several.toString());
  }

  @Test
  void byEachOfItsWordsAndByTheirBeginnings() throws IOException {
    LibraryFolder library = DemoLibrary.copyTo(folder);
    Shelf.open(library, Watcher.NONE).close();
    try (WritingShelf shelf = WritingShelf.open(library, Watcher.NONE)) {
      holdsToAll(shelf);
      assertEquals(List.of(), shelf.find(" - "));
    }
  }

  @Test
  void alsoWhatWasWrittenSinceTheIndexWasMade() throws IOException {
    LibraryFolder library = DemoLibrary.copyTo(folder);
    Shelf.open(library, Watcher.NONE).close();
    Path work = library.path().resolve("works/quenby-neck-and-stopper.json");
    String text = Files.readString(work);
    Files.writeString(
        work, text.replaceFirst("\"title\": \"[^\"]*\"", "\"title\": \"Zymotic Zeal\""));
    try (WritingShelf shelf = WritingShelf.open(library, Watcher.NONE)) {
      holdsToAll(shelf);
      assertTrue(shelf.find("zymotic").size() >= 1);
    }
  }
}
