package merese.exchange.marc;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.marc4j.MarcException;
import org.marc4j.converter.impl.AnselToUnicode;

/**
 * The characters of ISO 2709 records: UTF-8 where the leader says "a" (position 9), else MARC-8.
 * Where the bytes say otherwise than the leader, they are believed, and a remark says so.
 *
 * <p>MARC-8 becomes Unicode with each diacritic after its letter, not composed; what it has no
 * character for becomes "&lt;U+00A0&gt;" with the number of the byte.
 */
final class MarcCharacters {
  private static final char ESCAPE = 0x1b;
  private static final Pattern UNKNOWN = Pattern.compile("<U\\+[0-9A-F]{4}>");

  /** A change of character set (MARC 21 Specifications, Character Sets: MARC-8; from memory). */
  private static final Pattern SEQUENCE =
      Pattern.compile("\\x1b(?:[gbps]|[(,)\\-]!?[34BENQS2]|\\$[,)\\-]?1|[(,)\\-]1)");

  /** A character that MARC-8 lacks: "&#x2014;". */
  private static final Pattern REFERENCE = Pattern.compile("&#x([0-9A-Fa-f]{4,6});");

  private final AnselToUnicode marc8 = new AnselToUnicode();
  private boolean utf8;
  private boolean doubtful;
  private boolean unknown;

  /** Settles what the bytes of a record are. */
  void settle(byte[] bytes, char flag, List<String> remarks) throws BadRecord {
    doubtful = false;
    unknown = false;
    boolean said = flag == 'a';
    int shape = shape(bytes);
    utf8 = shape > 0 || (said && shape == 0);
    if (shape == MIXED) {
      if (said) {
        throw new BadRecord(
            "the leader says UTF-8, but byte "
                + (firstFault(bytes) + 1)
                + " of the record is not, and others are",
            "mend the character there");
      }
      utf8 = false;
    } else if (said && shape < 0) {
      doubtful = true;
      remarks.add("the leader says UTF-8, but the record is not; read as MARC-8");
    } else if (!said && shape > 0) {
      remarks.add("the leader says MARC-8, but the record is UTF-8; read as that");
    }
  }

  /** After all of a record is decoded: whether it could be. */
  void close(List<String> remarks) throws BadRecord {
    if (unknown && doubtful) {
      throw new BadRecord(
          "the leader says UTF-8, but the record is not, nor is it MARC-8", "save it as UTF-8");
    }
    if (unknown) {
      remarks.add("MARC-8 has no character for some of its bytes; they stand as <U+…>");
    }
  }

  /** What {@link #shape} says of bytes of which some are UTF-8 and others not. */
  private static final int MIXED = -2;

  /**
   * 0 for ASCII alone, 1 for UTF-8, {@value #MIXED} for bytes that are mostly UTF-8, -1 for other.
   */
  private static int shape(byte[] bytes) {
    int good = 0;
    int bad = 0;
    int at = 0;
    while (at < bytes.length) {
      int length = bytes[at] >= 0 ? 1 : sequence(bytes, at);
      good += length > 1 ? 1 : 0;
      bad += length == 0 ? 1 : 0;
      at += Math.max(1, length);
    }
    if (bad == 0) {
      return good > 0 ? 1 : 0;
    }
    return good > bad ? MIXED : -1;
  }

  private static int firstFault(byte[] bytes) {
    int at = 0;
    while (at < bytes.length) {
      int length = bytes[at] >= 0 ? 1 : sequence(bytes, at);
      if (length == 0) {
        return at;
      }
      at += length;
    }
    return at;
  }

  /** How long a character of several bytes is; 0 where it is none. */
  private static int sequence(byte[] bytes, int at) {
    int lead = bytes[at] & 0xff;
    int length = lead >= 0xc2 && lead < 0xe0 ? 2 : lead >= 0xe0 && lead < 0xf0 ? 3 : 0;
    length = lead >= 0xf0 && lead < 0xf5 ? 4 : length;
    if (length == 0 || at + length > bytes.length) {
      return 0;
    }
    int code = lead & (0xff >> (length + 1));
    for (int i = 1; i < length; i++) {
      if ((bytes[at + i] & 0xc0) != 0x80) {
        return 0;
      }
      code = code << 6 | (bytes[at + i] & 0x3f);
    }
    boolean surrogate = code >= 0xd800 && code < 0xe000;
    boolean small = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
    return surrogate || small || code > 0x10ffff ? 0 : length;
  }

  /** A part of the record that was settled last. */
  String decoded(byte[] bytes, int from, int to) throws BadRecord {
    boolean plain = true;
    for (int i = from; i < to && plain; i++) {
      plain = bytes[i] >= 0 && bytes[i] != ESCAPE;
    }
    if (plain && utf8) {
      return new String(bytes, from, to - from, StandardCharsets.US_ASCII);
    }
    if (utf8) {
      return utf8(bytes, from, to);
    }
    String text =
        plain
            ? new String(bytes, from, to - from, StandardCharsets.US_ASCII)
            : marc8(new String(bytes, from, to - from, StandardCharsets.ISO_8859_1));
    return text.indexOf("&#x") < 0 ? text : withReferences(text);
  }

  private static String utf8(byte[] bytes, int from, int to) throws BadRecord {
    try {
      CharBuffer text =
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, from, to - from));
      return text.toString();
    } catch (CharacterCodingException e) {
      throw new BadRecord(
          "a field ends in the middle of a character", "mend the lengths in its directory");
    }
  }

  private String marc8(String text) throws BadRecord {
    Matcher sequence = SEQUENCE.matcher(text);
    int at = text.indexOf(ESCAPE);
    while (at >= 0) {
      if (!sequence.find(at) || sequence.start() != at) {
        throw new BadRecord(
            "it changes to a character set that MARC-8 does not have", "save the file as UTF-8");
      }
      at = text.indexOf(ESCAPE, sequence.end());
    }
    try {
      String converted = marc8.convert(text.toCharArray()).replace('\0', '\ufffd');
      unknown |= converted.indexOf('\ufffd') >= 0 || UNKNOWN.matcher(converted).find();
      return converted;
    } catch (MarcException | IndexOutOfBoundsException e) {
      throw new BadRecord("its MARC-8 breaks off within a character", "save the file as UTF-8");
    }
  }

  private static String withReferences(String text) {
    StringBuilder out = new StringBuilder();
    Matcher reference = REFERENCE.matcher(text);
    while (reference.find()) {
      int code = Integer.parseInt(reference.group(1), 16);
      boolean character = Character.isValidCodePoint(code) && (code < 0xd800 || code > 0xdfff);
      String replacement = character ? Character.toString(code) : reference.group();
      reference.appendReplacement(out, Matcher.quoteReplacement(replacement));
    }
    return reference.appendTail(out).toString();
  }
}
