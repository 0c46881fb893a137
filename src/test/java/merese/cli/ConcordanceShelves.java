package merese.cli;

import static merese.testing.SmallLibrary.descended;
import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.link;
import static merese.testing.SmallLibrary.linked;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.own;
import static merese.testing.SmallLibrary.prints;
import static merese.testing.SmallLibrary.says;
import static merese.testing.SmallLibrary.withEditions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Edition.Lineage.Form;
import merese.model.Mine;
import merese.model.Naming.Why;
import merese.model.Place.Medium;
import merese.model.Place.Shows;
import merese.model.Place.Stance;
import merese.model.Work;
import merese.model.WorkLink.Kind;
import merese.testing.SmallLibrary;
import merese.testing.SmallLibrary.NoteMaker;

/** Libraries in which sources disagree on words; all names and titles are invented. */
final class ConcordanceShelves {
  private static final List<String> RINGS =
      List.of(
          "ring-plain",
          "ring-bladed",
          "ring-annulated",
          "ring-double",
          "ring-square",
          "ring-milled",
          "ring-vertical",
          "ring-feathered",
          "ring-cut",
          "ring-facet-cut",
          "ring-wavy",
          "ring-set-three");
  private static final List<String> NAMES =
      List.of(
          "Abbot",
          "Bracken",
          "Corder",
          "Dunmore",
          "Elder",
          "Farrant",
          "Garside",
          "Hollin",
          "Inskip",
          "Jarvey",
          "Kettlewood",
          "Loxley",
          "Marrable",
          "Nettleship",
          "Ockham",
          "Pinnock",
          "Quillan",
          "Rushmere",
          "Sallow",
          "Tarrant");

  private ConcordanceShelves() {}

  /** A homonym, editions, a repeat, a denial, an own work, and cells that need care. */
  static SmallLibrary words() {
    return new SmallLibrary()
        .work(quenby())
        .work(
            linked(
                monograph(
                    "Tressick",
                    1954,
                    "Cut and Blown",
                    says("triangular rings", "ring-bladed").text("p. 88").photo("fig. 61"),
                    says("triple rings", "ring-set-three").text("p. 90").photo("fig. 64")),
                link(Kind.CITES, "quenby-1926", "n. 5")))
        .work(
            linked(
                monograph(
                    "Pendry",
                    1960,
                    "Glass for the Table",
                    says("Knife-Edged Ring", "ring-bladed").text("p. 12"),
                    says("=3 rings | \"set\" <of> *three*", "ring-set-three").text("p. 13")),
                link(Kind.REPEATS, "quenby-1926", "the chapter on necks, nearly word for word")))
        .book(
            "Norrish",
            1971,
            "The Ringed Decanter",
            new NoteMaker()
                .naming("plain rings", "ring-bladed", Why.MY_READING)
                .naming("triangular in section", "ring-bladed", Why.TEXT)
                .place("pl. 9", Stance.PICTURES, Medium.PHOTO, Shows.EXAMPLE, null, "n1")
                .place("p. 30", Stance.NAMES, Medium.TEXT, null, "triangular in section", "n1"),
            says("annulated ring", "ring-annulated").text("p. 31").photo("pl. 11"))
        .book(
            "Haskeld",
            1983,
            "A Table-Glass Primer",
            says("bladed ring", "ring-bladed").absent("p. 12"),
            says("annulated rings", "ring-annulated").text("p. 13"))
        .book("Farrow", 1988, "Triple Rings", prints("a triple-ringed quart").text("p. 7"))
        .book("Dunlavin", 1990, "Glass of the Two Islands")
        .work(
            own(
                monograph(
                    "Ruddick",
                    2016,
                    "Rings at Lantern Street",
                    says("knife ring", "ring-bladed")
                        .place(
                            "fig. 2",
                            Stance.PICTURES,
                            Medium.PHOTO,
                            Shows.EXAMPLE,
                            null,
                            null,
                            "quenby-a"))))
        .mine(
            new Mine(
                List.of(
                    new Mine.Preference(
                        "ring-bladed",
                        "knife ring",
                        Optional.empty(),
                        List.of(),
                        Optional.empty())),
                List.of(),
                List.of(),
                List.of()));
  }

  private static Work quenby() {
    return withEditions(
        monograph("Quenby", 1926, "Neck and Stopper"),
        edition(
            "quenby-1926",
            1926,
            says("knife-edged rings", "ring-bladed")
                .text("p. 41")
                .place(
                    "pl. XII, fig. 3",
                    Stance.PICTURES,
                    Medium.PHOTO,
                    Shows.EXAMPLE,
                    null,
                    null,
                    "quenby-a"),
            says("triple ring", "ring-annulated").text("p. 43").photo("pl. XIII")),
        descended(
            Form.REVISED,
            "quenby-1926",
            edition(
                "quenby-1949",
                1949,
                says("bladed ring", "ring-bladed")
                    .place(
                        "pl. 31",
                        Stance.PICTURES,
                        Medium.PHOTO,
                        Shows.EXAMPLE,
                        null,
                        null,
                        "quenby-a"))));
  }

  /** Each source has two rings in three, by one of three words. */
  static SmallLibrary of(int sources, int rings) {
    SmallLibrary library = new SmallLibrary();
    List<String> kinds = List.of("drawn", "heavy", "old");
    for (int s = 0; s < sources; s++) {
      List<Object> notes = new ArrayList<>();
      for (int r = 0; r < rings; r++) {
        if ((s + r) % 3 > 0) {
          String ring = RINGS.get(r);
          String word =
              kinds.get((s * r) % 3) + " " + ring.substring(5).replace('-', ' ') + " ring";
          NoteMaker note = says(word, ring).text("p. " + (10 + r));
          notes.add(s % 2 == 0 ? note.photo("pl. " + (1 + s) + ", fig. " + (1 + r)) : note);
        }
      }
      library.book(NAMES.get(s), 1900 + 5 * s, "On Glass", notes.toArray());
    }
    return library;
  }
}
