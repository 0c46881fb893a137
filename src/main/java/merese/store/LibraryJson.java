package merese.store;

import java.nio.file.Path;
import merese.model.Check;
import merese.model.Concept;
import merese.model.Facet;
import merese.model.Homonym;
import merese.model.LibrarySettings;
import merese.model.Mine;
import merese.model.Note;
import merese.model.OwnObject;
import merese.model.Work;

/**
 * Values as JSON without white space, with the keys of the files: what an index stores. What was
 * encoded decodes to an equal value, except that an optional text that is blank comes back empty.
 * Every decoder throws a {@link LibraryException} for bytes that are not such a value.
 */
public final class LibraryJson {
  private static final Path NO_FILE = Path.of("");

  private LibraryJson() {}

  public static byte[] encodeNote(Note note) {
    return encode(note, NoteCodec.NOTE);
  }

  public static Note decodeNote(byte[] json) {
    return decode(json, NoteCodec.NOTE);
  }

  public static byte[] encodeCheck(Check check) {
    return encode(check, CheckCodec.CHECK);
  }

  public static Check decodeCheck(byte[] json) {
    return decode(json, CheckCodec.CHECK);
  }

  /** With everything inside it; an index passes one with what it wants to store. */
  public static byte[] encodeWork(Work work) {
    return encode(work, WorkCodec.WORK);
  }

  public static Work decodeWork(byte[] json) {
    return decode(json, WorkCodec.WORK);
  }

  /** Says its facet too, unlike in the facet's file. */
  public static byte[] encodeConcept(Concept concept) {
    return encode(concept, ConceptCodec.CONCEPT);
  }

  public static Concept decodeConcept(byte[] json) {
    return decode(json, ConceptCodec.CONCEPT);
  }

  public static byte[] encodeFacet(Facet facet) {
    return encode(facet, VocabularyCodec.FACET);
  }

  public static Facet decodeFacet(byte[] json) {
    return decode(json, VocabularyCodec.FACET);
  }

  public static byte[] encodeHomonym(Homonym homonym) {
    return encode(homonym, VocabularyCodec.HOMONYM);
  }

  public static Homonym decodeHomonym(byte[] json) {
    return decode(json, VocabularyCodec.HOMONYM);
  }

  public static byte[] encodeOwnObject(OwnObject object) {
    return encode(object, OwnObjectCodec.OBJECT);
  }

  public static OwnObject decodeOwnObject(byte[] json) {
    return decode(json, OwnObjectCodec.OBJECT);
  }

  public static byte[] encodeMine(Mine mine) {
    return encode(mine, MineCodec.MINE);
  }

  public static Mine decodeMine(byte[] json) {
    return decode(json, MineCodec.MINE);
  }

  public static byte[] encodeSettings(LibrarySettings settings) {
    return encode(settings, SettingsCodec.SETTINGS);
  }

  public static LibrarySettings decodeSettings(byte[] json) {
    return decode(json, SettingsCodec.SETTINGS);
  }

  static <T> byte[] encode(T value, Codec<T> codec) {
    return JsonPrinter.compact(ObjectBuilder.object(value, codec));
  }

  private static <T> T decode(byte[] json, Codec<T> codec) {
    Source source = Source.of(NO_FILE, json);
    return Reading.decode(source, JsonReader.read(source), codec);
  }
}
