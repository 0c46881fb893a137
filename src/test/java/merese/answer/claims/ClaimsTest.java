package merese.answer.claims;

import static merese.testing.SmallLibrary.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.claims.ClaimsAnswer.Contradiction;
import merese.answer.claims.ClaimsAnswer.Group;
import merese.answer.claims.ClaimsAnswer.OfKind;
import merese.answer.claims.ClaimsAnswer.Row;
import merese.answer.claims.ClaimsAnswer.Section;
import merese.answer.claims.ClaimsAnswer.YearSpan;
import merese.model.Claim;
import merese.model.Claim.About;
import merese.model.Claim.Kind;
import merese.model.Locator;
import merese.model.Mine;
import merese.model.Note;
import merese.model.Place;
import merese.model.Place.Stance;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.testing.DemoLibrary;
import merese.testing.Shuffle;
import merese.testing.Shuffle.Shuffled;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole answers on small libraries (common practice, no source; authors and titles invented). */
class ClaimsTest {
  @TempDir private Path folder;

  private void assertAnswer(SmallLibrary library, ClaimsQuestion question, String expected) {
    try (Shelf shelf = library.open(folder.resolve("as given"))) {
      assertEquals(expected, lines(Claims.answer(shelf, question)));
    }
    for (int seed = 1; seed <= 5; seed++) {
      Shuffled shuffled = Shuffle.of(library.works(), seed);
      SmallLibrary again = new SmallLibrary();
      shuffled.works().forEach(again::work);
      try (Shelf shelf = again.open(folder.resolve("shuffled " + seed))) {
        String answer = lines(Claims.answer(shelf, question));
        assertEquals(expected, shuffled.restore(answer), "seed " + seed);
      }
    }
  }

