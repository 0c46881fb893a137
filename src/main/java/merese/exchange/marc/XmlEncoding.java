package merese.exchange.marc;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.SequenceInputStream;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The encoding of an XML file: by its byte order mark, else by its declaration, else UTF-8 (XML
 * 1.0, appendix F).
 *
 * @param in the file without a byte order mark; as UTF-8 where its own encoding has not ASCII's
 *     bytes for ASCII's characters (UTF-16 and the like)
 * @param charset of that
 * @param ofFile the encoding that the file itself has
 */
record XmlEncoding(InputStream in, Charset charset, Charset ofFile) {
  private static final int HEAD = 1024;
  private static final Pattern DECLARED =
      Pattern.compile("^\\s*<\\?xml[^>]*?encoding\\s*=\\s*[\"']([A-Za-z0-9._\\-]+)[\"']");

  /** Stands for what is not of the encoding; XML allows it nowhere, so that the record is bad. */
  private static final String FAULT = "\uffff";

  static XmlEncoding of(InputStream file) throws IOException {
    byte[] head = file.readNBytes(HEAD);
    if (starts(head, 0xef, 0xbb, 0xbf)) {
      return new XmlEncoding(rest(head, 3, file), StandardCharsets.UTF_8, StandardCharsets.UTF_8);
    }
    if (starts(head, 0xfe, 0xff)) {
      return decoded(rest(head, 2, file), StandardCharsets.UTF_16BE);
    }
    if (starts(head, 0xff, 0xfe)) {
      return decoded(rest(head, 2, file), StandardCharsets.UTF_16LE);
    }
    if (starts(head, 0, '<')) {
      return decoded(rest(head, 0, file), StandardCharsets.UTF_16BE);
    }
    if (starts(head, '<', 0)) {
      return decoded(rest(head, 0, file), StandardCharsets.UTF_16LE);
    }
    Charset declared = declared(head);
    InputStream in = rest(head, 0, file);
    return isLikeAscii(declared) ? new XmlEncoding(in, declared, declared) : decoded(in, declared);
  }

  private static boolean starts(byte[] head, int... bytes) {
    if (head.length < bytes.length) {
      return false;
    }
    for (int i = 0; i < bytes.length; i++) {
      if ((head[i] & 0xff) != bytes[i]) {
        return false;
      }
    }
    return true;
  }

  private static InputStream rest(byte[] head, int from, InputStream file) {
    return new SequenceInputStream(new ByteArrayInputStream(head, from, head.length - from), file);
  }

  /** A name that is not known, or can't be true since it was readable, says nothing. */
  private static Charset declared(byte[] head) {
    Matcher declared = DECLARED.matcher(new String(head, StandardCharsets.ISO_8859_1));
    if (!declared.find()) {
      return StandardCharsets.UTF_8;
    }
    try {
      Charset charset = Charset.forName(declared.group(1));
      String name = charset.name().toUpperCase(Locale.ROOT);
      boolean wide = name.startsWith("UTF-16") || name.startsWith("UTF-32");
      return wide || name.equals("US-ASCII") ? StandardCharsets.UTF_8 : charset;
    } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
      return StandardCharsets.UTF_8;
    }
  }

  private static boolean isLikeAscii(Charset charset) {
    String name = charset.name().toUpperCase(Locale.ROOT);
    return name.equals("UTF-8") || name.startsWith("ISO-8859-") || name.startsWith("WINDOWS-125");
  }

  private static XmlEncoding decoded(InputStream in, Charset charset) {
    Reader reader =
        new InputStreamReader(
            in,
            charset
                .newDecoder()
                .replaceWith(FAULT)
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE));
    return new XmlEncoding(new InUtf8(reader), StandardCharsets.UTF_8, charset);
  }

  /** Bytes of {@link #in} as they stand in the file, but for what is not of its encoding. */
  byte[] inFile(byte[] bytes) {
    return ofFile.equals(charset) ? bytes : new String(bytes, charset).getBytes(ofFile);
  }

  /** What the first bytes of a file of this encoding are to be, and its declaration. */
  String declaration() {
    boolean marked = ofFile.name().startsWith("UTF-16");
    return (marked ? "\ufeff" : "")
        + "<?xml version=\"1.0\" encoding=\""
        + (marked ? "UTF-16" : ofFile.name())
        + "\"?>\n";
  }

  /** Characters as bytes of UTF-8. */
  private static final class InUtf8 extends InputStream {
    private final Reader reader;
    private final char[] chars = new char[8192];
    private byte[] bytes = {};
    private int at;
    private char held;

    InUtf8(Reader reader) {
      this.reader = reader;
    }

    @Override
    public int read() throws IOException {
      return fill() ? bytes[at++] & 0xff : -1;
    }

    @Override
    public int read(byte[] to, int offset, int length) throws IOException {
      if (length == 0 || !fill()) {
        return length == 0 ? 0 : -1;
      }
      int count = Math.min(length, bytes.length - at);
      System.arraycopy(bytes, at, to, offset, count);
      at += count;
      return count;
    }

    private boolean fill() throws IOException {
      while (at == bytes.length) {
        int start = held == 0 ? 0 : 1;
        chars[0] = held;
        int read = reader.read(chars, start, chars.length - start);
        if (read < 0) {
          return false;
        }
        int end = start + read;
        held = Character.isHighSurrogate(chars[end - 1]) ? chars[end - 1] : 0;
        bytes = new String(chars, 0, held == 0 ? end : end - 1).getBytes(StandardCharsets.UTF_8);
        at = 0;
      }
      return true;
    }
  }
}
