package merese.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamesOnPagesTest {
  private static final NamesOnPages STARTER = Vocabularies.starterThesaurus().namesOnPages();

  private static List<NameOnPage> names(String... lines) {
    return STARTER.of(PageReading.of(List.of(lines)));
  }

  private static NameOnPage only(String... lines) {
    List<NameOnPage> names = names(lines);
    assertEquals(1, names.size(), names.toString());
    return names.get(0);
  }

  @Test
  void aNameIsFoundInTheWordsThatStandThere() {
    NameOnPage name = only("it has Knife-edged RINGS about it");

    assertEquals("Knife-edged RINGS", name.words());
    assertEquals(List.of("ring-bladed"), name.concepts());
    assertFalse(name.loose());
    assertFalse(name.doubtful());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "three knife-/edged rings|knife-edged rings|ring-bladed",
        "three knife-edged/rings|knife-edged rings|ring-bladed",
        "three bladed neck rings|bladed neck rings|ring-bladed",
        "a bladed neck-/ring|bladed neck-ring|ring-bladed",
        "with annu-/lated rings|annulated rings|ring-annulated",
        "it is mould-/blown|mould-blown|form-mould-blown",
        "a ſtring rim|ſtring rim|string-rim"
      })
  void soAreNamesAcrossTheEndOfALine(String page, String words, String concept) {
    NameOnPage name = only(page.split("/"));

    assertEquals(words, name.words());
    assertEquals(List.of(concept), name.concepts());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "with annu-|lated rings|annulated rings|ring-annulated",
        "three knife-|edged rings|knife-edged rings|ring-bladed",
        "a bladed|neck ring|bladed neck ring|ring-bladed",
        "a bladed neck|ring|bladed neck ring|ring-bladed",
        "a blaclecl|ring of|blaclecl ring|ring-bladed"
      })
  void soAreNamesOverTheEndOfAPage(String page, String next, String words, String concept) {
    List<NameOnPage> names = STARTER.of(PageReading.of(List.of(page), List.of("VII", next)));

    assertEquals(List.of(words), names.stream().map(NameOnPage::words).toList());
    assertEquals(List.of(concept), names.get(0).concepts());
  }

  @Test
  void whatStandsOnTheNextPageAloneIsNotOnThisOne() {
    assertEquals(
        List.of(),
        STARTER.of(PageReading.of(List.of("about the"), List.of("neck bladed rings with"))));
  }

  @Test
  void aNameWithinALongerOneIsNoOther() {
    assertEquals(
        List.of("ground pontil"),
        names("a ground pontil").stream().map(NameOnPage::words).toList());
  }

  @Test
  void aWordOfTheRegisterHasAllItsMeaningsAndIsDoubtful() {
    NameOnPage name = only("a plain collar about it");

    assertTrue(name.doubtful());
    assertTrue(
        name.concepts().containsAll(Set.of("neck-ring", "merese", "metal-collar")),
        name.toString());
  }

  @Test
  void whatWasReadWronglyIsFoundLoosely() {
    NameOnPage name = only("three annulatecl rings");

    assertEquals("annulatecl rings", name.words());
    assertTrue(name.loose());
  }

  @Test
  void aRingOfAnySortIsNoNeckRing() {
    assertEquals(List.of(), names("the ring of a key, a wedding ring"));
    assertEquals(List.of("neck-ring"), only("a neck ring").concepts());
  }

  @Test
  void aShortWordAloneIsNotFoundLoosely() {
    assertEquals(
        List.of(), names("the soot of the furnace").stream().filter(NameOnPage::loose).toList());
  }
}
