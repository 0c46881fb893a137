package merese.exchange.bibtex;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import merese.exchange.Aspect;
import merese.exchange.Outgoing;
import merese.model.Work;
import merese.shelf.Shelf;
import merese.testing.DemoLibrary;
import merese.testing.HostileLibrary;
import merese.testing.InTurkishLocale;
import merese.testing.ManyWorks;
import merese.testing.SmallLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A library that goes out, comes in and goes out again gives the same bytes. */
class LibraryRoundTripTest {
  /** A statement has no field for who asked. */
  private static final Set<String> WITHOUT_A_FIELD = Set.of("imray-2022");

  @TempDir private Path folder;

  private static void assertSame(Shelf shelf, Flavour flavour) throws IOException {
    String out = BibExports.of(shelf, flavour);
    BibLibrary read = BibLibrary.read(out);
    assertEquals(BibExports.sources(shelf).size(), read.sources().size());
    assertEquals(out, read.written(flavour));
  }

  @ParameterizedTest
  @EnumSource
  void theDemo(Flavour flavour) throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      assertSame(shelf, flavour);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aHostileOne(Flavour flavour) throws IOException {
    try (Shelf shelf = HostileLibrary.make().open(folder)) {
      assertSame(shelf, flavour);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aLargeOne(Flavour flavour) throws IOException {
    SmallLibrary library = new SmallLibrary();
    try (Shelf demo = DemoLibrary.open(folder.resolve("demo"))) {
      ManyWorks.of(demo.thesaurus(), 300, 4).forEach(library::work);
    }
    try (Shelf shelf = library.open(folder.resolve("large"))) {
      assertSame(shelf, flavour);
    }
  }

  @ParameterizedTest
  @EnumSource
  @InTurkishLocale
  void theDemoInAnotherLocale(Flavour flavour) throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      assertSame(shelf, flavour);
    }
  }

  @Test
  void whatCameInForBibtexGoesOutForBiblatex() throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      String out = BibExports.of(shelf, Flavour.BIBTEX);
      assertEquals(
          BibLibrary.read(out).records(),
          BibLibrary.read(BibLibrary.read(out).written(Flavour.BIBLATEX)).records());
    }
  }

  /** Who has a role in the library has it again. */
  @Test
  void peopleOfWhatIsForBiblatexKeepTheirRoles() throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      BibLibrary read = BibLibrary.read(BibExports.of(shelf, Flavour.BIBLATEX));
      for (Outgoing source : BibExports.sources(shelf)) {
        boolean named = !source.work().contributors().isEmpty();
        if (source.part().isEmpty() && named && !WITHOUT_A_FIELD.contains(source.id())) {
          assertEquals(
              Set.copyOf(source.work().contributors()),
              Set.copyOf(read.source(source.id()).work().contributors()),
              source.id());
        }
      }
    }
  }

  @Test
  void whatCameInForBiblatexSaysTheSameForBibtex() throws IOException {
    try (Shelf shelf = DemoLibrary.open(folder)) {
      BibLibrary read = BibLibrary.read(BibExports.of(shelf, Flavour.BIBLATEX));
      BibLibrary again = BibLibrary.read(read.written(Flavour.BIBTEX));
      for (Outgoing source : read.sources()) {
        Work other = again.source(source.id()).work();
        for (Aspect aspect : List.of(Aspect.KIND, Aspect.TITLE, Aspect.LANGUAGE, Aspect.VOLUMES)) {
          assertEquals(aspect.printed(source.work()), aspect.printed(other), source.id());
        }
        assertEquals(source.edition().imprint().year(), other.editions().get(0).imprint().year());
        assertEquals(source.work().makers(), other.makers());
      }
    }
  }
}
