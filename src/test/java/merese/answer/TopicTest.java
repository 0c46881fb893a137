package merese.answer;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import merese.shelf.Shelf;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TopicTest {
  @TempDir private Path folder;
  private Shelf shelf;

  @BeforeEach
  void aLibrary() {
    shelf =
        new SmallLibrary()
            .book(
                "Quenby", 1926, "Neck and Stopper", says("bladed ring", "ring-bladed").text("p. 1"))
            .open(folder);
  }

  @AfterEach
  void close() {
    shelf.close();
  }

  private List<String> concepts(String... terms) {
    return Topic.of(shelf, List.of(terms), Optional.empty()).stream().map(Topic::concept).toList();
  }

  private String refusal(String... terms) {
    return assertThrows(TermException.class, () -> concepts(terms)).getMessage();
  }

  @Test
  void isATermOrTheIdOfAConceptAndStandsOnce() {
    assertEquals(
        List.of("ring-bladed", "stopper-target"),
        concepts("Bladed rings", "stopper-target", "ring-bladed"));
  }

  @Test
  void isNotGuessedAt() {
    String said = refusal("collar");
    assertTrue(said.startsWith("“collar”: the word is used for more than one thing"), said);
    assertTrue(said.contains("ring-wavy (wavy ring)"), said);
  }

  @Test
  void thatIsUnknownIsSaidWithWhatIsNear() {
    assertTrue(refusal("blade ring").contains("near it: "), refusal("blade ring"));
    assertTrue(refusal("zzz", "ring").contains("no word of the vocabulary"));
  }

  @Test
  void ofTwoWordsMustBeQuoted() {
    assertTrue(refusal("target", "stopper").contains("\"target stopper\""));
  }

  @Test
  void mayBeAFacetWhereThatIsAllowed() {
    List<Topic> topics = Topic.withFacets(shelf, List.of("ring"), Optional.empty());
    assertTrue(topics.stream().anyMatch(t -> t.concept().equals("ring-bladed")));
    assertTrue(topics.stream().noneMatch(t -> t.concept().equals("stopper-target")));
  }
}
