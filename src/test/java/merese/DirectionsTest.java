package merese;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Which room may use which, and which library is used where: DEVELOPERS.md, "Directions". */
@AnalyzeClasses(packages = "merese", importOptions = ImportOption.DoNotIncludeTests.class)
class DirectionsTest {
  /**
   * Rooms side by side don't know each other, with one exception: exchange writes CSL-JSON, and the
   * CSL item of a source is what citation makes; a second one would cite differently.
   */
  @ArchTest
  static final ArchRule everyRoomUsesOnlyTheRoomsBelowIt =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .withOptionalLayers(true)
          .layer("model")
          .definedBy("merese.model..")
          .layer("vocabulary")
          .definedBy("merese.vocabulary..")
          .layer("time")
          .definedBy("merese.time..")
          .layer("store")
          .definedBy("merese.store..")
          .layer("search")
          .definedBy("merese.search..")
          .layer("exchange")
          .definedBy("merese.exchange..")
          .layer("citation")
          .definedBy("merese.citation..")
          .layer("shelf")
          .definedBy("merese.shelf..")
          .layer("answer")
          .definedBy("merese.answer..")
          .layer("change")
          .definedBy("merese.change..")
          .layer("cli")
          .definedBy("merese.cli..")
          .layer("desk")
          .definedBy("merese.desk..")
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("desk")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("answer")
          .mayOnlyBeAccessedByLayers("cli", "desk")
          .whereLayer("change")
          .mayOnlyBeAccessedByLayers("cli", "desk")
          .whereLayer("shelf")
          .mayOnlyBeAccessedByLayers("answer", "change", "cli", "desk")
          .whereLayer("store")
          .mayOnlyBeAccessedByLayers("shelf", "answer", "change", "cli", "desk")
          .whereLayer("search")
          .mayOnlyBeAccessedByLayers("shelf", "answer", "change", "cli", "desk")
          .whereLayer("exchange")
          .mayOnlyBeAccessedByLayers("shelf", "answer", "change", "cli", "desk")
          .whereLayer("citation")
          .mayOnlyBeAccessedByLayers("exchange", "shelf", "answer", "change", "cli", "desk")
          .whereLayer("model")
          .mayNotAccessAnyLayer()
          .whereLayer("vocabulary")
          .mayOnlyAccessLayers("model")
          .whereLayer("time")
          .mayOnlyAccessLayers("model");

  @ArchTest
  static final ArchRule noTwoRoomsUseEachOther =
      slices().matching("merese.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule theModelKnowsOnlyTheLanguage =
      classes()
          .that()
          .resideInAPackage("merese.model..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "merese.model..", "java.lang..", "java.util..", "java.time..", "java.text..");

  @ArchTest static final ArchRule luceneStaysInSearch = only("search", "org.apache.lucene..");

  @ArchTest
  static final ArchRule theCitationEngineStaysInCitation =
      only("citation", "de.undercouch.citeproc..");

  @ArchTest static final ArchRule bibtexStaysInExchange = only("exchange", "org.jbibtex..");

  @ArchTest static final ArchRule theSolverStaysInItsRoom = only("answer.fewest", "org.ojalgo..");

  @ArchTest static final ArchRule marcStaysInExchange = only("exchange", "org.marc4j..");

  @ArchTest
  static final ArchRule thePdfReaderStaysInItsRoom =
      only("exchange.pages", "org.apache.pdfbox..", "org.apache.fontbox..");

  @ArchTest static final ArchRule theReaderOfHtmlStaysInExchange = only("exchange", "org.jsoup..");

  /**
   * It takes as long to load as a hello-world takes to run, so nothing on the way to an answer may
   * need it.
   */
  @ArchTest
  static final ArchRule dataBindingStaysInItsRoom =
      only("answer.json", "com.fasterxml.jackson.databind..");

  @ArchTest
  static final ArchRule theServerStaysInTheDesk =
      only("desk", "io.javalin..", "org.eclipse.jetty..");

  @ArchTest static final ArchRule templatesStayInTheDesk = only("desk", "gg.jte..");

  @ArchTest static final ArchRule picocliStaysInCli = only("cli", "picocli..");

  private static ArchRule only(String room, String... library) {
    return noClasses()
        .that()
        .resideOutsideOfPackage("merese." + room + "..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(library)
        .allowEmptyShould(true);
  }
}
