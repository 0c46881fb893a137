package merese.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import merese.model.Concept;
import merese.model.Homonym;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The starter thesaurus against the table it was made from: common practice of the trade, no
 * published source. Each row is put together again from the JSON and compared with the row as text.
 */
class StarterThesaurusTest {
  private static final Path RESOURCES = Path.of("src/test/resources/merese/vocabulary");
  private static final String NOTHING = "–";

  private final Vocabularies starter = Vocabularies.starter();
  private final Map<String, Concept> concepts =
      starter.concepts.stream()
          .collect(Collectors.toMap(Concept::id, c -> c, (a, b) -> a, LinkedHashMap::new));

  @TestFactory
  Stream<DynamicTest> everyRowStandsInTheFiles() throws IOException {
    List<List<String>> rows = rows();
    assertEquals(140, rows.size());
    assertEquals(140, starter.concepts.size());
    return rows.stream()
        .map(row -> DynamicTest.dynamicTest(row.get(0), () -> assertEquals(row, rowOf(row))));
  }

  @Test
  void conceptsStandInTheOrderOfTheTable() throws IOException {
    Map<String, List<String>> expected = new HashMap<>();
    for (List<String> row : rows()) {
      expected.computeIfAbsent(row.get(5), facet -> new ArrayList<>()).add(row.get(0));
    }
    Map<String, List<String>> actual = new HashMap<>();
    for (Concept concept : starter.concepts) {
      actual.computeIfAbsent(concept.facet(), facet -> new ArrayList<>()).add(concept.id());
    }
    assertEquals(expected, actual);
  }

  @Test
  void aRemarkIsOneBecauseItNamesNoConcept() {
    for (Concept concept : starter.concepts) {
      String remark = concept.lookAlikeRemark().orElse("");
      for (String id : concepts.keySet()) {
        assertTrue(
            !id.contains("-") || !remark.contains(id),
            () -> concept.id() + "'s remark names " + id + ": " + remark);
      }
    }
  }

  /** Cells whose way of speaking no rule should have to know. */
  @Test
  void theCellsThatAreHardToReadAreReadRight() {
    assertEquals(
        List.of("ring-step-cut = many ridges, ground", "knop-bladed = is on a stem"),
        lookAlikes("ring-bladed"));
    assertEquals(
        List.of(
            "ring-incised = look for join/overlap and smooth bore",
            "ring-blown = look for join/overlap and smooth bore"),
        lookAlikes("ring-applied"));
    assertEquals(
        List.of(
            "ring-set-two = bare neck between",
            "ring-vertical = the two ridges are ribbed",
            "ring-feathered = the two ridges are ribbed"),
        lookAlikes("ring-double"));
    assertEquals(
        List.of("ring-vertical = ribs upright; the slant can be slight and uneven round one ring"),
        lookAlikes("ring-feathered"));
    assertEquals(List.of("ring-applied = join, smooth bore"), lookAlikes("ring-blown"));
    assertEquals(
        "Blown ring: hollow felt inside; a seam may cross it, but turned in the mould it has none:"
            + " a missing seam proves nothing",
        concepts.get("ring-blown").lookAlikeRemark().orElseThrow());
    assertEquals(List.of("stopper-target = is a stopper"), lookAlikes("lip-flat"));
    assertEquals(List.of("neck-ring = is on a neck"), lookAlikes("merese"));
    assertEquals(List.of("ring-bladed = on a neck"), lookAlikes("cut-step"));
    assertEquals(List.of("form-pattern-moulded = ribs"), lookAlikes("cut-pillar"));
    assertEquals(List.of("cut-printy = called punty"), lookAlikes("pontil-mark"));
    assertEquals(List.of("cutting = -"), lookAlikes("form-pressed"));
    assertEquals(List.of("body-ovoid = slimmer"), lookAlikes("body-prussian"));
    assertEquals(List.of(), lookAlikes("body-onion"));
    assertEquals(List.of(), lookAlikes("stopper-mushroom-radial"));
  }

  /** What the table does not have; why it is a close one stands in README.md beside the files. */
  @Test
  void gadrooningAloneIsLinkedToAnotherVocabulary() {
    List<String> links = new ArrayList<>();
    for (Concept concept : starter.concepts) {
      concept.matches().forEach(m -> links.add(concept.id() + " " + m.kind() + " " + m.uri()));
    }
    assertEquals(List.of("gadroon CLOSE_MATCH http://vocab.getty.edu/aat/300010175"), links);
  }

  @Test
  void wordsInBracketsAreScopeAndNotPartOfTheTerm() {
    Set<String> scoped = new TreeSet<>();
    for (Concept concept : starter.concepts) {
      Stream.concat(Stream.of(concept.preferred()), concept.alternatives().stream())
          .peek(label -> assertTrue(!label.text().contains("("), label::text))
          .filter(label -> label.scope().isPresent())
          .forEach(label -> scoped.add(label.text() + " | " + label.scope().get()));
    }
    assertEquals(
        new TreeSet<>(
            List.of(
                "bell | body",
                "ovoid | body",
                "olive | oval",
                "stipple | dots",
                "inverted baluster | state which",
                "bullet knop | small")),
        scoped);
  }

  @Test
  void theRegisterIsTheOneThatWasAgreed() throws IOException {
    String register = Files.readString(RESOURCES.resolve("homonym-register.md"));
    Map<String, List<String>> expected = new LinkedHashMap<>();
    Map<String, String> remarks = new HashMap<>();
    readRegister(register.substring(register.indexOf(":** ") + 4).strip(), expected, remarks);

    Map<String, List<String>> actual = new LinkedHashMap<>();
    for (Homonym homonym : starter.register) {
      actual.put(homonym.word(), homonym.concepts());
      assertEquals(
          remarks.getOrDefault(homonym.word(), ""), homonym.remark().orElse(""), homonym.word());
    }
    assertEquals(expected, actual);
    assertEquals(new ArrayList<>(expected.keySet()), new ArrayList<>(actual.keySet()));
  }

