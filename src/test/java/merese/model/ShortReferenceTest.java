package merese.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Edition.Lineage.Form;
import org.junit.jupiter.api.Test;

/** The first forms are those of domain.md, sections B and E. */
class ShortReferenceTest {

  private static Name person(String family) {
    return new Name.Person(family, Optional.of("A."), Optional.empty(), Optional.empty());
  }

  private static Work work(SourceKind kind, Contributor... contributors) {
    return new Work(
        "w",
        kind,
        "Hints to Glass-Sellers",
        Optional.empty(),
        List.of(),
        List.of(contributors),
        Optional.empty(),
        false,
        List.of(),
        List.of());
  }

  private static Work by(Name... authors) {
    List<Contributor> contributors = new ArrayList<>();
    for (Name author : authors) {
      contributors.add(new Contributor(Contributor.Role.AUTHOR, author));
    }
    return work(SourceKind.MONOGRAPH, contributors.toArray(Contributor[]::new));
  }

  private static Edition edition(int year, String printed, Form form, int original) {
    return edition(year, printed, form, original, Optional.empty());
  }

  private static Edition edition(
      int year, String printed, Form form, int original, Optional<Edition.Occasion> occasion) {
    return new Edition(
        "k",
        new Edition.Imprint(
            Optional.empty(),
            OptionalInt.empty(),
            year == 0 ? OptionalInt.empty() : OptionalInt.of(year),
            Optional.ofNullable(printed),
            List.of(),
            Optional.empty(),
            OptionalInt.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty()),
        Optional.ofNullable(form)
            .map(
                f ->
                    new Edition.Lineage(
                        f,
                        Optional.empty(),
                        original == 0 ? OptionalInt.empty() : OptionalInt.of(original),
                        Optional.empty(),
                        List.of())),
        Optional.empty(),
        occasion,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static final Edition OF_1949 = edition(1949, null, null, 0);

  @Test
  void namesTheFamilyAndTheYear() {
    assertEquals("Quenby 1949", ShortReference.of(by(person("Quenby")), OF_1949));
  }

  @Test
  void namesTwoAuthorsAndShortensMore() {
    assertEquals(
        "Quenby and Norrish 1949",
        ShortReference.of(by(person("Quenby"), person("Norrish")), OF_1949));
    assertEquals(
        "Quenby et al. 1949",
        ShortReference.of(by(person("Quenby"), person("Norrish"), person("Farrow")), OF_1949));
  }

  @Test
  void keepsAParticle() {
    Name name =
        new Name.Person("Meeuwen", Optional.empty(), Optional.of("van der"), Optional.empty());
    assertEquals("van der Meeuwen 1949", ShortReference.of(by(name), OF_1949));
  }

  @Test
  void namesABodyInFullAndAnAnonymousWorkByItsTitle() {
    assertEquals(
        "Ashlode Museum 1949", ShortReference.of(by(new Name.Body("Ashlode Museum")), OF_1949));
    assertEquals("Hints to Glass-Sellers 1949", ShortReference.of(by(), OF_1949));
  }

  @Test
  void namesAnEditorWhereThereIsNoAuthor() {
    Work edited =
        work(
            SourceKind.EXHIBITION_CATALOGUE,
            new Contributor(Contributor.Role.EDITOR, person("Penhallow")));
    assertEquals("Penhallow 1949", ShortReference.of(edited, OF_1949));
  }

  @Test
  void namesASaleByItsHouse() {
    Edition sale =
        edition(
            1988,
            null,
            null,
            0,
            Optional.of(
                new Edition.Occasion(
                    Optional.of("Brackley & Thorne"),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of())));
    assertEquals(
        "Brackley & Thorne 1988", ShortReference.of(work(SourceKind.SALE_CATALOGUE), sale));
  }

  @Test
  void printsTheYearAsTheSourceOrTheUserDoes() {
    Work work = by(person("Quenby"));
    assertEquals("Quenby [c. 1926]", ShortReference.of(work, edition(1926, "[c. 1926]", null, 0)));
    assertEquals("Quenby n.d.", ShortReference.of(work, edition(0, null, null, 0)));
  }

  @Test
  void givesAFacsimileTheYearOfItsOriginalToo() {
    Work work = by(person("Quenby"));
    assertEquals(
        "Quenby 1926, facs. 1977",
        ShortReference.of(work, edition(1977, null, Form.FACSIMILE, 1926)));
    assertEquals(
        "Quenby 1926, repr. 1951",
        ShortReference.of(work, edition(1951, null, Form.REPRINT, 1926)));
    assertEquals("Quenby 1949", ShortReference.of(work, edition(1949, null, Form.REVISED, 1926)));
  }

  @Test
  void namesTheAuthorOfAPart() {
    Edition.Part essay =
        new Edition.Part("e", "Rings", List.of(person("Farrow")), Optional.empty());
    assertEquals("Farrow 1949", ShortReference.of(by(person("Quenby")), OF_1949, essay));
    Edition.Part entry = new Edition.Part("e", "Rings", List.of(), Optional.empty());
    assertEquals("Quenby 1949", ShortReference.of(by(person("Quenby")), OF_1949, entry));
  }
}
