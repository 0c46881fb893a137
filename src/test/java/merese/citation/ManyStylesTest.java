package merese.citation;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every fortieth style of the catalogue cites every kind of source. */
class ManyStylesTest {

  static Stream<String> styles() {
    List<String> names = StyleCatalogue.load().names();
    return IntStream.range(0, names.size()).filter(i -> i % 40 == 7).mapToObj(names::get);
  }

  @ParameterizedTest
  @MethodSource("styles")
  void citesEveryKindOfSource(String name) {
    Citations style = Citations.inStyle(name, "");
    List<Source> sources = new ArrayList<>(OneOfEach.sources().values());
    sources.add(OneOfEach.essay());
    sources.add(OneOfEach.facsimile());
    List<String> texts = new ArrayList<>();
    for (Source source : sources) {
      texts.add(style.note(source, Invented.locators("pl. XII, fig. 3"), Output.HTML));
      assertTrue(texts.get(texts.size() - 1).contains("pl. XII, fig. 3"), texts::toString);
      texts.add(style.shortNote(source, Invented.locators(), Output.HTML));
    }
    style.bibliography(sources, Output.HTML).forEach(entry -> texts.add(entry.text()));
    assertAll(
        texts.stream()
            .map(
                text ->
                    () -> {
                      assertFalse(text.isBlank());
                      assertFalse(text.contains("zqlocator"), text);
                      assertFalse(text.chars().anyMatch(c -> c >= 0xFDD0 && c <= 0xFDEF), text);
                    }));
  }

  /** The one style of 2,845 that the processor cannot read: it formats a given name twice. */
  @Test
  void theStyleThatCannotBeReadSaysSo() {
    String name = "university-of-bucharest-faculty-of-law";
    CitationException e = assertThrows(CitationException.class, () -> Citations.inStyle(name, ""));
    assertTrue(e.getMessage().contains(name) && e.getMessage().contains("choose another style"));
  }
}
