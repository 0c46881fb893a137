package merese.answer.rights;

import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.own;
import static merese.testing.SmallLibrary.says;
import static merese.testing.SmallLibrary.withEditions;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import merese.answer.rights.Rights.Grouped;
import merese.answer.rights.Rights.Picture;
import merese.answer.rights.Rights.Printing;
import merese.answer.rights.Rights.Said;
import merese.answer.rights.Rights.Section;
import merese.answer.rights.Rights.Standing;
import merese.citation.Citations;
import merese.model.Locator;
import merese.model.Note;
import merese.model.PictureRights;
import merese.model.PictureRights.Layer;
import merese.model.PictureRights.Status;
import merese.model.Place;
import merese.model.Place.Medium;
import merese.model.Place.Shows;
import merese.model.Place.Stance;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.testing.DemoLibrary;
import merese.testing.Shuffles;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Domain, A 16: three layers, a status for each, a credit line. Whole answers, again with names,
 * ids and order shuffled; names and titles are invented.
 */
class ClearingTest {
  private static final Citations CITATIONS = Citations.inStyle("mhra-notes", "en-GB");

  @TempDir private Path folder;

  private void assertAnswer(SmallLibrary library, RightsQuestion question, String expected) {
    Shuffles.assertAnswer(
        folder,
        library,
        "",
        expected,
        (shelf, named) -> lines(Clearing.answer(shelf, question, CITATIONS)));
  }

  private static String lines(Rights answer) {
    StringJoiner lines = new StringJoiner("\n", "", "\n");
    for (Section section : answer.sections()) {
      lines.add(section.pictures() + " in " + section.sources());
      for (Grouped grouped : section.groups()) {
        lines.add(grouped.standing().name());
        for (Picture picture : grouped.pictures()) {
          picture.id().ifPresent(id -> lines.add(" " + id));
          picture.printings().forEach(printing -> lines.add(line(printing)));
        }
      }
    }
    return lines.toString();
  }

  private static String line(Printing printing) {
    return "  "
        + printing.source().reference()
        + " "
        + printing.where()
        + (printing.narrower().isEmpty() ? "" : " narrower")
        + (printing.process() ? " process" : "")
        + (printing.mine() ? " mine" : "")
        + ": "
        + layer(printing.book())
        + " / "
        + layer(printing.photograph())
        + " / "
        + layer(printing.owner())
        + (printing.words().isEmpty() ? "" : " " + printing.words())
        + (printing.noted().isEmpty() ? "" : " " + printing.noted())
        + " | "
        + printing.credit().words()
        + (printing.credit().composed() ? " (composed)" : "");
  }

  private static String layer(Rights.Layer layer) {
    StringJoiner said = new StringJoiner(" & ");
    for (Said each : layer.said()) {
      said.add(
          each.holder().orElse("?")
              + " "
              + each.status().map(Status::code).orElse("?")
              + each.terms().map(t -> ", " + t).orElse("")
              + each.by().map(b -> ", " + b).orElse("")
              + each.on().map(o -> ", " + o).orElse(""));
    }
    return layer.said().isEmpty() ? "-" : said.toString();
  }