  @Test
  void theFilesHaveTwoSpacesAFixedKeyOrderAndOneNewlineAtTheEnd() throws IOException {
    List<String> order =
        List.of(
            "id",
            "prefLabel",
            "altLabels",
            "hiddenLabels",
            "definition",
            "broader",
            "lookAlikes",
            "lookAlikeRemark",
            "status",
            "matches");
    for (Path file : Vocabularies.files()) {
      String text = Files.readString(file);
      assertTrue(text.endsWith("}\n"), file::toString);
      assertTrue(!text.contains("\r") && !text.contains("\t"), file::toString);
      assertTrue(!text.contains("[]") && !text.contains(": false"), file::toString);
      JsonObject json = Vocabularies.json(file);
      if (json.has("facet")) {
        assertEquals(json.get("facet").getAsString() + ".json", file.getFileName().toString());
        for (JsonElement concept : json.getAsJsonArray("concepts")) {
          List<String> keys = new ArrayList<>(concept.getAsJsonObject().keySet());
          assertEquals(order.stream().filter(keys::contains).toList(), keys);
        }
      }
    }
  }

  private static List<List<String>> rows() throws IOException {
    List<List<String>> rows = new ArrayList<>();
    for (String line : Files.readAllLines(RESOURCES.resolve("starter-thesaurus.md"))) {
      if (line.startsWith("| ") && !line.startsWith("| id ")) {
        String[] cells = line.substring(2, line.length() - 2).split(" \\| ", -1);
        assertEquals(8, cells.length, line);
        rows.add(List.of(cells));
      }
    }
    return rows;
  }

  /** The row of a concept as the table would print it. The look-alike cell has several ways. */
  private List<String> rowOf(List<String> row) {
    Concept c = concepts.get(row.get(0));
    assertTrue(c.hidden().isEmpty());
    return List.of(
        c.id(),
        print(c.preferred()),
        c.alternatives().isEmpty()
            ? NOTHING
            : c.alternatives().stream().map(l -> print(l)).collect(Collectors.joining(", ")),
        c.definition(),
        c.broader().isEmpty() ? NOTHING : String.join("; ", c.broader()),
        c.facet(),
        lookAlikeCell(c, row.get(6)),
        c.status() == Concept.Status.COMMON ? "C" : "U");
  }

  private static String print(Concept.Label label) {
    return label.text()
        + label.scope().map(scope -> " (" + scope + ")").orElse("")
        + (label.elsewhere() ? "‡" : "");
  }

  /** Puts the cell together; between an id and its test stands ": ", or a space in prose. */
  private static String lookAlikeCell(Concept c, String expected) {
    StringBuilder cell = new StringBuilder();
    List<Concept.LookAlike> pairs = c.lookAlikes();
    for (int i = 0; i < pairs.size(); i++) {
      boolean sharesTest =
          i + 1 < pairs.size()
              && pairs.get(i).test().isPresent()
              && pairs.get(i).test().equals(pairs.get(i + 1).test());
      cell.append(pairs.get(i).concept());
      if (sharesTest) {
        cell.append(", ");
      } else {
        String test = pairs.get(i).test().orElse("");
        boolean prose = expected.startsWith(cell + " " + test);
        cell.append(test.isEmpty() ? "" : (prose ? " " : ": ") + test);
        cell.append(i + 1 < pairs.size() ? "; " : "");
      }
    }
    c.lookAlikeRemark().ifPresent(remark -> cell.append(cell.isEmpty() ? "" : ". ").append(remark));
    return cell.isEmpty() ? NOTHING : cell.toString();
  }

  private List<String> lookAlikes(String id) {
    return concepts.get(id).lookAlikes().stream()
        .map(pair -> pair.concept() + " = " + pair.test().orElse("-"))
        .toList();
  }

  /** Reads {@code *word(s)*, *word* (id, id; remark); …}. */
  private void readRegister(
      String text, Map<String, List<String>> words, Map<String, String> remarks) {
    Pattern entry = Pattern.compile("((?:\\*[^*]+\\*(?:, )?)+)(?: \\(([^)]*)\\))?[;.] ?");
    Matcher matcher = entry.matcher(text);
    int end = 0;
    while (matcher.find()) {
      assertEquals(end, matcher.start());
      end = matcher.end();
      for (String quoted : matcher.group(1).split(", ")) {
        String word = quoted.replace("*", "").replace("(s)", "");
        List<String> ids = new ArrayList<>();
        String inside = matcher.group(2) == null ? "" : matcher.group(2);
        for (String part : inside.split("[,;] (?!or )|, (?=or )")) {
          if (concepts.containsKey(part)) {
            ids.add(part);
          } else if (part.startsWith("or ") || part.contains(" ")) {
            remarks.put(word, part);
          }
        }
        words.put(word, ids.isEmpty() || inside.equals("body, bowl") ? byHand(word) : ids);
      }
    }
    assertEquals(text.length(), end);
  }

  /** Entries that the register states in prose or leaves to the labels. */
  private static List<String> byHand(String word) {
    return switch (word) {
      case "bell" -> List.of("body-bell", "bowl-bell");
      case "ovoid" -> List.of("body-ovoid", "bowl-ovoid");
      case "onion" -> List.of("body-onion", "body-shaft-globe");
      case "bull's-eye" -> List.of("stopper-target");
      case "etched" -> List.of("etched-acid");
      default -> throw new AssertionError(word);
    };
  }
}
