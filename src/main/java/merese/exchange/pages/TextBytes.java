package merese.exchange.pages;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** Bytes to text: UTF-8, or UTF-16 that begins with its mark; anything else is said, with place. */
final class TextBytes {
  private TextBytes() {}

  static String decode(byte[] bytes) {
    if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
      return decode(bytes, 3, StandardCharsets.UTF_8);
    } else if (startsWith(bytes, 0xFE, 0xFF)) {
      return decode(bytes, 2, StandardCharsets.UTF_16BE);
    } else if (startsWith(bytes, 0xFF, 0xFE)) {
      return decode(bytes, 2, StandardCharsets.UTF_16LE);
    }
    return decode(bytes, 0, StandardCharsets.UTF_8);
  }

  static boolean startsWith(byte[] bytes, int... begin) {
    for (int i = 0; i < begin.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != begin[i]) {
        return false;
      }
    }
    return true;
  }

  static String decode(byte[] bytes, int from, Charset charset) {
    CharsetDecoder decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes, from, bytes.length - from);
    CharBuffer out =
        CharBuffer.allocate((int) Math.ceil(in.remaining() * (double) decoder.maxCharsPerByte()));
    CoderResult result = decoder.decode(in, out, true);
    out.flip();
    if (result.isError()) {
      throw refusal(bytes, in.position(), out, charset);
    }
    int zero = out.toString().indexOf('\0');
    if (zero >= 0) {
      throw new RefusedException(
          "it is no text: there is a zero byte in line " + lineOf(out, zero),
          "attach a PDF, hOCR or plain text; of another kind of file, save it as one of these");
    }
    return out.toString();
  }

  private static RefusedException refusal(byte[] bytes, int at, CharBuffer before, Charset is) {
    StringBuilder hex = new StringBuilder();
    hex.append(Character.forDigit((bytes[at] >> 4) & 0xF, 16));
    hex.append(Character.forDigit(bytes[at] & 0xF, 16));
    return new RefusedException(
        "line "
            + lineOf(before, before.length())
            + " is not "
            + is.name()
            + ": byte "
            + Counted.of(at + 1)
            + " of the file is "
            + hex,
        "save the text as UTF-8, and attach that");
  }

  private static int lineOf(CharSequence text, int end) {
    int line = 1;
    for (int i = 0; i < end; i++) {
      line += text.charAt(i) == '\n' || (text.charAt(i) == '\r' && !isFeed(text, i + 1)) ? 1 : 0;
    }
    return line;
  }

  private static boolean isFeed(CharSequence text, int at) {
    return at < text.length() && text.charAt(at) == '\n';
  }
}
