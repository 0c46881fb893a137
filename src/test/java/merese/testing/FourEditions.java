package merese.testing;

import static merese.testing.SmallLibrary.edition;
import static merese.testing.SmallLibrary.monograph;
import static merese.testing.SmallLibrary.says;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Edition.Lineage.Form;
import merese.model.Edition.PlateChange;
import merese.model.Edition.PlateChange.Fate;
import merese.model.Locator;
import merese.model.Place.Medium;
import merese.model.Place.Shows;
import merese.model.Place.Stance;
import merese.model.Work;
import merese.testing.SmallLibrary.NoteMaker;

/** One invented work in four editions, one of them a facsimile, and a book that follows it. */
public final class FourEditions {
  private FourEditions() {}

  public static SmallLibrary library() {
    Edition first =
        withoutCopies(edition("quenby-1926", 1926, pictured("sharp ring", "p. 61", "pl. XXIV")));
    Edition second =
        descended(
            edition("quenby-1949", 1949, pictured("bladed ring", "p. 70", "pl. 31")),
            Form.REVISED,
            "quenby-1926",
            List.of(plate(Fate.KEPT, "pl. 31")));
    Edition third =
        withoutCopies(
            descended(
                edition("quenby-1968", 1968),
                Form.REVISED,
                "quenby-1949",
                List.of(plate(Fate.DROPPED, null), plate(Fate.OTHER_OBJECT, "fig. 112"))));
    Edition facsimile =
        descended(edition("quenby-1977", 1977), Form.FACSIMILE, "quenby-1926", List.of());
    return new SmallLibrary()
        .work(with(monograph("Quenby", 1926, "Neck and Stopper"), first, second, third, facsimile))
        .book("Tressick", 1954, "Cut and Blown", says("bladed ring", "ring-bladed").text("p. 88"));
  }

  private static NoteMaker pictured(String printed, String text, String plate) {
    return says(printed, "ring-bladed")
        .text(text)
        .place(plate, Stance.PICTURES, Medium.PHOTO, Shows.EXAMPLE, null, null, "photograph");
  }

  private static PlateChange plate(Fate fate, String locator) {
    return new PlateChange(
        "photograph", Optional.ofNullable(locator).map(Locator::parse), fate, Optional.empty());
  }

  public static Work with(Work work, Edition... editions) {
    return work.withEditions(List.of(editions));
  }

  public static Edition descended(
      Edition edition, Form form, String parent, List<PlateChange> plates) {
    return edition.withLineage(
        new Lineage(
            form, Optional.ofNullable(parent), OptionalInt.of(1926), Optional.empty(), plates));
  }

  private static Edition withoutCopies(Edition edition) {
    return withCopies(edition, List.of());
  }

  public static Edition withCopies(Edition edition, List<Copy> copies) {
    return new Edition(
        edition.key(),
        edition.imprint(),
        edition.lineage(),
        edition.container(),
        edition.occasion(),
        edition.archive(),
        edition.online(),
        edition.scope(),
        edition.parts(),
        copies,
        edition.notes(),
        edition.checks(),
        edition.received());
  }
}
