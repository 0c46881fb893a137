package merese.store;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** The text of a file, and where in it an offset is. */
final class Source {
  private final Path file;
  private final String text;

  private Source(Path file, String text) {
    this.file = file;
    this.text = text;
  }

  /**
   * Decodes strictly: nothing is replaced silently.
   *
   * @throws LibraryException for bytes that are not UTF-8, for a byte-order mark and for no text
   */
  static Source of(Path file, byte[] bytes) {
    requireNoMark(file, bytes);
    String text = new String(bytes, StandardCharsets.UTF_8);
    Source source = new Source(file, text);
    int doubtful = text.indexOf('\uFFFD');
    if (doubtful >= 0) {
      requireUtf8(source, bytes);
    }
    int nul = text.indexOf('\0');
    if (nul >= 0) {
      throw source.error(nul, "there is a zero byte here", saveAsUtf8());
    }
    if (text.isBlank()) {
      throw new LibraryException(file, "the file is empty", restore());
    }
    return source;
  }

  private static void requireNoMark(Path file, byte[] bytes) {
    int first = bytes.length > 0 ? bytes[0] & 0xFF : 0;
    int second = bytes.length > 1 ? bytes[1] & 0xFF : 0;
    if (first == 0xEF && second == 0xBB && bytes.length > 2 && (bytes[2] & 0xFF) == 0xBF) {
      throw new LibraryException(
          file, "the file starts with a byte-order mark", "save it as UTF-8 without one");
    }
    if ((first == 0xFE && second == 0xFF) || (first == 0xFF && second == 0xFE)) {
      throw new LibraryException(file, "the file is in UTF-16", saveAsUtf8());
    }
  }

  private static void requireUtf8(Source lenient, byte[] bytes) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), out, true);
    if (result.isError()) {
      throw lenient.error(out.position(), "the bytes here are not UTF-8", saveAsUtf8());
    }
  }

  private static String saveAsUtf8() {
    return "save the file as UTF-8";
  }

  static String restore() {
    return "bring it back from a backup or from version control, or move it out of the library";
  }

  String text() {
    return text;
  }

  /** A value as it stands in the file, with line ends of ours. */
  String slice(Json value) {
    String slice = text.substring(value.start(), value.end());
    return slice.indexOf('\r') < 0 ? slice : slice.replace("\r\n", "\n").replace('\r', '\n');
  }

  Problem problem(int offset, String where, String what, String remedy, Problem.Severity severity) {
    int at = Math.max(0, Math.min(offset, text.length()));
    int line = 1;
    int lineStart = 0;
    for (int i = text.indexOf('\n'); i >= 0 && i < at; i = text.indexOf('\n', i + 1)) {
      line++;
      lineStart = i + 1;
    }
    int column = text.codePointCount(lineStart, at) + 1;
    return new Problem(file, line, column, where, what, remedy, severity);
  }

  LibraryException error(int offset, String what, String remedy) {
    return new LibraryException(problem(offset, "", what, remedy, Problem.Severity.ERROR));
  }
}
