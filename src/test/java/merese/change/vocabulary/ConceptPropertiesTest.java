package merese.change.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import merese.change.ChangeRefusedException;
import merese.change.LibraryCheck;
import merese.model.Concept;
import merese.model.Concept.LookAlike;
import merese.model.Concept.Status;
import merese.model.Naming;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.testing.DemoLibrary;
import merese.vocabulary.Thesaurus;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterTry;
import net.jqwik.api.lifecycle.BeforeTry;

/**
 * What holds after any changes of the vocabulary: no printed term is another (the project's
 * domain.md, F8: the printed wording is never dropped or corrected), no reference leads nowhere,
 * and S13, S14, S27 and S46 of the SKOS Reference hold as they did.
 */
@Label("Over random changes of the demo's vocabulary")
class ConceptPropertiesTest {
  private static final int OPERATIONS = 14;

  private Path dir;

  @BeforeTry
  void makeAFolder() throws IOException {
    dir = Files.createTempDirectory("concepts");
  }

  @AfterTry
  void deleteIt() throws IOException {
    try (Stream<Path> all = Files.walk(dir)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }

  @Property(tries = 12, shrinking = ShrinkingMode.OFF, seed = "20261130")
  void noPrintedTermChangesAndNoReferenceLeadsNowhere(@ForAll long seed) throws IOException {
    LibraryFolder library = DemoLibrary.copyTo(dir);
    Random random = new Random(seed);
    List<String> printed = printed(library);
    Set<Set<String>> kin = mistakenKin(library);
    int done = 0;
    for (int i = 0; i < OPERATIONS; i++) {
      ConceptRequest request = request(random, library, i);
      Map<String, byte[]> before = bytes();
      try {
        ConceptChange.apply(library, request);
        done++;
        kin = mapped(kin, request);
      } catch (ChangeRefusedException e) {
        assertSame(before, bytes(), request);
      }
      assertEquals(printed, printed(library), () -> "after " + request);
    }
    LibraryCheck check = LibraryCheck.of(library);
    assertEquals(0, check.errors(), () -> check.problems().toString());
    assertTrue(kin.containsAll(mistakenKin(library)), "no new look-alike is broader or narrower");
    assertTrue(done > 3, done + " of " + OPERATIONS + " were done");
  }

  private static Set<Set<String>> mapped(Set<Set<String>> pairs, ConceptRequest request) {
    String from = "";
    String to = "";
    if (request instanceof ConceptRequest.Merge merge) {
      from = merge.gone();
      to = merge.kept();
    } else if (request instanceof ConceptRequest.Rename rename && rename.id().isPresent()) {
      from = rename.concept();
      to = rename.id().get();
    }
    Set<Set<String>> mapped = new HashSet<>();
    for (Set<String> pair : pairs) {
      Set<String> ids = new HashSet<>(pair);
      if (ids.remove(from)) {
        ids.add(to);
      }
      mapped.add(ids);
    }
    return mapped;
  }

  private static ConceptRequest request(Random random, LibraryFolder library, int number) {
    List<Concept> concepts = new ArrayList<>(WholeVocabulary.read(library).concepts());
    Concept one = concepts.get(random.nextInt(concepts.size()));
    Concept other = concepts.get(random.nextInt(concepts.size()));
    String fresh = "new-" + number;
    List<String> printed = printedFor(library, one.id());
    return switch (random.nextInt(8)) {
      case 0 -> added(random, one, other, fresh);
      case 1 ->
          new ConceptRequest.Rename(
              one.id(),
              Optional.of(random.nextBoolean() ? fresh + " ring" : other.preferred().text()),
              Optional.empty(),
              random.nextBoolean() ? Optional.of(fresh) : Optional.empty(),
              random.nextBoolean());
      case 2 ->
          new ConceptRequest.Rename(
              one.id(), Optional.empty(), Optional.empty(), Optional.of(fresh), false);
      case 3, 4 -> new ConceptRequest.Merge(one.id(), other.id());
      case 5 ->
          new ConceptRequest.Split(
              one.id(),
              fresh,
              fresh + " ring",
              Optional.empty(),
              Optional.of("Something new."),
              List.of(),
              one.alternatives().stream().limit(1).map(Concept.Label::text).toList(),
              printed.stream().limit(1).toList(),
              List.of(),
              List.of(),
              Optional.of("is new"));
      case 6 ->
          new ConceptRequest.Move(
              one.id(),
              Optional.of(other.id()),
              Optional.empty(),
              random.nextBoolean(),
              false,
              random.nextBoolean() ? Optional.of(other.facet()) : Optional.empty(),
              Optional.empty());
      default ->
          new ConceptRequest.Mistaken(
              one.id(), other.id(), Optional.of("a test"), random.nextInt(4) == 0);
    };
  }

  private static ConceptRequest added(Random random, Concept one, Concept other, String fresh) {
    return new ConceptRequest.Add(
        fresh,
        Optional.empty(),
        Optional.empty(),
        fresh + " ring",
        Optional.empty(),
        "Something new.",
        List.of(one.id()),
        List.of(other.preferred().text()),
        random.nextBoolean() ? List.of() : List.of(fresh + " rign"),
        List.of(new LookAlike(other.id(), Optional.empty())),
        Status.UNCERTAIN);
  }

  private static List<String> printedFor(LibraryFolder library, String concept) {
    List<String> printed = new ArrayList<>();
    for (LibraryFile file : library.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        library.readWork(file.path()).value().editions().stream()
            .flatMap(edition -> edition.notes().stream())
            .flatMap(note -> note.namings().stream())
            .filter(naming -> naming.means(concept) && !naming.printed().isEmpty())
            .map(Naming::printed)
            .forEach(printed::add);
      }
    }
    return printed;
  }

