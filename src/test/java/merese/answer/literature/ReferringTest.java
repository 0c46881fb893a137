package merese.answer.literature;

import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.own;
import static merese.testing.SmallLibrary.says;
import static merese.testing.SmallLibrary.withEditions;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.StringJoiner;
import merese.answer.Correction;
import merese.answer.TermException;
import merese.answer.literature.Literature.Clause;
import merese.answer.literature.Literature.Mention;
import merese.answer.literature.Literature.OfType;
import merese.answer.literature.Literature.Saying;
import merese.answer.literature.Literature.Section;
import merese.answer.literature.Literature.Sentence;
import merese.citation.Citations;
import merese.model.Claim;
import merese.model.Claim.About;
import merese.model.Note;
import merese.model.Note.ObjectLink.Sameness;
import merese.model.OwnObject;
import merese.model.OwnObject.Evidence;
import merese.model.Place;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;
import merese.testing.DemoLibrary;
import merese.testing.Shuffles;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Domain, A 22 to 24, F 9 and F 15. Whole answers, again with names, ids and order shuffled; names
 * and titles are invented.
 */
class ReferringTest {
  private static final Citations CITATIONS = Citations.inStyle("mhra-notes", "en-GB");

  @TempDir private Path folder;

  private void assertAnswer(SmallLibrary library, String asked, String expected) {
    Shuffles.assertAnswer(
        folder, library, "", expected, (shelf, named) -> lines(ask(shelf, asked)));
  }

  private static Literature ask(Shelf shelf, String asked) {
    return Referring.answer(shelf, LiteratureQuestion.of(asked), CITATIONS);
  }

  private static String lines(Literature answer) {
    StringJoiner lines = new StringJoiner("\n", "", "\n");
    for (Section section : answer.sections()) {
      mentions(lines, "Lit.", section.same());
      mentions(lines, "Cf.", section.similar());
      mentions(lines, "mine", section.ownWork());
      section.ofThePiece().ifPresent(s -> lines.add(s.words()));
      for (OfType type : section.types()) {
        lines.add(type.heading().id());
        mentions(lines, "type", type.pictured());
        mentions(lines, "mine", type.ownWork());
        type.claimed().ifPresent(s -> sentence(lines, s));
        type.narrower().forEach(s -> sentence(lines, s));
        type.copies().forEach(c -> lines.add("copies: " + c.words()));
      }
    }
    return lines.toString();
  }

  private static void mentions(StringJoiner lines, String line, List<Mention> mentions) {
    for (Mention mention : mentions) {
      lines.add(
          line
              + " "
              + mention.source().reference()
              + " "
              + mention.places()
              + mention.narrower().map(n -> " " + n.id()).orElse("")
              + mention.evidence().map(e -> ": " + e).orElse(""));
      corrected(lines, mention.corrected());
    }
  }

  private static void sentence(StringJoiner lines, Sentence sentence) {
    lines.add(sentence.words() + sentence.disagreement().map(d -> " " + d).orElse(""));
    for (Clause clause : sentence.clauses()) {
      clause.sayings().forEach(saying -> corrected(lines, saying.corrected()));
    }
  }

  private static void corrected(StringJoiner lines, List<Correction> corrections) {
    corrections.forEach(c -> lines.add("  by " + c.by().reference() + " " + c.at() + c.words()));
  }

  private static OwnObject piece(String ref, String... concepts) {
    List<Evidence> evidence = new ArrayList<>();
    for (String concept : concepts) {
      boolean counter = concept.startsWith("not ");
      evidence.add(
          new Evidence(
              counter ? concept.substring(4) : concept,
              counter ? Evidence.Kind.COUNTER_EXAMPLE : Evidence.Kind.EXAMPLE,
              Optional.empty(),
              Optional.empty()));
    }
    return new OwnObject(
        ref,
        "A decanter",
        Optional.empty(),
        Optional.of("bought as Irish"),
        evidence,
        List.of(),
        List.of());
  }

  private static NoteMaker blade() {
    return says("bladed ring", "ring-bladed");
  }

