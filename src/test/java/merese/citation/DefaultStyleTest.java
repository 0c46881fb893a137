package merese.citation;

import static merese.citation.Invented.locators;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import merese.model.SourceKind;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every kind of source in the default style. The sources are invented, the texts read by eye. */
class DefaultStyleTest {
  private static Citations mhra;

  @BeforeAll
  static void readStyle() {
    mhra = Citations.inStyle(StyleCatalogue.DEFAULT, "en-GB");
  }

  record Expected(String place, String note, String shortNote, String entry) {}

  private static Expected expected(SourceKind kind) {
    return switch (kind) {
      case MONOGRAPH ->
          new Expected(
              "pl. XII, fig. 3",
              "Maud Quenby, *Neck and Stopper*, 2nd edn (Harrowgate Press, 1949), pl. XII, fig. 3.",
              "Quenby, *Neck and Stopper*, pl. XII, fig. 3.",
              "Quenby, Maud, *Neck and Stopper*, 2nd edn (Harrowgate Press, 1949)");
      case JOURNAL_ARTICLE ->
          new Expected(
              "p. 7",
              "Edith Farrow, ‘Triple Rings and Their Makers’, *Cullet Society Journal*, 12 (1988),"
                  + " pp. 5–20 (p. 7).",
              "Farrow, ‘Triple Rings and Their Makers’, p. 7.",
              "Farrow, Edith, ‘Triple Rings and Their Makers’, *Cullet Society Journal*, 12 (1988),"
                  + " pp. 5–20");
      case NEWSLETTER ->
          new Expected(
              "p. [3]",
              "‘A Ringed Cruet’, *Lantern Street Newsletter*, no. 48 (May 1998), p. \\[3\\].",
              "‘A Ringed Cruet’, p. \\[3\\].",
              "‘A Ringed Cruet’, *Lantern Street Newsletter*, no. 48 (May 1998)");
      case EXHIBITION_CATALOGUE ->
          new Expected(
              "cat. no. 45a",
              "*Clear and Cut*, ed. by Ralph Penhallow (Wickmoor Gallery, 1977), cat. no. 45a.",
              "Penhallow, *Clear and Cut*, cat. no. 45a.",
              "Penhallow, Ralph (ed.), *Clear and Cut* (Wickmoor Gallery, 1977). Exhibition,"
                  + " Wickmoor Gallery, 3 May–1 June 1977.");
      case MUSEUM_CATALOGUE ->
          new Expected(
              "cat. nos 3–5",
              "Ashlode Museum, *Drinking Glasses in the Ashlode Museum*, Ashlode Museum Handbooks,"
                  + " 4 (Ashlode Museum, 1962), cat. nos 3–5.",
              "Ashlode Museum, *Drinking Glasses in the Ashlode Museum*, cat. nos 3–5.",
              "Ashlode Museum, *Drinking Glasses in the Ashlode Museum*, Ashlode Museum Handbooks,"
                  + " 4 (Ashlode Museum, 1962)");
      case SALE_CATALOGUE ->
          new Expected(
              "lot 214",
              "Brackley & Thorne, *Fine English and Irish Glass*, 12 May 1988, London (1988), lot"
                  + " 214.",
              "Brackley & Thorne, *Fine English and Irish Glass*, lot 214.",
              "Brackley & Thorne, *Fine English and Irish Glass*, 12 May 1988, London (1988)");
      case MANUSCRIPT ->
          new Expected(
              "fols 12r–13v",
              "Vance & Sons, glass-cutters, ‘Prices of Cut Goods’, \\[c. 1803\\], Ashlode, Ashlode"
                  + " Record Office, MS 214/3, fols 12r–13v.",
              "Vance & Sons, glass-cutters, ‘Prices of Cut Goods’, fols 12r–13v.",
              "Vance & Sons, glass-cutters, ‘Prices of Cut Goods’, \\[c. 1803\\], Ashlode, Ashlode"
                  + " Record Office, MS 214/3");
      case TRADE_LIST ->
          new Expected(
              "p. 3, pattern 88",
              "Vance & Sons, *List of Table Glass* (Bristol, 1832), p. 3, pattern 88, Ashlode"
                  + " Record Office.",
              "Vance & Sons, *List of Table Glass*, p. 3, pattern 88.",
              "Vance & Sons, *List of Table Glass* (Bristol, 1832), Ashlode Record Office");
      case TRADE_DIRECTORY ->
          new Expected(
              "p. 12, col. 2",
              "*Tolley’s Directory of Bristol* (J. Tolley, 1830), p. 12, col. 2.",
              "*Tolley’s Directory of Bristol*, p. 12, col. 2.",
              "*Tolley’s Directory of Bristol* (J. Tolley, 1830)");
      case PATENT ->
          new Expected(
              "fig. 9a",
              "Josiah Marl, Improvements in Stoppers for Decanters, British Patent 12,345, issued"
                  + " 1871, fig. 9a.",
              "Marl, Improvements in Stoppers for Decanters, fig. 9a.",
              "Marl, Josiah, Improvements in Stoppers for Decanters, British Patent 12,345, issued"
                  + " 1871");
      case LEAFLET ->
          new Expected(
              "p. [12]",
              "Orrin Antiques, *Decanters, List 7* (Bath, \\[1961?\\]), p. \\[12\\].",
              "Orrin Antiques, *Decanters, List 7*, p. \\[12\\].",
              "Orrin Antiques, *Decanters, List 7* (Bath, \\[1961?\\])");
      case THESIS ->
          new Expected(
              "vol. II, pl. 5",
              "Cara Dunlavin, ‘Ring-Necked Bottles in the Two Islands’ (unpublished doctoral"
                  + " thesis, University of Lissadeel, 1985), vol. II, pl. 5.",
              "Dunlavin, ‘Ring-Necked Bottles in the Two Islands’, vol. II, pl. 5.",
              "Dunlavin, Cara, ‘Ring-Necked Bottles in the Two Islands’ (unpublished doctoral"
                  + " thesis, University of Lissadeel, 1985)");
      case WEB_PAGE ->
          new Expected(
              "para. 4 (under “Cutting”)",
              "Ivo Pell, ‘How Neck Rings Were Applied’, The Gaffer’s Bench, 2019, para. 4 (under ‘Cutting’)"
                  + " \\<<https://gaffer.example/rings_and_necks>\\> \\[accessed 2 March 2025\\].",
              "Pell, ‘How Neck Rings Were Applied’, para. 4 (under ‘Cutting’).",
              "Pell, Ivo, ‘How Neck Rings Were Applied’, The Gaffer’s Bench, 2019"
                  + " \\<<https://gaffer.example/rings_and_necks>\\> \\[accessed 2 March 2025\\]");
      case VIDEO ->
          new Expected(
              "03:15",
              "Lantern Street Glass Circle, *Three Rings, One Neck* (2021), 03:15"
                  + " \\<<https://film.example/w?v=3>\\> \\[accessed 2 March 2025\\].",
              "Lantern Street Glass Circle, *Three Rings, One Neck*, 03:15.",
              "Lantern Street Glass Circle, *Three Rings, One Neck* (2021)"
                  + " \\<<https://film.example/w?v=3>\\> \\[accessed 2 March 2025\\]");
      case STATEMENT ->
          new Expected(
              "p. 2",
              "S. Norrish, ‘Letter to Maud Quenby’, personal communication, 4 June 1971, p. 2.",
              "Norrish, ‘Letter to Maud Quenby’, p. 2.",
              "S. Norrish, ‘Letter to Maud Quenby’, personal communication, 4 June 1971");
    };
  }