  /** Every printed term with the note that it stands in, in the order of the files. */
  private static List<String> printed(LibraryFolder library) {
    List<String> printed = new ArrayList<>();
    for (LibraryFile file : library.scan()) {
      if (file.kind() == LibraryFile.Kind.WORK) {
        library
            .readWork(file.path())
            .value()
            .editions()
            .forEach(
                edition ->
                    edition
                        .notes()
                        .forEach(
                            note ->
                                note.namings()
                                    .forEach(
                                        naming ->
                                            printed.add(
                                                edition.key()
                                                    + "/"
                                                    + note.id()
                                                    + " "
                                                    + naming.printed()))));
      }
    }
    return printed;
  }

  private static Set<Set<String>> mistakenKin(LibraryFolder library) {
    WholeVocabulary vocabulary = WholeVocabulary.read(library);
    Thesaurus thesaurus = vocabulary.thesaurus();
    Set<Set<String>> pairs = new HashSet<>();
    for (Concept concept : vocabulary.concepts()) {
      for (LookAlike other : concept.lookAlikes()) {
        if (thesaurus.isBroader(concept.id(), other.concept())
            || thesaurus.isBroader(other.concept(), concept.id())) {
          pairs.add(Set.of(concept.id(), other.concept()));
        }
      }
    }
    return pairs;
  }

  private Map<String, byte[]> bytes() throws IOException {
    Map<String, byte[]> bytes = new TreeMap<>();
    try (Stream<Path> all = Files.walk(dir)) {
      for (Path path : all.filter(p -> p.toString().endsWith(".json")).toList()) {
        bytes.put(dir.relativize(path).toString(), Files.readAllBytes(path));
      }
    }
    return bytes;
  }

  private static void assertSame(
      Map<String, byte[]> before, Map<String, byte[]> after, ConceptRequest request) {
    assertEquals(before.keySet(), after.keySet(), () -> "refused: " + request);
    before.forEach(
        (file, bytes) ->
            assertTrue(
                java.util.Arrays.equals(bytes, after.get(file)), file + ", refused: " + request));
  }
}