  @Test
  void onlyTheVeryPieceIsLiterature() {
    assertAnswer(
        new SmallLibrary()
            .object(piece("d-9", "ring-bladed", "not ring-set-three"))
            .object(piece("d-90", "ring-bladed"))
            .book(
                "Quenby",
                1949,
                "Neck and Stopper",
                blade().text("p. 7").of("d-9", Sameness.SAME, "the same chip"),
                blade().text("p. 8").of("d-90", Sameness.SAME, "another piece"))
            .book(
                "Tressick",
                1954,
                "Cut and Blown",
                blade()
                    .photo("pl. 3")
                    .text("p. 2")
                    .of("d-9", Sameness.SAME, "the number on the base")
                    .claims(Claim.Kind.PLACE, About.OBJECT, "probably Cork"),
                blade().photo("fig. 9").claims(Claim.Kind.PLACE, About.OBJECT, "Irish, that one"))
            .book(
                "Farrow",
                1930,
                "What Was It",
                blade().photo("fig. 2").of("d-9", Sameness.SIMILAR, "a wider lip"),
                says("three rings", "ring-set-three").photo("fig. 3"))
            .book("Norrish", 1920, "The Ringed Decanter", blade().photo("pl. 10").photo("pl. 9"))
            .work(
                own(
                    monograph(
                        "Ruddick",
                        1910,
                        "My Talk",
                        blade().photo("pl. 1").of("d-9", Sameness.SAME, "I took it")))),
        "D-9",
        """
        Lit. Tressick 1954 [pl. 3, p. 2]: the number on the base
        Lit. Quenby 1949 [p. 7]: the same chip
        Cf. Farrow 1930 [fig. 2]: a wider lip
        mine Ruddick 1910 [pl. 1]: I took it
        The piece itself is given with a hedge to Cork by Tressick 1954, pl. 3, p. 2 (“probably Cork”).
        ring-bladed
        type Norrish 1920 [pl. 9, pl. 10]
        type Tressick 1954 [fig. 9]
        """);
  }

  /** Domain, D: "Irish", "mainly Irish", "Irish or in Irish style" and "found" are four claims. */
  @Test
  void aTypeIsGivenToAPlaceBySomebodyAndNothingIsAveraged() {
    assertAnswer(
        new SmallLibrary()
            .book(
                "Quenby",
                1926,
                "Neck and Stopper",
                blade()
                    .text("p. 41")
                    .claims(Claim.Kind.PLACE, "mainly Irish", "Ireland")
                    .claims(Claim.Kind.DATE, "c. 1790–1810", null))
            .book(
                "Tressick",
                1954,
                "Cut and Blown",
                blade()
                    .text("p. 88")
                    .claims(Claim.Kind.PLACE, "Irish or in Irish style", null)
                    .claims(Claim.Kind.DATE, "1850s", null)
                    .claims(Claim.Kind.COPY_WARNING, About.COPIES, "copied in the 1920s"))
            .book(
                "Ashlock",
                1960,
                "Necks",
                blade()
                    .text("p. 1")
                    .claims(Claim.Kind.PLACE, "no county is shown", "British Isles"))
            .book(
                "Haskeld",
                1983,
                "A Primer",
                blade().text("p. 5").claims(Claim.Kind.PLACE, "mostly from Ireland", null))
            .book(
                "Dunlavin",
                1990,
                "Two Islands",
                blade()
                    .text("p. 9")
                    .claims(Claim.Kind.PLACE, "never Irish", null)
                    .claims(Claim.Kind.MAKER, "the Saltrey house", null)
                    .claims(Claim.Kind.PLACE, About.OBJECT, "this one from Leith"))
            .work(
                own(
                    monograph(
                        "Ruddick",
                        2016,
                        "My Talk",
                        blade().text("p. 2").claims(Claim.Kind.PLACE, "Scottish", "Scotland")))),
        "ring-bladed",
        """
        ring-bladed
        Of a type given mainly to Ireland by Quenby 1926, p. 41 (“mainly Irish”) and Haskeld 1983, p. 5 (“mostly from Ireland”); given to Ireland or its style by Tressick 1954, p. 88 (“Irish or in Irish style”); given to the British Isles by Ashlock 1960, p. 1 (“no county is shown”; the place is the note’s, not in these words); not given to Ireland by Dunlavin 1990, p. 9 (“never Irish”); given to a maker by Dunlavin 1990, p. 9 (“the Saltrey house”); dated by Quenby 1926, p. 41 (“c. 1790–1810”) and Tressick 1954, p. 88 (“1850s”). Its sources contradict each other on the date and the place.
        copies: copied in the 1920s
        """);
  }