  @ParameterizedTest
  @EnumSource(SourceKind.class)
  void everyKindOfSourceIsCited(SourceKind kind) {
    Source source = OneOfEach.of(kind);
    Expected expected = expected(kind);
    assertAll(
        () ->
            assertEquals(
                expected.note, mhra.note(source, locators(expected.place), Output.MARKDOWN)),
        () ->
            assertEquals(
                expected.shortNote,
                mhra.shortNote(source, locators(expected.place), Output.MARKDOWN)),
        () -> assertEquals(expected.entry, mhra.entry(source, Output.MARKDOWN)));
  }

  @Test
  void anEssayIsCitedInItsCatalogue() {
    assertEquals(
        "Jan van der Meeuwen, ‘Rings Cut from the Solid’, in Clear and Cut, ed. by Ralph Penhallow"
            + " (Wickmoor Gallery, 1977), pp. 21–34 (p. 30).",
        mhra.note(OneOfEach.essay(), locators("p. 30"), Output.TEXT));
  }

  @Test
  void aFacsimileNamesTheYearOfTheOriginal() {
    assertEquals(
        "Maud Quenby, Neck and Stopper (1926; Oakapple, 1977), pl. XXIV.",
        mhra.note(OneOfEach.facsimile(), locators("pl. XXIV"), Output.TEXT));
  }

  @Test
  void aSourceWithoutADateSaysSo() {
    assertEquals(
        "Ada Bell, What Is a Ring? (n.d.).",
        mhra.note(
            Invented.book("What is a Ring?").by("Ada", "Bell").source(), locators(), Output.TEXT));
  }

  @Test
  void theYearOnTheCoverStandsBeforeTheRealOne() {
    Source late =
        Invented.a(SourceKind.JOURNAL_ARTICLE, "Collars")
            .by("Ada", "Bell")
            .year(1988)
            .in(
                "Cullet Society Journal",
                java.util.Optional.of("12"),
                java.util.Optional.empty(),
                java.util.OptionalInt.of(1986),
                "pp. 1–4")
            .source();
    assertEquals(
        "Ada Bell, ‘Collars’, Cullet Society Journal, 12 (1986 [1988]), pp. 1–4.",
        mhra.note(late, locators(), Output.TEXT));
  }
}
