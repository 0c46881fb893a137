package merese.change.concepts;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import merese.exchange.skos.SkosAddresses;
import merese.exchange.skos.SkosReader;
import merese.exchange.skos.SkosReading;
import merese.exchange.skos.SkosWriter;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.store.LibraryFile;
import merese.store.LibraryFolder;
import merese.store.VocabularyFile;
import merese.vocabulary.Thesaurus;

/** Libraries that have a vocabulary and nothing else, and what is read and written of them. */
public final class Vocabularies {
  static final String PREFIXES =
      """
      @prefix skos: <http://www.w3.org/2004/02/skos/core#> .
      @prefix ex: <https://example.org/glass/> .
      @prefix : <urn:merese:vocabulary:> .
      """;

  private Vocabularies() {}

  /** A new library in a folder, with just these concepts. */
  static LibraryFolder of(Path folder, List<Facet> facets, Concept... concepts) {
    Path root = folder.resolve("library");
    try {
      Files.createDirectories(root.resolve("vocabulary"));
      Files.writeString(
          root.resolve("library.json"),
          "{\n  \"format\": 2,\n  \"title\": \"Rings and knops\",\n  \"language\": \"en-GB\"\n}\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    LibraryFolder library = LibraryFolder.open(root);
    for (Facet facet : facets) {
      library.add(
          new VocabularyFile(
              facet, Stream.of(concepts).filter(c -> c.facet().equals(facet.id())).toList()));
    }
    return library;
  }

  static Facet facet(String id) {
    return new Facet(id, Optional.empty(), List.of());
  }

  static Concept concept(String id, String facet, String preferred, String... alternatives) {
    return new Concept(
        id,
        facet,
        Concept.Label.of(preferred),
        Stream.of(alternatives).map(Concept.Label::of).toList(),
        List.of(),
        "What a " + preferred + " is.",
        List.of(),
        List.of(),
        Optional.empty(),
        Concept.Status.COMMON,
        List.of());
  }

  static Concept below(String broader, Concept concept) {
    return new Concept(
        concept.id(),
        concept.facet(),
        concept.preferred(),
        concept.alternatives(),
        concept.hidden(),
        concept.definition(),
        List.of(broader),
        concept.lookAlikes(),
        concept.lookAlikeRemark(),
        concept.status(),
        concept.matches());
  }

  static Concept matching(Concept concept, Concept.Match... matches) {
    return new Concept(
        concept.id(),
        concept.facet(),
        concept.preferred(),
        concept.alternatives(),
        concept.hidden(),
        concept.definition(),
        concept.broader(),
        concept.lookAlikes(),
        concept.lookAlikeRemark(),
        concept.status(),
        List.of(matches));
  }

  /** Turtle, with the prefixes skos and ex, and the library's own as the empty one. */
  public static SkosReading turtle(String statements) {
    return read(PREFIXES + statements);
  }

  static SkosReading read(String turtle) {
    try {
      return SkosReader.usual()
          .read("glass.ttl", new ByteArrayInputStream(turtle.getBytes(StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Concept get(LibraryFolder library, String id) {
    return thesaurus(library).concept(id).orElseThrow(() -> new AssertionError(id));
  }

  static Thesaurus thesaurus(LibraryFolder library) {
    List<Facet> facets = new ArrayList<>();
    List<Concept> concepts = new ArrayList<>();
    for (LibraryFile file : library.scan()) {
      if (file.kind() == LibraryFile.Kind.VOCABULARY) {
        VocabularyFile vocabulary = library.readVocabulary(file.path()).value();
        facets.add(vocabulary.facet());
        concepts.addAll(vocabulary.concepts());
      }
    }
    List<Homonym> register = library.readHomonyms().value();
    return Thesaurus.of(facets, concepts, register);
  }

  static String exported(LibraryFolder library) {
    StringWriter out = new StringWriter();
    try {
      new SkosWriter(
              SkosAddresses.usual(), library.settings().title(), library.settings().language())
          .write(thesaurus(library), library.readKept().value(), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  /** All files of a library, those that are hidden aside, with what they hold. */
  static Map<String, String> files(LibraryFolder library) {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(library.path())) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        String name = library.path().relativize(file).toString();
        if (!name.startsWith(".")) {
          files.put(name, Files.readString(file, ISO_8859_1));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }
}