  private static Optional<Layer> layer(String holder, Status status) {
    return Optional.of(
        new Layer(
            Optional.ofNullable(holder),
            Optional.ofNullable(status),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  private static PictureRights rights(
      Optional<Layer> book, Optional<Layer> photograph, Optional<Layer> owner, String credit) {
    return new PictureRights(
        book, photograph, owner, Optional.ofNullable(credit), Optional.empty());
  }

  private static NoteMaker blade() {
    return says("bladed ring", "ring-bladed");
  }

  private static NoteMaker picture(String locator, String id) {
    return blade().place(locator, Stance.PICTURES, Medium.PHOTO, Shows.EXAMPLE, null, null, id);
  }

  @Test
  void eachLayerHasItsStatusAndPicturesStandByWhatIsNoted() {
    Optional<Layer> letter =
        Optional.of(
            new Layer(
                Optional.of("the museum"),
                Optional.of(Status.GIVEN),
                Optional.of("once"),
                Optional.of("letter"),
                Optional.of(LocalDate.of(2024, 2, 3))));
    assertAnswer(
        new SmallLibrary()
            .book(
                "Quenby",
                1926,
                "Neck and Stopper",
                blade()
                    .photo("pl. 1")
                    .rights(rights(letter, letter, layer("me", Status.OWN), "Courtesy")))
            .book(
                "Tressick",
                1954,
                "Cut and Blown",
                blade().photo("fig. 10"),
                blade().photo("fig. 9"),
                blade().photo("fig. 8").rights(rights(layer("A", null), letter, letter, null)))
            .book(
                "Norrish",
                1930,
                "The Ringed Decanter",
                blade().photo("pl. 9").rights(PictureRights.ofWords("ask her sister")),
                says("feathered ring", "ring-feathered").photo("pl. 2"))
            .book(
                "Haskeld",
                1983,
                "A Primer",
                blade()
                    .photo("fig. 2")
                    .rights(rights(letter, letter, layer("B", Status.REFUSED), null)))
            .book("Ollerby", 1958, "Cords", blade().text("p. 3"), blade().process("fig. 4"))
            .work(own(monograph("Ruddick", 1920, "My Talk", blade().photo("photo 3")))),
        RightsQuestion.of("neck-ring"),
        """
        9 in 6
        REFUSED
          Haskeld 1983 [fig. 2] narrower: the museum given, once, letter, 2024-02-03 / the museum given, once, letter, 2024-02-03 / B refused | Haskeld, A Primer (1983), fig. 2; photograph: the museum; piece: B. (composed)
        MAY_BE_SHOWN_AS_NOTED
          Quenby 1926 [pl. 1] narrower: the museum given, once, letter, 2024-02-03 / the museum given, once, letter, 2024-02-03 / me own | Courtesy
        ASK_FIRST
          Tressick 1954 [fig. 8] narrower: A ? / the museum given, once, letter, 2024-02-03 / the museum given, once, letter, 2024-02-03 | Tressick, Cut and Blown (1954), fig. 8; photograph: the museum; piece: the museum. (composed)
        NOTED_IN_WORDS
          Norrish 1930 [pl. 9] narrower: - / - / - [ask her sister] | Norrish, The Ringed Decanter (1930), pl. 9. (composed)
        NOT_NOTED
          Ruddick 1920 [photo 3] narrower mine: - / - / - | Ruddick, My Talk (1920), photo 3. (composed)
          Norrish 1930 [pl. 2] narrower: - / - / - | Norrish, The Ringed Decanter (1930), pl. 2. (composed)
          Tressick 1954 [fig. 9, fig. 10] narrower: - / - / - | Tressick, Cut and Blown (1954), figs 9, 10. (composed)
          Ollerby 1958 [fig. 4] narrower process: - / - / - | Ollerby, Cords (1958), fig. 4. (composed)
        """);
  }

  /** What one edition's publisher said is not said of the other. */
  @Test
  void aPictureInSeveralEditionsIsToldOnceWithEachPlace() {
    assertAnswer(
        new SmallLibrary()
            .work(
                withEditions(
                    monograph("Quenby", 1926, "Neck and Stopper"),
                    edition("quenby-1949", 1949, picture("pl. 12", "a")),
                    edition(
                        "quenby-1926",
                        1926,
                        picture("pl. XII", "a"),
                        says("collar", "neck-ring")
                            .place(
                                "pl. XII",
                                Stance.PICTURES,
                                Medium.PHOTO,
                                Shows.DETAIL,
                                null,
                                null,
                                "a")
                            .rights(
                                rights(layer("P", Status.NOT_TRACED), empty(), empty(), null)))))
            .book("Farrow", 1930, "What Was It", picture("fig. 1", "a")),
        RightsQuestion.of("ring-bladed"),
        """
        1 in 3
        ASK_FIRST
         a
          Quenby 1926 [pl. XII]: P not-traced / - / - | Quenby, Neck and Stopper (1926), pl. XII. (composed)
          Farrow 1930 [fig. 1]: - / - / - | Farrow, What Was It (1930), fig. 1. (composed)
          Quenby 1949 [pl. 12]: - / - / - | Quenby, Neck and Stopper (1949), pl. 12. (composed)
        """);
  }

  private static Optional<Layer> empty() {
    return Optional.empty();
  }

  /** Nothing follows from silence, from age, or from hearsay. */
  @ParameterizedTest
  @EnumSource(Status.class)
  void onlyConsentOrOnesOwnSettlesALayer(Status status) {
    Optional<Layer> layer = layer("H", status);
    Optional<Layer> given = layer("H", Status.GIVEN);
    SmallLibrary library =
        new SmallLibrary()
            .book("Saltrey", 1724, "Prices", blade().photo("pl. 1"))
            .book("A", 1900, "T", blade().photo("pl. 1").rights(rights(layer, given, given, null)))
            .book("B", 1901, "U", blade().photo("pl. 1").rights(rights(given, layer, given, null)))
            .book("C", 1902, "V", blade().photo("pl. 1").rights(rights(given, given, layer, null)))
            .book(
                "D", 1903, "W", blade().photo("pl. 1").rights(rights(given, given, empty(), null)));
    Standing expected =
        status == Status.REFUSED
            ? Standing.REFUSED
            : status == Status.GIVEN || status == Status.OWN
                ? Standing.MAY_BE_SHOWN_AS_NOTED
                : Standing.ASK_FIRST;
    try (Shelf shelf = library.open(folder.resolve(status.code()))) {
      Rights answer = Clearing.answer(shelf, RightsQuestion.of("ring-bladed"), CITATIONS);
      for (Grouped grouped : answer.sections().get(0).groups()) {
        for (Picture picture : grouped.pictures()) {
          String source = picture.printings().get(0).source().reference();
          Standing standing =
              switch (source) {
                case "Saltrey 1724" -> Standing.NOT_NOTED;
                case "D 1903" -> Standing.ASK_FIRST;
                default -> expected;
              };
          assertEquals(standing, grouped.standing(), source);
        }
      }
    }
  }

  @Test
  void ofASourceEveryPictureIsToldOrThatAtAPlace() {
    SmallLibrary library =
        new SmallLibrary()
            .book(
                "Quenby",
                1926,
                "Neck and Stopper",
                blade().photo("pls I–III").text("p. 3"),
                says("folded foot", "foot-folded").photo("pl. V"));
    try (Shelf shelf = library.open(folder.resolve("source"))) {
      assertEquals(
          "1 in 1\nNOT_NOTED\n  Quenby 1926 [pls I–III]: - / - / - | Quenby, Neck and Stopper"
              + " (1926), pls I–III. (composed)\n",
          lines(of(shelf, "pl. II")));
      assertEquals(2, of(shelf, null).sections().get(0).pictures());
      assertTrue(of(shelf, "p. 3").isEmpty());
      assertTrue(of(shelf, "pl. IX").isEmpty());
    }
  }

  private static Rights of(Shelf shelf, String at) {
    return Clearing.answer(
        shelf,
        RightsQuestion.ofSource("quenby-1926", Optional.ofNullable(at).map(Locator::parse)),
        CITATIONS);
  }

  /**
   * Every picture of the demo is there once, and nothing is said of its rights but what is noted.
   */
  @Test
  void everyLineOfTheDemoIsFromANote() throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      Set<Standing> met = new HashSet<>();
      for (Source source : shelf.sources()) {
        Set<Locator> pictured = new HashSet<>();
        Set<Object> noted = new HashSet<>();
        for (SourcedNote sourced : shelf.notesOf(source)) {
          Note note = sourced.note();
          note.places().stream()
              .filter(p -> p.isPictured() || p.showsProcess())
              .map(Place::locator)
              .forEach(pictured::add);
          note.checked().ifPresent(c -> noted.add(c.by() + c.on().map(on -> ", " + on).orElse("")));
          note.rights()
              .ifPresent(
                  r -> {
                    noted.addAll(r.layers());
                    r.words().ifPresent(noted::add);
                    r.credit().ifPresent(noted::add);
                  });
        }
        Rights answer =
            Clearing.answer(
                shelf, RightsQuestion.ofSource(source.key(), Optional.empty()), CITATIONS);
        Set<Locator> told = new HashSet<>();
        for (Grouped grouped : answer.sections().get(0).groups()) {
          met.add(grouped.standing());
          for (Picture picture : grouped.pictures()) {
            Printing printing = picture.printings().get(0);
            printing.where().forEach(place -> assertTrue(told.add(place), place.toString()));
            printing.noted().forEach(by -> assertTrue(noted.contains(by), by));
            printing.words().forEach(words -> assertTrue(noted.contains(words)));
            for (Rights.Layer layer :
                List.of(printing.book(), printing.photograph(), printing.owner())) {
              layer.said().forEach(said -> assertTrue(noted.contains(asNoted(said))));
            }
            if (!printing.credit().composed()) {
              assertTrue(noted.contains(printing.credit().words()));
            }
          }
        }
        assertEquals(pictured, told, source.key());
      }
      assertEquals(
          Set.of(Standing.MAY_BE_SHOWN_AS_NOTED, Standing.ASK_FIRST, Standing.NOT_NOTED), met);
      assertFalse(Clearing.CAUTIONS.isEmpty());
    }
  }

  private static Layer asNoted(Said said) {
    return new Layer(
        said.holder(), said.status(), said.terms(), said.by(), said.on().map(LocalDate::parse));
  }
}