  @Test
  void whatIsNarrowerIsSaidOfTheNarrowerKindAlone() {
    assertAnswer(
        new SmallLibrary()
            .book(
                "Quenby",
                1926,
                "Neck and Stopper",
                blade().photo("pl. 1").claims(Claim.Kind.PLACE, "Irish", null))
            .book(
                "Tressick",
                1954,
                "Cut and Blown",
                says("neck ring", "neck-ring")
                    .photo("fig. 2")
                    .claims(Claim.Kind.PLACE, "English", null)),
        "neck-ring",
        """
        neck-ring
        type Tressick 1954 [fig. 2]
        type Quenby 1926 [pl. 1] ring-bladed
        Of a type given to England by Tressick 1954, fig. 2 (“English”).
        Of a narrower kind (bladed ring) given to Ireland by Quenby 1926, pl. 1 (“Irish”).
        """);
  }

  @Test
  void anErratumStandsByThePictureAndByTheClaimThatItCorrects() {
    assertAnswer(
        new SmallLibrary()
            .object(piece("d-1", "foot-folded"))
            .work(
                withEditions(
                    monograph("Imberry", 1934, "The Stem"),
                    edition(
                        "imberry-1934",
                        1934,
                        says("folded foot", "foot-folded")
                            .photo("pl. 3")
                            .text("p. 19")
                            .claims(Claim.Kind.DATE, "to 1745", null)),
                    edition(
                        "imberry-1951",
                        1951,
                        says("folded foot", "foot-folded")
                            .corrects("p. 21", "imberry-1934", "p. 19")
                            .quotes("mostly to 1745")))),
        "d-1",
        """
        foot-folded
        type Imberry 1934 [pl. 3]
          by Imberry 1951 [p. 21][mostly to 1745]
        Of a type dated by Imberry 1934, pl. 3, p. 19 (“to 1745”).
          by Imberry 1951 [p. 21][mostly to 1745]
        """);
  }

  @Test
  void whereNothingIsNotedNothingIsSaid() {
    try (Shelf shelf =
        new SmallLibrary().object(piece("d-1", "ring-bladed")).open(folder.resolve("e"))) {
      Literature answer = ask(shelf, "d-1");
      assertTrue(answer.isEmpty());
      assertEquals("ring-bladed\n", lines(answer));
      assertThrows(TermException.class, () -> ask(shelf, "d-2"));
    }
  }

  /** Every line of the demo is from a note, and no sentence says that a thing is of a place. */
  @Test
  void everyLineOfTheDemoIsFromANote() throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      int sayings = 0;
      for (OwnObject object : shelf.objects()) {
        Section section = ask(shelf, object.ref()).sections().get(0);
        for (Mention mention : section.same()) {
          Note note = note(shelf, mention.source().key(), mention.note().orElseThrow());
          assertEquals(object.ref(), note.object().orElseThrow().ref());
          assertEquals(Sameness.SAME, note.object().orElseThrow().sameness());
          assertEquals(note.object().orElseThrow().evidence(), mention.evidence());
          assertTrue(mention.evidence().isPresent());
        }
        List<Sentence> sentences = new ArrayList<>();
        section.ofThePiece().ifPresent(sentences::add);
        for (OfType type : section.types()) {
          type.claimed().ifPresent(sentences::add);
          sentences.addAll(type.narrower());
          for (Mention mention : type.pictured()) {
            List<merese.model.Locator> pictured =
                shelf.notesOf(source(shelf, mention.source().key())).stream()
                    .flatMap(n -> n.note().places().stream())
                    .filter(Place::isPictured)
                    .map(Place::locator)
                    .toList();
            assertTrue(pictured.containsAll(mention.places()), mention.toString());
          }
        }
        for (Sentence sentence : sentences) {
          assertFalse(sentence.words().toLowerCase(Locale.ROOT).contains(" is irish"));
          for (Clause clause : sentence.clauses()) {
            for (Saying saying : clause.sayings()) {
              Note note = note(shelf, saying.source().key(), saying.note());
              assertTrue(
                  note.claims().stream()
                      .anyMatch(c -> c.kind() == clause.kind() && c.words().equals(saying.words())),
                  saying.toString());
              assertTrue(sentence.words().contains("“" + saying.words() + "”"));
              assertTrue(sentence.words().contains(saying.source().reference()));
              sayings++;
            }
          }
        }
      }
      assertTrue(sayings > 20, "sayings: " + sayings);
    }
  }

  private static Source source(Shelf shelf, String key) {
    return shelf.sources().stream().filter(s -> s.key().equals(key)).findFirst().orElseThrow();
  }

  private static Note note(Shelf shelf, String source, String id) {
    return shelf.notesOf(source(shelf, source)).stream()
        .map(SourcedNote::note)
        .filter(n -> n.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
