package merese.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import merese.search.FindQuery;
import merese.store.LibraryFolder;
import merese.testing.UnionList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Plain words are looked for on pages by a way of their own: it finds what the usual way finds, and
 * the first pages are the first of all.
 */
class PagesOfPlainWordsTest {
  /** Takes out nothing, and is no plain word. */
  private static final String USUAL_WAY = " NOT wordthatisnowhere";

  @TempDir private Path folder;

  @Test
  void areThoseThatAreFoundPageByPage() throws IOException {
    UnionList list = UnionList.of(400, 400, 1_500);
    LibraryFolder library = list.write(folder);
    replaceAText(library);
    Random random = new Random(5);
    List<String> questions = new ArrayList<>(List.of("stem", "is:page stem", "stem stem"));
    for (int i = 0; i < 60; i++) {
      questions.add(list.word(random) + " " + list.word(random));
      questions.add("is:page " + list.word(random) + " " + list.word(random) + " stem");
    }
    int many = 0;
    try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
      for (String question : questions) {
        Finding all = shelf.find(FindQuery.parse(question), Integer.MAX_VALUE);
        assertEquals(
            lines(shelf.find(FindQuery.parse(question + USUAL_WAY), Integer.MAX_VALUE)),
            lines(all),
            question);
        assertEquals(all.pages().size(), all.allPages(), question);
        many += all.allPages() > 200 ? 1 : 0;
        for (int limit : new int[] {1, 20, 90}) {
          Finding some = shelf.find(FindQuery.parse(question), limit);
          assertEquals(first(limit, lines(all)), lines(some), question);
          assertEquals(all.allPages(), some.allPages(), question);
        }
      }
    }
    assertTrue(many > 20, "questions that many pages answer are among them: " + many);
  }

  /** Leaves a segment more, and pages that are gone. */
  private static void replaceAText(LibraryFolder library) throws IOException {
    Shelf.open(library, Watcher.NONE).close();
    try (Stream<Path> files = Files.walk(library.resolve("pages"))) {
      Path text = files.filter(Files::isRegularFile).sorted().toList().get(3);
      String before = Files.readString(text);
      String now = before.replace(" stem ", " ");
      assertNotEquals(before, now);
      Files.writeString(text, now);
    }
  }

  private static List<String> first(int limit, List<String> lines) {
    return lines.subList(0, Math.min(limit, lines.size()));
  }

  private static List<String> lines(Finding finding) {
    return finding.pages().stream().map(p -> p.file() + " " + p.page()).toList();
  }
}
