package merese.exchange.marc;

/** Text as XML 1.0 has it; what XML does not allow becomes U+FFFD. */
final class XmlText {
  private XmlText() {}

  static void text(String text, StringBuilder to) {
    append(text, false, to);
  }

  static void attribute(String text, StringBuilder to) {
    append(text, true, to);
  }

  private static void append(String text, boolean attribute, StringBuilder to) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> to.append("&amp;");
        case '<' -> to.append("&lt;");
        case '>' -> to.append("&gt;");
        case '"' -> to.append(attribute ? "&quot;" : "\"");
        case '\r' -> to.append("&#13;");
        case '\n', '\t' -> to.append(attribute ? (c == '\n' ? "&#10;" : "&#9;") : c);
        default -> {
          if (Character.isHighSurrogate(c)
              && i + 1 < text.length()
              && Character.isLowSurrogate(text.charAt(i + 1))) {
            to.append(c).append(text.charAt(++i));
          } else {
            boolean allowed = c >= ' ' && !Character.isSurrogate(c) && c < 0xfffe;
            to.append(allowed ? c : '\ufffd');
          }
        }
      }
    }
  }
}
