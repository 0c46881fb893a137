package merese.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import merese.answer.Found.Hit;
import merese.answer.Found.Kind;
import merese.answer.Found.Passage;
import merese.answer.Found.Role;
import merese.answer.Found.Text;
import merese.search.FindQueryException;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.testing.DemoLibrary;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Questions to the demo library; what they must find was read out of its files. */
class FindTest {
  @TempDir private static Path folder;
  private static Shelf shelf;

  @BeforeAll
  static void openTheDemoLibrary() throws IOException {
    shelf = Shelf.open(DemoLibrary.copyTo(folder), Watcher.NONE);
  }

  @AfterAll
  static void close() {
    shelf.close();
  }

  private static Found find(String question) {
    return Find.answer(shelf, question, 1000);
  }

  /** The ids of what has everything that was asked for, sorted. */
  private static List<String> ids(String question) {
    return List.copyOf(
        new TreeSet<>(find(question).hits().stream().filter(Hit::all).map(Hit::id).toList()));
  }

  private static Hit first(String question) {
    return find(question).hits().get(0);
  }

  private static String marked(Text text) {
    StringBuilder marked = new StringBuilder(text.words());
    for (int i = text.marks().size() - 1; i >= 0; i--) {
      marked.insert(text.marks().get(i).end(), "»").insert(text.marks().get(i).start(), "«");
    }
    return marked.toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // a phrase stands in the words themselves, and not in the vocabulary's for them
        "\"wet hand\"                            | quenby-1926/n1",
        "\"hand wet\"                            | ``",
        "\"razor ring\"                          | hoeck-1964/n1",
        // fields of a note
        "term:razor                              | hoeck-1964/n1",
        "quote:moustache                         | ``",
        "quote:pincers OR quote:hospice          | cullet-newsletter-1994/n1",
        "claim:stragglers                        | imberry-1934/n3",
        "reading:sovereign                       | few-words-undated/n4",
        "quote:sovereign                         | few-words-undated/n4",
        "definition:rapping                      | foot-firing",
        "place:leith                             | pendry-1976/n5",
        // fields of a source hold for its notes
        "author:varnell \"molded rings\"         | varnell-1938/n2 varnell-1939/n1",
        "title:primer quote:milk                 | haskeld-1983/n6",
        "publisher:hythe is:source               | sallowfield-1957",
        "place:bath is:source                    | few-words-undated quenby-1977",
        "kind:thesis is:source                   | ashlock-1996",
        "source:saltrey-1824 mushrm              | saltrey-1824/n8",
        "source:imberry-* carefully              | ``",
        "year:1904 is:source                     | cruet-frame-1904",
        "year:1900..1912 is:source               | cruet-frame-1904 lutwyck-1912",
        "year:..1824 is:source                   | brackenford-directory-1817 saltrey-1824",
        "year:2019.. is:source                   | imray-2022 scarthwaite-2019",
        // concepts, with what is narrower: split rings are double, vertical, feathered ...
        "concept:stem-mercury-twist is:note      | imberry-1951/n3 lutwyck-1912/n3 sallowfield-1957/n4",
        "concept:ring-split source:norrish-1971  | norrish-1971/n4 norrish-1971/n5 norrish-1971/n6 norrish-1971/n7",
        "concept:\"mercury twist\" is:piece      | w-8",
        "concept:stem-twist is:piece             | w-2 w-8",
        "concept:ring-cushion-cut picture:yes    | ashlock-1996/n8 norrish-1971/n12",
        "concept:foot-lemon-squeezer picture:no  | osmere-1988/n10",
        // operators
        "term:merese source:dunlavin-1990        | dunlavin-1990/n7",
        "hospice OR rectory                      | cordwent-1955/n5 cullet-newsletter-1994/n1",
        "rummer -prunted -quote:square           | scarthwaite-2019",
        "wet AND (hand OR lismore)               | quenby-1926/n1 quenby-1977/n1",
        "wet AND hand AND lismore                | ``",
        // beginnings
        "term:mercur* is:note                    | imberry-1951/n3 sallowfield-1957/n4",
        "term:colou* term:twists is:note         | sallowfield-1957/n5",
        // folding (R7)
        "\"knife edged rings\" is:note           | quenby-1926/n1 quenby-1949/n2",
        "\"mold seam\" is:note                   | varnell-1938/n2",
        "\"mould seams\" is:note                 | varnell-1938/n2",
        "\"pied ourle\" quote:dessus             | brosserie-1974/n6",
        "quote:ÉCOSSE                            | ``",
        // the user's own
        "is:mine bishop's                        | untraced:bishop's ring",
        "is:mine umbrella                        | ``",
        "necklet                                 | untraced:necklet",
        "roman                                   | d-17",
      })
  void finds(String question, String expected) {
    assertEquals(
        expected.isEmpty() ? List.of() : List.of(expected.split(" (?=\\S*(?:-|/|:))", -1)),
        ids(question),
        question);
  }

  @Test
  void wordsThatOnlyTheVocabularyHasForANoteFindItAndSaySo() {
    Hit razor =
        find("sharp ring source:hoeck-1964").hits().stream()
            .filter(h -> h.id().equals("hoeck-1964/n1"))
            .findFirst()
            .orElseThrow();
    Hit meant = razor;
    assertEquals("“razor «ring»”", marked(meant.heading()));
    assertTrue(ids("knife-edged angular source:hoeck-1964").contains("hoeck-1964/n1"));
    Hit angular =
        find("angular source:hoeck-1964").hits().stream()
            .filter(h -> h.id().equals("hoeck-1964/n1"))
            .findFirst()
            .orElseThrow();
    Passage label = angular.passages().get(angular.passages().size() - 1);
    assertEquals(Role.LABEL, label.role());
    assertEquals("«angular» ring", marked(label.text()));
  }

  @Test
  void excludedWordsAreThoseOfTheNoteAndNotTheVocabularys() {
    List<String> ids = ids("term:razor -angular");
    assertEquals(List.of("hoeck-1964/n1"), ids);
    assertEquals(List.of(), ids("term:razor -habit"));
  }

  @Test
  void aNoteComesWithItsSourceItsPlacesInPhysicalOrderAndItsSentence() {
    Hit hit = first("\"wet hand\"");
    assertEquals(Kind.NOTE, hit.kind());
    assertEquals("Quenby 1926", hit.source().orElseThrow().reference());
    assertEquals("[pl. XII, fig. 3]", hit.pictured().toString());
    assertEquals("[p. 41]", hit.inWords().toString());
    assertEquals("ring-bladed", hit.concepts().get(0).id());
    assertEquals(
        "The knife-edged rings give a sure hold to a «wet hand», and are pleasanter to look upon"
            + " than to touch.",
        marked(hit.passages().get(0).text()));
    Hit imberry = first("pin-pricks rods source:imberry-1934 quote:rods");
    assertEquals("[pls XVIII–XXIII except XX]", imberry.pictured().toString());
  }

  @Test
  void foldedWordsAreMarkedAsPrinted() {
    assertEquals(
        "Molded rings are one with the wall, and a «mold seam» will often march straight over"
            + " them.",
        marked(first("\"mould seams\"").passages().get(0).text()));
  }

  @Test
  void theUsersOwnWordsAreMarkedAsTheirs() {
    Hit reading = first("reading:sovereign");
    assertEquals(Role.MY_READING, reading.passages().get(0).role());
    assertTrue(reading.passages().get(0).mine());
    assertTrue(first("\"hollow behind and none\"").passages().get(0).mine());
    assertEquals(Kind.EXPERIENCE, first("\"hollow behind and none\"").kind());
    assertEquals(Kind.COINAGE, first("Ruddick").kind());
    assertEquals(Kind.UNTRACED, first("necklet").kind());
    assertTrue(first("pencilled number").passages().get(0).mine());
    Passage source = first("\"wet hand\"").passages().get(0);
    assertTrue(!source.mine());
  }

  @Test
  void whatHasAllWordsComesBeforeWhatHasSomeAndBothAreCounted() {
    Found found = Find.answer(shelf, "wet hand", 3);
    assertEquals(1, found.withAll());
    assertEquals(3, found.hits().size());
    assertEquals(List.of(true, false, false), found.hits().stream().map(Hit::all).toList());
    assertEquals(find("wet hand").hits().size(), found.withAll() + found.withSome());
    List<Hit> hits = find("bladed ring").hits();
    assertTrue(find("bladed ring").withAll() > 1);
    assertEquals(hits.size(), hits.stream().map(h -> h.kind() + h.id()).distinct().count());
  }

  @Nested
  class AMistypedWord {
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        quoteCharacter = '`',
        value = {
          "strawbery diamond         | strawberry diamond",
          "moldued body              | moulded body",
          "term:razer                | term:razor",
          "author:tresick ring       | author:tressick ring",
          "pontill (ground OR ruogh) | pontil (ground OR rough)",
          "knife-egded rings         | knife-edged rings",
        })
    void isPutRightFromTheIndexInItsUsualSpelling(String typed, String meant) {
      assertEquals(Optional.of(meant), find(typed).didYouMean());
      assertTrue(find(meant).withAll() > 0);
    }

    @Test
    void isLeftAloneWhereNothingIsNearOrNothingWouldBeFound() {
      assertEquals(Optional.empty(), find("qqqqqqqqq").didYouMean());
      assertEquals(Optional.empty(), find("/qqqqq/wwwwwww").didYouMean());
      find("/etc/passwd"); // two words in one place, both like others
      assertEquals(Optional.empty(), find("strawbery AND sideboard").didYouMean());
      assertEquals(Optional.empty(), find("strawberry diamond").didYouMean());
    }
  }

  @Test
  void anUnknownConceptOrSourceIsRefusedWithThePlaceAndWhatIsNear() {
    FindQueryException concept =
        assertThrows(FindQueryException.class, () -> find("wet concept:ring-blded"));
    assertEquals(12, concept.offset());
    assertTrue(concept.getMessage().contains("ring-bladed"), concept.getMessage());
    FindQueryException source =
        assertThrows(FindQueryException.class, () -> find("source:quenby-1962"));
    assertEquals(7, source.offset());
    assertTrue(source.getMessage().contains("did you mean quenby-19"), source.getMessage());
  }

  @Test
  void questionsOfTheGreatestSizeAreAnswered() {
    StringBuilder not = new StringBuilder("ring");
    for (int i = 0; i < 59; i++) {
      not.append(" -word").append((char) ('a' + i % 26)).append(i);
    }
    assertTrue(find(not.toString()).withAll() > 10);
    assertTrue(find("a".repeat(300)).isEmpty());
    assertTrue(find("r*").withAll() > 10);
    assertTrue(find("\"" + "ring ".repeat(190) + "\"").isEmpty());
    assertTrue(find("ring\u0000\u0007 \u202E").withAll() > 10);
  }
}
