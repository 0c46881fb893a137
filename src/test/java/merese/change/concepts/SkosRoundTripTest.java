package merese.change.concepts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import merese.model.Concept;
import merese.model.Concept.Label;
import merese.model.Concept.LookAlike;
import merese.model.Concept.Match;
import merese.model.Facet;
import merese.model.Homonym;
import merese.store.LibraryFolder;
import merese.vocabulary.SkosIntegrity;
import merese.vocabulary.Thesaurus;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever a sound vocabulary holds: out, in and out again gives the same bytes. */
class SkosRoundTripTest {
  private static final List<String> IDS =
      List.of("a", "knop-ball", "b.c", "é", "with space", "x/y", "100%", "facet", "homonyms");
  private static final List<String> FACETS = List.of("ring", "stem twist", "knop");

  @Property(tries = 40, seed = "1")
  void outInAndOutAgainGivesTheSameBytes(@ForAll("vocabularies") Thesaurus vocabulary)
      throws IOException {
    Path folder = Files.createTempDirectory("merese-skos");
    try {
      LibraryFolder first = library(folder.resolve("one"), vocabulary);
      String written = Vocabularies.exported(first);
      ConceptImport same =
          ConceptImport.plan(first, Vocabularies.read(written), ConceptOptions.usual());
      assertTrue(same.result().changesNothing(), () -> same.result().toString());
      assertEquals(List.of(), same.result().questions());
      assertTrue(same.result().there().stream().allMatch(there -> there.changes().isEmpty()));

      LibraryFolder second = Vocabularies.of(folder.resolve("two"), List.of());
      ConceptImport.plan(second, Vocabularies.read(written), ConceptOptions.usual()).apply();
      List<String> after = Vocabularies.exported(second).lines().toList();
      List<String> before = written.lines().toList();
      for (int i = 0; i < before.size(); i++) {
        assertEquals(before.get(i), after.get(i), "line " + (i + 1));
      }
      assertEquals(written, Vocabularies.exported(second));

    } finally {
      delete(folder);
    }
  }

  private static LibraryFolder library(Path folder, Thesaurus vocabulary) {
    LibraryFolder library =
        Vocabularies.of(
            folder,
            List.copyOf(vocabulary.facets()),
            vocabulary.concepts().toArray(Concept[]::new));
    library.save(library.readHomonyms(), vocabulary.register());
    return library;
  }

  private static void delete(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Provide
  Arbitrary<Thesaurus> vocabularies() {
    return Arbitraries.of(IDS)
        .set()
        .ofMinSize(1)
        .flatMap(
            ids ->
                concepts(List.copyOf(ids))
                    .flatMap(concepts -> register(ids).map(r -> thesaurus(concepts, r))))
        .filter(SkosRoundTripTest::isSound);
  }

  private static boolean isSound(Thesaurus thesaurus) {
    return SkosIntegrity.check(thesaurus.facets(), thesaurus.concepts(), thesaurus.register())
        .isEmpty();
  }

  /** A facet without concepts is not written, as it says nothing. */
  private static Thesaurus thesaurus(List<Concept> concepts, List<Homonym> register) {
    Set<String> used = new LinkedHashSet<>();
    concepts.forEach(concept -> used.add(concept.facet()));
    List<Facet> facets = new ArrayList<>();
    used.stream()
        .sorted()
        .forEach(
            id ->
                facets.add(
                    new Facet(
                        id,
                        id.equals("ring") ? Optional.of("ring: one") : Optional.empty(),
                        id.equals("knop") ? List.of("stem", "neck") : List.of())));
    return Thesaurus.of(facets, concepts, register);
  }

  private static Arbitrary<List<Concept>> concepts(List<String> ids) {
    Arbitrary<List<Concept>> all = Arbitraries.just(List.of());
    for (int i = 0; i < ids.size(); i++) {
      String id = ids.get(i);
      List<String> before = ids.subList(0, i);
      all =
          all.flatMap(
              some ->
                  concept(id, before, ids)
                      .map(
                          concept -> {
                            List<Concept> more = new ArrayList<>(some);
                            more.add(concept);
                            return more;
                          }));
    }
    return all;
  }

  private static Arbitrary<Concept> concept(String id, List<String> before, List<String> all) {
    Arbitrary<List<String>> broader =
        before.isEmpty()
            ? Arbitraries.just(List.of())
            : Arbitraries.of(before).set().ofMaxSize(2).map(List::copyOf);
    Arbitrary<List<LookAlike>> lookAlikes =
        Combinators.combine(Arbitraries.of(all), texts().optional())
            .as(LookAlike::new)
            .list()
            .ofMaxSize(3)
            .uniqueElements(LookAlike::concept);
    return Combinators.combine(
            Arbitraries.of(FACETS),
            labels(),
            texts(),
            broader,
            lookAlikes,
            texts().optional(),
            Arbitraries.of(Concept.Status.values()),
            matches())
        .as(
            (facet, labels, definition, above, alike, remark, status, matches) ->
                new Concept(
                    id,
                    facet,
                    labels.get(0),
                    labels.subList(1, Math.max(1, labels.size() - 1)),
                    labels.size() > 1
                        ? labels.subList(labels.size() - 1, labels.size())
                        : List.of(),
                    definition,
                    above,
                    alike,
                    remark,
                    status,
                    matches));
  }

  private static Arbitrary<List<Label>> labels() {
    return Combinators.combine(texts(), texts().optional(0.3), Arbitraries.of(true, false))
        .as(Label::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(5)
        .uniqueElements(Label::text)
        .filter(
            labels -> labels.stream().map(Thesaurus::display).distinct().count() == labels.size());
  }

  private static Arbitrary<List<Match>> matches() {
    Arbitrary<String> uris =
        Arbitraries.of(
            "http://vocab.getty.edu/aat/300010175",
            "https://example.org/glass#ä",
            "urn:isbn:0306406152",
            "no address",
            "a> b");
    return Combinators.combine(Arbitraries.of(Match.Kind.values()), uris)
        .as(Match::new)
        .list()
        .ofMaxSize(2)
        .uniqueElements(Match::uri);
  }

  private static Arbitrary<List<Homonym>> register(Set<String> ids) {
    return Combinators.combine(
            Arbitraries.of("collar", "triple ring", "“odd”", "ring; or: not"),
            Arbitraries.of(ids).set().ofMinSize(1).map(List::copyOf),
            texts().optional())
        .as(Homonym::new)
        .list()
        .ofMaxSize(2)
        .uniqueElements(Homonym::word);
  }

  /** Words, and what our own notes are made of. */
  private static Arbitrary<String> texts() {
    Arbitrary<String> words =
        Arbitraries.of(
            "ring",
            "bladed ring",
            "bell (body)",
            "(",
            ")",
            " (x",
            "“",
            "”",
            " is ",
            "[a]",
            "]: ",
            "Mistaken for ",
            "is also used for something else",
            "Status: uncertain; usage varies",
            "\"",
            "\\",
            "\n",
            "\t",
            "\u0001",
            "é",
            "\uD83C\uDF77",
            "'''",
            "@en",
            "^^",
            "; ",
            "<>");
    return words
        .list()
        .ofMinSize(1)
        .ofMaxSize(3)
        .map(parts -> String.join("", parts))
        .filter(text -> !text.isBlank());
  }
}
