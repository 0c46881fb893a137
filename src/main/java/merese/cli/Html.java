package merese.cli;

/** What every page in HTML that is written needs. */
final class Html {
  private Html() {}

  /**
   * A whole page in UTF-8 that loads nothing from elsewhere.
   *
   * @param language a BCP 47 tag
   * @param style CSS
   * @param body HTML
   */
  static String page(String language, String title, String style, String body) {
    return "<!DOCTYPE html>\n<html lang=\""
        + escape(language)
        + "\">\n<head>\n<meta charset=\"utf-8\">\n<title>"
        + escape(title)
        + "</title>\n<style>\n"
        + style
        + "</style>\n</head>\n<body>\n"
        + body
        + "</body>\n</html>\n";
  }

  /** Text as HTML, SVG or the value of an attribute between double quotes. */
  static String escape(String text) {
    StringBuilder escaped = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> escaped.append("&amp;");
        case '<' -> escaped.append("&lt;");
        case '>' -> escaped.append("&gt;");
        case '"' -> escaped.append("&quot;");
        default -> escaped.append(c);
      }
    }
    return escaped.toString();
  }
}
