package merese.exchange.bibtex;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.exchange.bibtex.BibtexSplitter.Chunk;
import merese.exchange.bibtex.EntryParser.Assigned;
import merese.exchange.bibtex.EntryParser.Parsed;
import merese.exchange.bibtex.StoredValue.Piece;
import merese.model.ReceivedRecord.Field;

/** The entries of a file one by one, with their strings put in. */
final class BibtexItems {
  private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

  private final Spool bytes;
  private final BibtexSplitter splitter;
  private final BibtexStrings strings = new BibtexStrings();
  private boolean sawOtherThanUtf8;

  /** What an entry turned out to be. */
  sealed interface Item {
    Chunk chunk();
  }

  /**
   * @param type in lower case
   * @param values of its fields, with their strings put in
   * @param undefined names that no string before it defines
   * @param isUtf8 whether its bytes are; else they were read as Windows-1252
   */
  record Entry(
      Chunk chunk,
      String type,
      String key,
      List<Assigned> values,
      Set<String> undefined,
      boolean isUtf8)
      implements Item {

    /** As a received record has them. */
    List<Field> fields() {
      List<Field> fields = new ArrayList<>(values.size());
      for (Assigned assigned : values) {
        fields.add(new Field(assigned.name(), StoredValue.of(assigned.value())));
      }
      return fields;
    }
  }

  record Broken(Chunk chunk, String text, BibtexFault fault) implements Item {}

  BibtexItems(Spool bytes) throws IOException {
    this.bytes = bytes;
    this.splitter = new BibtexSplitter(bytes);
  }

  /** The next that is no string; empty at the end. */
  Optional<Item> next() throws IOException {
    for (Optional<Chunk> chunk = splitter.next(); chunk.isPresent(); chunk = splitter.next()) {
      Optional<Item> item = item(chunk.get());
      if (item.isPresent()) {
        return item;
      }
    }
    return Optional.empty();
  }

  private Optional<Item> item(Chunk chunk) throws IOException {
    if (chunk.tooLong()) {
      return Optional.of(
          new Broken(
              chunk,
              "",
              new BibtexFault(
                  0,
                  "the entry is longer than "
                      + BibtexSplitter.MOST
                      + " bytes; only so many are kept of it",
                  "close its braces, or shorten it")));
    }
    byte[] slice = bytes.slice(chunk.from(), chunk.to());
    Optional<String> utf8 = utf8(slice);
    sawOtherThanUtf8 |= utf8.isEmpty();
    String text = utf8.orElseGet(() -> windows1252(slice));
    try {
      Parsed parsed = EntryParser.parse(text);
      if (parsed.type().equals("string")) {
        Assigned string = parsed.fields().get(0);
        strings.define(string.name(), string.value(), 0);
        return Optional.empty();
      }
      List<Assigned> values = values(parsed);
      return Optional.of(
          new Entry(
              chunk,
              parsed.type(),
              parsed.key(),
              values,
              BibtexStrings.undefined(values),
              utf8.isPresent()));
    } catch (BibtexFault fault) {
      return Optional.of(new Broken(chunk, text, fault));
    }
  }

  private List<Assigned> values(Parsed parsed) throws BibtexFault {
    List<Assigned> values = new ArrayList<>(parsed.fields().size());
    long length = 0;
    for (Assigned assigned : parsed.fields()) {
      List<Piece> value = strings.expanded(assigned.value(), 0);
      length += BibtexStrings.size(value);
      if (length > BibtexSplitter.MOST) {
        throw new BibtexFault(
            0,
            "the entry is longer than "
                + BibtexSplitter.MOST
                + " characters once its strings are put in",
            "shorten it");
      }
      values.add(new Assigned(assigned.name().isEmpty() ? "text" : assigned.name(), value));
    }
    return values;
  }

  /** The definitions of the file's strings so far, for a file of its own. */
  String definitions() {
    return strings.written(sawOtherThanUtf8);
  }

  private static Optional<String> utf8(byte[] slice) {
    String lenient = new String(slice, StandardCharsets.UTF_8); // the fast way
    if (lenient.indexOf('\uFFFD') < 0) {
      return Optional.of(lenient);
    }
    try {
      CharBuffer text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(slice));
      return Optional.of(text.toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  /** The five bytes that it does not have are control characters, as in ISO 8859-1. */
  private static String windows1252(byte[] slice) {
    char[] text = new String(slice, WINDOWS_1252).toCharArray();
    for (int i = 0; i < text.length; i++) {
      if (text[i] == '\uFFFD') {
        text[i] = (char) (slice[i] & 0xFF);
      }
    }
    return new String(text);
  }
}
