package merese.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import merese.model.Concept;
import org.apache.lucene.analysis.core.KeywordTokenizer;
import org.apache.lucene.analysis.en.EnglishMinimalStemFilter;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FoldingTest {
  /** Spellings that the rules of matching name as one, and the American ones (common knowledge). */
  @ParameterizedTest
  @CsvSource({
    "KNIFE-EDGED RINGS, knife edged ring",
    "Triple Ring, triple RINGS",
    "TRIPLE RING, triple ring",
    "INCISED RING, incised ring",
    "triple-ringed, triple ring",
    "ringed neck, ring neck",
    "mould-blown, mould blown",
    "mould‑blown, mould–blown",
    "mould—blown, mould−blown",
    "ship's decanter, ships decanter",
    "ship’s decanter, ship's decanter",
    "ship´s decanter, ships' decanters",
    "bull’s-eye, bull's eye",
    "mould, mold",
    "mouldings, molding",
    "remoulded, remolded",
    "colour, color",
    "coloured, colored",
    "colourless, colorless",
    "centre, center",
    "centres, centers",
    "centred, centered",
    "centring, centering",
    "centrepiece, centerpiece",
    "disc, disk",
    "discs, disks",
    "verre églomisé, VERRE EGLOMISE",
    "fougère, fouge\u0300re",
    "Bœuf, boeuf",
    "İncised rİng, incised ring",
    "punties, punty",
    "stoppers, stopper",
    "cut­ting, cutting",
    "'sharp' \"ring\", sharp ring",
    "bell (body), bell body",
  })
  void foldsToTheSame(String one, String other) {
    assertEquals(Folding.key(one), Folding.key(other));
  }

  @ParameterizedTest
  @CsvSource({
    "ring, string",
    "ringed, ringing",
    "disc, discovery",
    "centre, central",
    "bladed, blade",
    "mouldblown, mould blown",
    "glas, glass",
    "foot, feet",
  })
  void keepsApart(String one, String other) {
    assertNotEquals(Folding.key(one), Folding.key(other));
  }

  @Test
  void wordsOfATextComeInTheirOrder() {
    assertEquals(
        List.of("a", "triple", "ring", "quart"), Folding.words("“A triple-ringed quart”,"));
    assertEquals(List.of("c", "1790", "1810"), Folding.words("c. 1790–1810"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "—", "…!", "'", "\u0301", "\u00ad"})
  void aTextWithoutLettersHasNoWords(String text) {
    assertEquals(List.of(), Folding.words(text));
    assertEquals("", Folding.key(text));
    assertEquals("", Folding.word(text));
  }

  @Test
  void everyWordComesWithItsPlaceInThePrintedText() {
    String text = "The ship’s “triple-ringed” fouge\u0300res";
    List<String> printed = new ArrayList<>();
    Folding.scan(
        text, (folded, start, end) -> printed.add(folded + "=" + text.substring(start, end)));
    assertEquals(
        List.of("the=The", "ship=ship’s", "triple=triple", "ring=ringed", "fougere=fouge\u0300res"),
        printed);
  }

  @Test
  void aTokenFoldsAsTheSameWordInATextDoes() throws IOException {
    for (String word : wordsOfTheTrade()) {
      assertEquals(Folding.words(word), List.of(Folding.word(word)));
    }
  }

  @Test
  void foldingTwiceChangesNothingButTheNumber() throws IOException {
    // The S-stemmer itself is not idempotent where a word ends in two plurals; none of ours does.
    for (String word : wordsOfTheTrade()) {
      assertEquals(Folding.word(word), Folding.word(Folding.word(word)), word);
    }
  }

  /** Reference: Lucene's EnglishMinimalStemFilter, which implements Harman's S-stemmer. */
  @Test
  void theNumberIsTakenOffAsHarmansStemmerDoes() throws IOException {
    Set<String> words = wordsOfTheTrade();
    words.addAll(
        List.of(
            "s",
            "is",
            "as",
            "us",
            "ies",
            "aes",
            "ees",
            "oes",
            "dies",
            "eies",
            "aies",
            "bies",
            "series",
            "species",
            "glasses",
            "glass",
            "bosses",
            "boss",
            "axes",
            "matrices",
            "vases",
            "shoes",
            "toes",
            "trees",
            "knees",
            "reliquaries",
            "cemeteries",
            "calories",
            "movies",
            "bus",
            "lotus",
            "crocus",
            "abacus",
            "corpus",
            "decanters",
            "carafes",
            "cruets",
            "lenses",
            "lens",
            "ies",
            "pies",
            "queries",
            "zombeies",
            "zombaies",
            "leaves",
            "feet",
            "stemses",
            "sss",
            "ess",
            "xes",
            "1820s",
            "xs"));
    assertEquals(true, words.size() > 500, "too few words to compare");
    for (String word : words) {
      StringBuilder ours = new StringBuilder(word);
      Folding.takeOffNumber(ours);
      assertEquals(lucene(word), ours.toString(), word);
    }
  }

  @Test
  void everyLabelFoldsToItsOwnPlural() {
    for (Concept concept : Vocabularies.starter().concepts) {
      List<Concept.Label> labels = new ArrayList<>(concept.alternatives());
      labels.add(concept.preferred());
      for (Concept.Label label : labels) {
        // A final -ee has a plural that Harman's rules leave alone.
        if (!label.text().matches(".*(s|y|ee|ringed)")) {
          assertEquals(Folding.key(label.text()), Folding.key(label.text() + "s"), label::text);
        }
        assertEquals(Folding.key(label.text()), Folding.key(label.text().toUpperCase(Locale.ROOT)));
      }
    }
  }

  /** Against Java's tables of Unicode; the letters left out are ours, and tested above. */
  @Test
  void takesAccentsOffAsUnicodeTakesLettersApart() {
    for (char c = 0x80; c < 0x250; c++) {
      if (Character.isLetterOrDigit(c) && "ßæÆœŒøØđĐðÐþÞłŁı".indexOf(c) < 0) {
        String parts = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKD);
        StringBuilder letters = new StringBuilder();
        parts
            .codePoints()
            .filter(Character::isLetterOrDigit)
            .forEach(part -> letters.appendCodePoint(Character.toLowerCase(part)));
        assertEquals(letters.toString(), Folding.word(String.valueOf(c)), parts);
      }
    }
  }

  /** Every word of the starter table: labels, definitions, tests. */
  private static Set<String> wordsOfTheTrade() throws IOException {
    Path table = Path.of("src/test/resources/merese/vocabulary/starter-thesaurus.md");
    Set<String> words = new TreeSet<>();
    for (String word : Files.readString(table).toLowerCase(Locale.ROOT).split("[^a-z]+")) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    return words;
  }

  private static String lucene(String word) throws IOException {
    KeywordTokenizer source = new KeywordTokenizer();
    source.setReader(new StringReader(word));
    try (EnglishMinimalStemFilter filter = new EnglishMinimalStemFilter(source)) {
      filter.reset();
      filter.incrementToken();
      return filter.getAttribute(CharTermAttribute.class).toString();
    }
  }
}
