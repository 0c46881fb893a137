package merese.exchange.bibtex;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/**
 * Addresses for the field {@code url}, which styles print without reading commands in it, so that
 * nothing may be escaped there. What RFC 3986 does not let stand in an address, and the tilde and
 * dollar, are written as {@code %XX}.
 */
final class WebAddress {
  private static final String PLAIN = "-._:/?#[]@!&()*+,;=%";

  private WebAddress() {}

  /** Empty where it is no address on the web. */
  static Optional<String> of(String typed) {
    String stripped = typed.strip();
    String start = stripped.toLowerCase(Locale.ROOT);
    if (!start.startsWith("http://") && !start.startsWith("https://")
        || stripped.length() > LatexText.MOST) {
      return Optional.empty();
    }
    StringBuilder out = new StringBuilder();
    for (byte b : stripped.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xFF);
      boolean letterOrDigit = c < 128 && Character.isLetterOrDigit(c);
      if (letterOrDigit || PLAIN.indexOf(c) >= 0) {
        out.append(c);
      } else {
        out.append('%').append(digit(c >> 4)).append(digit(c & 15));
      }
    }
    return Optional.of(out.toString());
  }

  private static char digit(int value) {
    return Character.toUpperCase(Character.forDigit(value, 16));
  }
}
