package merese.store;

import static merese.store.Fixture.decode;
import static merese.store.Fixture.encode;
import static merese.store.Fixture.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import merese.model.CharacterKey;
import merese.model.Facet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The key to look-alikes in its file. */
class CharacterKeyTest {
  private static final String KEY =
      """
      {
        "basis": "Common practice, no source.",
        "characters": [
          {
            "id": "join",
            "label": "join",
            "question": "Is there a join?",
            "look": "Feel for it.",
            "senses": [
              "seen",
              "felt"
            ],
            "alsoCalled": [
              "overlap"
            ],
            "values": [
              {
                "id": "felt",
                "label": "felt",
                "words": [
                  "by the nail"
                ],
                "sense": "felt"
              },
              {
                "id": "through",
                "label": "through the glass"
              }
            ]
          },
          {
            "id": "ridges",
            "label": "ridges",
            "question": "How many ridges?",
            "look": "Count.",
            "senses": [
              "seen"
            ],
            "counted": true
          }
        ],
        "kinds": [
          {
            "concept": "ring-bladed",
            "allows": [
              "join: felt, through",
              "ridges: 1"
            ]
          },
          {
            "concept": "ring",
            "allows": [
              "join: never",
              "ridges: 2-3"
            ]
          }
        ]
      }
      """;

  @TempDir private Path dir;

  @Test
  void isWrittenAsItIsRead() throws IOException {
    String starter = Files.readString(Path.of("library/vocabulary/characters.json"));
    for (String text : List.of(KEY, starter)) {
      assertEquals(text, encode(decode(text, CharacterKeyCodec.KEY), CharacterKeyCodec.KEY));
    }
  }

  @Test
  void theStarterIsOnTheClassPath() throws IOException {
    String starter = Files.readString(Path.of("library/vocabulary/characters.json"));
    CharacterKey key = LibraryFolder.starterCharacters();
    assertEquals(decode(starter, CharacterKeyCodec.KEY), key);
    assertTrue(key.basis().startsWith("Common practice, no source"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"join: felt, through\"|\"jion: felt\"|46:9: kinds[0].allows[0]: there is no character"
            + " \"jion\"; did you mean \"join\"?",
        "\"join: felt, through\"|\"join: flet\"|46:9: kinds[0].allows[0]: \"flet\" is no value of"
            + " \"join\"; write one of felt, through, or never; did you mean \"felt\"?",
        "\"join: felt, through\"|\"join felt\"|46:9: kinds[0].allows[0]: \"join felt\" is no"
            + " statement; write it as in \"join: felt, seen\" or \"join: never\"",
        "\"join: felt, through\"|\"join: felt,\"|46:9: kinds[0].allows[0]: \"\" is no value of"
            + " \"join\"; write one of felt, through, or never",
        "\"join: felt, through\"|7|46:9: kinds[0].allows[0]: the number 7 stands where a text"
            + " belongs; write \"join: felt, seen\"",
        "\"join: felt, through\"|{}|46:9: kinds[0].allows[0]: an object stands here; write a text,"
            + " as in \"join: felt, seen\"",
        "\"ridges: 2-3\"|\"ridges: 3-2\"|54:9: kinds[1].allows[1]: \"3-2\" runs backwards; write"
            + " the smaller number first",
        "\"ridges: 2-3\"|\"ridges: many\"|54:9: kinds[1].allows[1]: \"many\" is no number; write"
            + " it as in 2, 3-5 or 3+",
        "\"ridges: 2-3\"|\"join: felt\"|50:5: kinds[1]: \"join\" is stated twice of \"ring\"; join"
            + " the two",
        "\"counted\": true|\"counted\": false|31:5: characters[1]: \"ridges\" has no values; add"
            + " them, or \"counted\": true",
        "\"id\": \"through\"|\"id\": \"felt\"|4:5: characters[0]: \"join\" has the value \"felt\""
            + " twice; keep one of the two",
        "\"id\": \"through\"|\"id\": \"never\"|25:9: characters[0].values[1]: \"never\" has a"
            + " meaning of its own; choose another id",
        "\"id\": \"ridges\"|\"id\": \"Ridges\"|31:5: characters[1]: a character's id is \"Ridges\";"
            + " write it in small letters, digits and hyphens",
        "\"characters\": [|\"characters\": [{\"id\": \"ridges\", \"label\": \"r\","
            + " \"question\": \"q\", \"look\": \"l\", \"senses\": [\"seen\"],"
            + " \"counted\": true},|1:1: the character \"ridges\" stands here twice; keep one"
            + " of the two",
        "\"concept\": \"ring\"|\"concept\": \"ring-bladed\"|1:1: the kind \"ring-bladed\" stands"
            + " here twice; keep one of the two",
        "\"sense\": \"felt\"|\"sense\": \"heard\"|23:20: characters[0].values[0].sense: \"heard\""
            + " is not a sense; write one of seen, felt",
        "\"seen\",|\"heard\",|10:9: characters[0].senses[0]: \"heard\" is not a sense; write one of"
            + " seen, felt",
      })
  void whatIsWrongIsNamedWithItsPlace(String from, String to, String message) {
    assertTrue(KEY.contains(from), from);
    String text = KEY.replaceFirst(Pattern.quote(from), to);
    String said = refusal(() -> decode(text, CharacterKeyCodec.KEY));
    assertTrue(said.lines().toList().contains("f.json:" + message), said);
  }

  @Test
  void aConceptThatIsNotThereIsFoundByTheCheck() {
    LibraryFolder library = Fixture.in(dir);
    Fixture.write(
        library.resolve("vocabulary/characters.json"),
        KEY.replace("\"concept\": \"ring-bladed\"", "\"concept\": \"ring-blade\""));
    assertEquals(
        List.of(
            "vocabulary/characters.json:44:18: kinds[0].concept: there is no concept"
                + " \"ring-blade\"; did you mean \"ring-bladed\"?"),
        Fixture.strings(library.check()).stream()
            .map(line -> line.replace(library.path() + "/", ""))
            .toList());
  }

  @Test
  void aLibraryMayLackItAndAFacetMayNotHaveItsName() {
    LibraryFolder library = Fixture.in(dir);
    assertEquals(CharacterKey.EMPTY, library.readCharacters().value());
    VocabularyFile facet =
        new VocabularyFile(new Facet("characters", Optional.empty(), List.of()), List.of());
    String said = refusal(() -> library.add(facet));
    assertTrue(said.contains("is the key to look-alikes, and no facet"), said);
  }
}