  private static String lines(ClaimsAnswer answer) {
    List<String> lines = new ArrayList<>();
    for (Section section : answer.sections()) {
      lines.add(section.heading().id() + ": " + section.sources() + " sources, " + section.works());
      for (OfKind kind : section.kinds()) {
        for (Group group : kind.groups()) {
          group.rows().forEach(row -> lines.add(group.standing() + ": " + line(row)));
        }
        kind.silent().forEach(s -> lines.add("silent on " + kind.kind() + ": " + s.reference()));
      }
      section.objects().forEach(row -> lines.add("object: " + line(row)));
      section.copies().forEach(row -> lines.add("copies: " + line(row)));
      section.ownWork().forEach(row -> lines.add("own: " + line(row)));
      section.saysNotShown().forEach(d -> lines.add("not shown: " + d.source().reference()));
      section.experience().forEach(e -> lines.add("experience: " + e.words()));
      for (Contradiction each : section.contradictions().listed()) {
        for (Row against : each.against()) {
          lines.add("against: " + brief(each.one()) + " / " + brief(against));
        }
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private static String brief(Row row) {
    return row.source().reference() + " “" + row.words() + "”";
  }

  private static String line(Row row) {
    List<Locator> places = new ArrayList<>(row.pictured());
    places.addAll(row.inWords());
    String where = String.join("; ", places.stream().map(Object::toString).toList());
    return row.source().reference()
        + ", "
        + where
        + " “"
        + row.words()
        + "”"
        + row.date().filter(d -> d.isRead()).map(ClaimsTest::computed).orElse("")
        + row.place().map(p -> " " + p.sense() + " " + p.places()).orElse("")
        + row.reason().map(r -> " (" + r + ")").orElse("")
        + (row.narrower() ? " narrower" : "")
        + (row.inCaption() ? " caption" : "");
  }

  private static String computed(ClaimsAnswer.DateLine date) {
    String core = (date.computed() ? " computed " : " ") + years(date.core().orElseThrow());
    String outer =
        date.core().equals(date.outer()) ? "" : " outer " + years(date.outer().orElseThrow());
    return core + outer + date.period().map(p -> " " + p).orElse("");
  }

  private static String years(YearSpan span) {
    return end(span.from()) + "–" + end(span.to());
  }

  private static String end(java.util.OptionalInt year) {
    return year.isPresent() ? String.valueOf(year.getAsInt()) : "open";
  }

  private static NoteMaker target(String page, String date) {
    return says("target stopper", "stopper-target").text(page).claims(Kind.DATE, date, null);
  }

  private static NoteMaker bladed(String page, Kind kind, String words, String value) {
    return says("bladed ring", "ring-bladed").text(page).claims(kind, words, value);
  }

  @Nested
  @DisplayName("Could a target stopper be of 1795?")
  class DatesConflict {
    private SmallLibrary library() {
      return new SmallLibrary()
          .book("Quenby", 1926, "Neck and Stopper", target("p. 50", "late eighteenth century"))
          .book("Tressick", 1954, "Cut and Blown", target("p. 95", "c. 1800–1820"))
          .book("Norrish", 1971, "The Ringed Decanter", target("p. 36", "Regency"))
          .book("Haskeld", 1983, "A Table-Glass Primer", target("p. 30", "1830s"))
          .book(
              "Dunlavin",
              1990,
              "Glass of the Two Islands",
              says("target stopper", "stopper-target")
                  .text("p. 110")
                  .claims(Kind.COPY_WARNING, About.COPIES, "copied from the 1920s onwards"));
    }

    @Test
    void oneSupportsItOneIsBorderlineTwoDoNotAndCopiesAreACaution() {
      assertAnswer(
          library(),
          ClaimsQuestion.of("target stopper").inYears(1795, 1795),
          """
          stopper-target: 5 sources, 5
          SUPPORTS: Quenby 1926, p. 50 “late eighteenth century” computed 1767–1799 outer 1760–1800
          BORDERLINE: Tressick 1954, p. 95 “c. 1800–1820” 1800–1820 outer 1795–1825 (only within circa ±5)
          DOES_NOT: Norrish 1971, p. 36 “Regency” computed 1811–1820 outer 1800–1830 Regency
          DOES_NOT: Haskeld 1983, p. 30 “1830s” computed 1830–1839
          silent on DATE: Dunlavin 1990
          copies: Dunlavin 1990, p. 110 “copied from the 1920s onwards” computed 1920–open
          against: Quenby 1926 “late eighteenth century” / Haskeld 1983 “1830s”
          against: Tressick 1954 “c. 1800–1820” / Haskeld 1983 “1830s”
          """);
    }

    @Test
    void copiesNeverReachTheFeature() {
      try (Shelf shelf = library().open(folder)) {
        ClaimsAnswer answer =
            Claims.answer(shelf, ClaimsQuestion.of("target stopper").inYears(1930, 1930));
        OfKind dates = answer.sections().get(0).kind(Kind.DATE).orElseThrow();
        assertEquals(List.of(), dates.rows(ClaimsAnswer.Standing.SUPPORTS));
        assertEquals(4, answer.sections().get(0).timeline().size());
      }
    }
  }

  @Nested
  @DisplayName("Is a bladed ring Irish?")
  class PlacesConflict {
    @Test
    void fourWordingsAreFourClaimsAndAnythingElseIsNamed() {
      assertAnswer(
          new SmallLibrary()
              .book("A", 1926, "T1", bladed("p. 1", Kind.PLACE, "Irish", null))
              .book("B", 1927, "T2", bladed("p. 2", Kind.PLACE, "mainly Irish", "Ireland"))
              .book("C", 1928, "T3", bladed("p. 3", Kind.PLACE, "Irish or in Irish style", null))
              .book("D", 1929, "T4", bladed("p. 4", Kind.PLACE, "found in Ireland", "Ireland"))
              .book("E", 1930, "T5", bladed("p. 5", Kind.PLACE, "only Irish", "Ireland"))
              .book("F", 1931, "T6", bladed("p. 6", Kind.PLACE, "English", null))
              .book("G", 1932, "T7", bladed("p. 7", Kind.PLACE, "no reason to call it Irish", null))
              .book("H", 1933, "T8", bladed("p. 8", Kind.PLACE, "perhaps English", null))
              .book("I", 1934, "T9", bladed("p. 9", Kind.DATE, "1790", null)),
          ClaimsQuestion.of("ring-bladed").at("Ireland"),
          """
          ring-bladed: 9 sources, 9
          SUPPORTS: A 1926, p. 1 “Irish” PLAIN [Ireland]
          SUPPORTS: B 1927, p. 2 “mainly Irish” MAINLY [Ireland] (mainly, so not only)
          SUPPORTS: E 1930, p. 5 “only Irish” ONLY [Ireland]
          BORDERLINE: C 1928, p. 3 “Irish or in Irish style” STYLE [Ireland] (or only in its style)
          BORDERLINE: D 1929, p. 4 “found in Ireland” FOUND [Ireland] (found there, not said to be made there)
          DOES_NOT: F 1931, p. 6 “English” PLAIN [England]
          DOES_NOT: G 1932, p. 7 “no reason to call it Irish” DENIED [] (its words say no)
          DOES_NOT: H 1933, p. 8 “perhaps English” HEDGED [England]
          silent on PLACE: I 1934
          against: A 1926 “Irish” / G 1932 “no reason to call it Irish”
          against: B 1927 “mainly Irish” / G 1932 “no reason to call it Irish”
          against: E 1930 “only Irish” / F 1931 “English”
          against: E 1930 “only Irish” / G 1932 “no reason to call it Irish”
          """);
    }
  }

  @Test
  void whatOnlySaysNotShownAndWhatIsOfOneObjectIsNotOfTheFeature() {
    assertAnswer(
        new SmallLibrary()
            .book(
                "Quenby",
                1926,
                "T1",
                says("bladed ring", "ring-bladed")
                    .text("p. 1")
                    .claims(Kind.DATE, About.OBJECT, "1785")
                    .claims(Kind.METHOD, "wound on", "applied"))
            .book(
                "Haskeld",
                1983,
                "T2",
                says("bladed ring", "ring-bladed")
                    .absent("p. 12")
                    .claims(Kind.DATE, "1790", "1790")),
        ClaimsQuestion.of("ring-bladed"),
        """
        ring-bladed: 1 sources, 1
        silent on DATE: Quenby 1926
        silent on PLACE: Quenby 1926
        silent on MAKER: Quenby 1926
        CLAIMED: Quenby 1926, p. 1 “wound on”
        silent on FREQUENCY: Quenby 1926
        object: Quenby 1926, p. 1 “1785” 1785–1785
        not shown: Haskeld 1983
        """);
  }

  @Test
  void theUsersOwnExperienceStandsApartAndIsNeverCounted() {
    SmallLibrary library =
        new SmallLibrary()
            .book("Quenby", 1926, "T", bladed("p. 1", Kind.METHOD, "laid on", "applied"))
            .mine(
                new Mine(
                    List.of(),
                    List.of(),
                    List.of(
                        new Mine.Experience(
                            "ring-bladed",
                            Kind.METHOD,
                            "always cut",
                            java.util.OptionalInt.of(9),
                            java.util.OptionalInt.empty())),
                    List.of()));
    try (Shelf shelf = library.open(folder)) {
      Section section = Claims.answer(shelf, ClaimsQuestion.of("ring-bladed")).sections().get(0);
      assertEquals(1, section.sources());
      assertEquals("always cut", section.experience().get(0).words());
      assertEquals(0, section.contradictions().count());
    }
  }

  /** Over every concept of the demo library. */
  @Test
  void everyRowIsInANoteThatShowsItAndNoneThatOnlySaysItIsNotShown() throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      int rows = 0;
      for (var concept : shelf.thesaurus().concepts()) {
        Section section = Claims.answer(shelf, ClaimsQuestion.of(concept.id())).sections().get(0);
        List<Row> all = new ArrayList<>(section.objects());
        all.addAll(section.copies());
        all.addAll(section.ownWork());
        section.kinds().forEach(k -> k.groups().forEach(g -> all.addAll(g.rows())));
        for (Row row : all) {
          assertTraced(shelf, row);
          rows++;
        }
      }
      assertTrue(rows > 150, "rows: " + rows);
    }
  }

  private static void assertTraced(Shelf shelf, Row row) {
    Source source =
        shelf.sources().stream().filter(s -> s.key().equals(row.source().key())).findFirst().get();
    Note note =
        shelf.notesOf(source).stream()
            .map(SourcedNote::note)
            .filter(n -> n.id().equals(row.note()))
            .findFirst()
            .get();
    Optional<Claim> claim =
        note.claims().stream()
            .filter(c -> c.words().equals(row.words()) && c.kind() == row.kind())
            .findFirst();
    assertTrue(claim.isPresent(), row::toString);
    List<Locator> places = new ArrayList<>(row.pictured());
    places.addAll(row.inWords());
    assertTrue(!places.isEmpty(), row::toString);
    boolean shows = false;
    for (Place place : note.places()) {
      shows |= place.stance() != Stance.SAYS_ABSENT;
    }
    assertTrue(shows, row::toString);
  }
}
