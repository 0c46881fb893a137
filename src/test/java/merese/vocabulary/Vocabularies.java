package merese.vocabulary;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;

/** Vocabularies for tests: the starter thesaurus, and small ones made on the spot. */
final class Vocabularies {
  static final Path STARTER = Path.of("library", "vocabulary");

  final List<Facet> facets = new ArrayList<>();
  final List<Concept> concepts = new ArrayList<>();
  final List<Homonym> register = new ArrayList<>();

  private Vocabularies() {}

  static Thesaurus starterThesaurus() {
    Vocabularies starter = starter();
    return Thesaurus.of(starter.facets, starter.concepts, starter.register);
  }

  /** The starter as it stands in the demo library, read without any code of ours. */
  static Vocabularies starter() {
    Vocabularies read = new Vocabularies();
    for (Path file : files()) {
      JsonObject json = json(file);
      if (json.has("facet")) {
        read.facet(json);
      } else if (json.has("homonyms")) {
        for (JsonElement homonym : json.getAsJsonArray("homonyms")) {
          JsonObject entry = homonym.getAsJsonObject();
          read.register.add(
              new Homonym(text(entry, "word"), texts(entry, "concepts"), maybe(entry, "remark")));
        }
      }
    }
    return read;
  }

  static List<Path> files() {
    try (Stream<Path> files = Files.list(STARTER)) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonObject json(Path file) {
    try {
      return JsonParser.parseString(Files.readString(file)).getAsJsonObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A concept of a facet "x" with the given broader ids. */
  static Concept concept(String id, String label, String... broader) {
    return concept(id, "x", List.of(label), List.of(broader), List.of());
  }

  static Concept concept(
      String id,
      String facet,
      List<String> labels,
      List<String> broader,
      List<Concept.LookAlike> lookAlikes) {
    return new Concept(
        id,
        facet,
        Concept.Label.of(labels.get(0)),
        labels.stream().skip(1).map(Concept.Label::of).toList(),
        List.of(),
        "Invented for a test.",
        broader,
        lookAlikes,
        Optional.empty(),
        Concept.Status.COMMON,
        List.of());
  }

  static Thesaurus of(Concept... concepts) {
    return Thesaurus.of(List.of(facet("x")), Arrays.asList(concepts), List.of());
  }

  static Facet facet(String id) {
    return new Facet(id, Optional.empty(), List.of());
  }

  private void facet(JsonObject json) {
    String id = text(json, "facet");
    facets.add(new Facet(id, maybe(json, "headNoun"), texts(json, "optionalWords")));
    for (JsonElement element : json.getAsJsonArray("concepts")) {
      JsonObject c = element.getAsJsonObject();
      List<Concept.LookAlike> lookAlikes = new ArrayList<>();
      for (JsonElement lookAlike : array(c, "lookAlikes")) {
        JsonObject pair = lookAlike.getAsJsonObject();
        lookAlikes.add(new Concept.LookAlike(text(pair, "concept"), maybe(pair, "test")));
      }
      concepts.add(
          new Concept(
              text(c, "id"),
              id,
              label(c.get("prefLabel")),
              labels(c, "altLabels"),
              labels(c, "hiddenLabels"),
              text(c, "definition"),
              texts(c, "broader"),
              lookAlikes,
              maybe(c, "lookAlikeRemark"),
              Concept.Status.valueOf(text(c, "status").toUpperCase(Locale.ROOT)),
              matches(c)));
    }
  }

  private static List<Concept.Match> matches(JsonObject json) {
    List<Concept.Match> matches = new ArrayList<>();
    for (JsonElement element : array(json, "matches")) {
      JsonObject match = element.getAsJsonObject();
      String kind = text(match, "kind").toUpperCase(Locale.ROOT).replace('-', '_');
      matches.add(new Concept.Match(Concept.Match.Kind.valueOf(kind), text(match, "uri")));
    }
    return matches;
  }

  private static List<Concept.Label> labels(JsonObject json, String key) {
    List<Concept.Label> labels = new ArrayList<>();
    array(json, key).forEach(element -> labels.add(label(element)));
    return labels;
  }

  private static Concept.Label label(JsonElement json) {
    if (json.isJsonPrimitive()) {
      return Concept.Label.of(json.getAsString());
    }
    JsonObject label = json.getAsJsonObject();
    return new Concept.Label(text(label, "text"), maybe(label, "scope"), label.has("elsewhere"));
  }

  private static JsonArray array(JsonObject json, String key) {
    return json.has(key) ? json.getAsJsonArray(key) : new JsonArray();
  }

  private static List<String> texts(JsonObject json, String key) {
    List<String> texts = new ArrayList<>();
    array(json, key).forEach(element -> texts.add(element.getAsString()));
    return texts;
  }

  private static String text(JsonObject json, String key) {
    return json.get(key).getAsString();
  }

  private static Optional<String> maybe(JsonObject json, String key) {
    return json.has(key) ? Optional.of(text(json, key)) : Optional.empty();
  }
}
