package merese.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.model.Concept;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MisreadWordsTest {
  private static final Path AMBIGUITIES =
      Path.of("src/test/resources/merese/checks/recognition/eng.unicharambigs");

  private static PageWord read(String word) {
    return PageReading.of(List.of(word)).runs().get(0).words().get(0);
  }

  /** Unicode's own compatibility decomposition is the reference, by java.text.Normalizer. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "ﬁniſhed",
        "ﬂuted",
        "ﬀ",
        "oﬃce",
        "baﬄe",
        "ﬆem",
        "ﬅem",
        "ſtopper",
        "glaſs",
        "ſhouldered"
      })
  void whatUnicodeTakesApartStandsExactly(String word) {
    String apart = Normalizer.normalize(word, Normalizer.Form.NFKC);

    assertNotEquals(word, apart);
    assertEquals(Folding.word(apart), read(word).exact());
  }

  /** As English catalogues file them; Unicode has no decomposition of these two. */
  @ParameterizedTest
  @CsvSource({"annulæ, annulae", "Bœuf, boeuf"})
  void lettersJoinedInPrintAreTwo(String word, String apart) {
    assertEquals(Folding.word(apart), read(word).exact());
  }

  /** English has no word that begins so (from memory); each is a long s that was taken for an f. */
  @ParameterizedTest
  @CsvSource({
    "ftem, stem",
    "fquare, square",
    "fhape, shape",
    "fcrew, screw",
    "fmall, small",
    "fwirl, swirl",
    "fpire, spire",
    "fkirt, skirt",
    "fnake, snake"
  })
  void anFThatNoWordBeginsWithIsALongS(String misread, String word) {
    assertEquals(Folding.word(word), read(misread).exact());
  }

  @ParameterizedTest
  @CsvSource({
    "glafs, glass",
    "glaffes, glasses",
    "decanterf, decanters",
    "decanterf, decanter",
    "reticulatecl, reticulated",
    "rnerese, merese",
    "vvine, wine",
    "sphericai, spherical",
    "1ozenge, lozenge",
    "Iozenge, lozenge",
    "rnoulded, molded",
    "rnouldecl, moulded",
    "c0llar, collar",
    "cliamond, diamond",
    "neek, neck",
    "liollow, hollow",
    "roiind, round"
  })
  void lettersTakenForOthersAreLooselyTheSame(String misread, String word) {
    assertEquals(MisreadWords.loose(Folding.word(word)), read(misread).loose());
  }

  @ParameterizedTest
  @CsvSource({"foot, soot", "fold, sold", "clear, dear", "modem, modern", "flute, slute"})
  void wordsThatAreOnlyLooselyTheSameStayApartExactly(String a, String b) {
    assertNotEquals(read(a).exact(), read(b).exact());
    assertEquals(read(a).loose(), read(b).loose());
  }

  @ParameterizedTest
  @CsvSource({"rib, lib", "fit, sit", "bowl, bell", "stem, stand", "neck, knop", "ring, rim"})
  void otherWordsStayApartInBoth(String a, String b) {
    assertNotEquals(read(a).exact(), read(b).exact());
    assertNotEquals(read(a).loose(), read(b).loose());
  }

  /**
   * Which of the pairs in Tesseract's list are folded: those of one letter and two that look alike
   * in print, and c and e. The others would make too many words the same, or are marks and accents.
   */
  @Test
  void thesePairsOfThePublishedListAreTheSame() throws IOException {
    Set<String> same = new TreeSet<>();
    for (String line : Files.readAllLines(AMBIGUITIES)) {
      String[] fields = line.split("\t");
      if (fields.length == 5) {
        String wrong = fields[1].replace(" ", "").toLowerCase(Locale.ROOT);
        String right = fields[3].replace(" ", "").toLowerCase(Locale.ROOT);
        boolean letters =
            (wrong + right).chars().allMatch(c -> c < 128 && Character.isLetterOrDigit(c));
        if (letters
            && MisreadWords.loose("gg" + wrong + "gg")
                .equals(MisreadWords.loose("gg" + right + "gg"))) {
          same.add(wrong.compareTo(right) < 0 ? wrong + " " + right : right + " " + wrong);
        }
      }
    }
    assertEquals(Set.of("m rn", "cl d", "h li", "h ll", "ii u", "vv w", "c e", "0 o"), same);
  }

  /** Words of the starter vocabulary itself: what a glass writer would see taken for each other. */
  @Test
  void fewWordsOfTheTradeAreLooselyTheSame() {
    Map<String, Set<String>> byLoose = new TreeMap<>();
    for (Concept concept : Vocabularies.starterThesaurus().concepts()) {
      List<String> texts =
          new ArrayList<>(List.of(concept.definition(), concept.preferred().text()));
      concept.alternatives().forEach(l -> texts.add(l.text()));
      concept.hidden().forEach(l -> texts.add(l.text()));
      for (String text : texts) {
        for (String word : Folding.words(text)) {
          byLoose.computeIfAbsent(MisreadWords.loose(word), k -> new TreeSet<>()).add(word);
        }
      }
    }
    List<Set<String>> taken = byLoose.values().stream().filter(s -> s.size() > 1).toList();

    assertEquals(List.of(), taken);
  }

  @Test
  void aFoldedWordAndTheWordOnAPageHaveOneLooseForm() {
    for (Concept concept : Vocabularies.starterThesaurus().concepts()) {
      for (PageWord word :
          PageReading.of(List.of(concept.preferred().text())).runs().get(0).words()) {
        assertEquals(MisreadWords.loose(word.exact()), word.loose(), concept.preferred().text());
      }
    }
  }
}
