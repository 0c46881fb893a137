package merese.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import merese.model.Concept;
import merese.model.Edition;
import merese.model.LibrarySettings;
import merese.model.Mine;
import merese.model.OwnObject;
import merese.model.Work;
import org.junit.jupiter.api.Test;

class LibraryJsonTest {
  private final Work work = Fixture.decode(Fixture.text(Fixture.WORK), WorkCodec.WORK);
  private final VocabularyFile rings =
      Fixture.decode(Fixture.text(Fixture.RINGS), VocabularyCodec.VOCABULARY);

  @Test
  void whatAnIndexStoresComesBackEqual() {
    Edition edition = work.editions().get(1);
    edition
        .notes()
        .forEach(n -> assertEquals(n, LibraryJson.decodeNote(LibraryJson.encodeNote(n))));
    edition
        .checks()
        .forEach(c -> assertEquals(c, LibraryJson.decodeCheck(LibraryJson.encodeCheck(c))));
    assertEquals(work, LibraryJson.decodeWork(LibraryJson.encodeWork(work)));
    for (Concept concept : rings.concepts()) {
      assertEquals(concept, LibraryJson.decodeConcept(LibraryJson.encodeConcept(concept)));
    }
    assertEquals(rings.facet(), LibraryJson.decodeFacet(LibraryJson.encodeFacet(rings.facet())));
    Fixture.decode(Fixture.text("vocabulary/homonyms.json"), VocabularyCodec.REGISTER)
        .forEach(h -> assertEquals(h, LibraryJson.decodeHomonym(LibraryJson.encodeHomonym(h))));
    OwnObject object = Fixture.decode(Fixture.text("objects/d-17.json"), OwnObjectCodec.OBJECT);
    assertEquals(object, LibraryJson.decodeOwnObject(LibraryJson.encodeOwnObject(object)));
    Mine mine = Fixture.decode(Fixture.text("mine.json"), MineCodec.MINE);
    assertEquals(mine, LibraryJson.decodeMine(LibraryJson.encodeMine(mine)));
    LibrarySettings settings = Fixture.decode(Fixture.text("library.json"), SettingsCodec.SETTINGS);
    assertEquals(settings, LibraryJson.decodeSettings(LibraryJson.encodeSettings(settings)));
  }

  @Test
  void itIsCompactAndAConceptSaysItsFacet() {
    assertEquals(
        "{\"id\":\"ring\",\"facet\":\"ring\",\"prefLabel\":\"ring\",\"definition\":\"A band round a"
            + " neck.\",\"status\":\"common\"}",
        new String(LibraryJson.encodeConcept(rings.concepts().get(0)), StandardCharsets.UTF_8));
  }

  @Test
  void bytesOfSomethingElseAreRefusedWithoutAFileName() {
    LibraryException refused =
        assertThrows(
            LibraryException.class, () -> LibraryJson.decodeNote("{\"id\":1}".getBytes(UTF_8)));
    assertTrue(
        refused.getMessage().startsWith("1:7: id: the number 1 stands where a text belongs"),
        refused.getMessage());
  }
}
