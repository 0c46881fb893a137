package merese.citation;

import java.util.Locale;

/** Writes literal text so that an {@link Output} shows it as it is. */
enum Escape {
  TEXT {
    @Override
    String text(String text) {
      return text;
    }

    @Override
    String link(String address) {
      return address;
    }
  },
  MARKDOWN {
    @Override
    String text(String text) {
      StringBuilder out = new StringBuilder(text.length() + 8);
      for (int i = 0; i < text.length(); i++) {
        char c = text.charAt(i);
        char next = i + 1 < text.length() ? text.charAt(i + 1) : ' ';
        boolean entity = c == '&' && (next == '#' || Character.isLetter(next));
        if (entity || "\\`*_[]<>~|".indexOf(c) >= 0) {
          out.append('\\');
        }
        out.append(c);
      }
      return out.toString();
    }

    @Override
    String link(String address) {
      boolean safe = onTheWeb(address) && address.chars().noneMatch(c -> "<>\\ ".indexOf(c) >= 0);
      return safe ? "<" + address + ">" : text(address);
    }

    /** At the start of a line some more characters would begin a heading, a list or a rule. */
    @Override
    String wholeLine(String line) {
      int digits = 0;
      while (digits < line.length() && line.charAt(digits) >= '0' && line.charAt(digits) <= '9') {
        digits++;
      }
      boolean marks = digits < line.length() && "#+-=.):".indexOf(line.charAt(digits)) >= 0;
      boolean special = digits == 0 ? marks : marks && ".)".indexOf(line.charAt(digits)) >= 0;
      return special ? line.substring(0, digits) + "\\" + line.substring(digits) : line;
    }
  },
  HTML {
    @Override
    String text(String text) {
      return text.replace("&", "&amp;")
          .replace("<", "&lt;")
          .replace(">", "&gt;")
          .replace("\"", "&quot;")
          .replace("'", "&#39;");
    }

    @Override
    String link(String address) {
      String escaped = text(address);
      return onTheWeb(address) ? "<a href=\"" + escaped + "\">" + escaped + "</a>" : escaped;
    }
  };

  static Escape of(Output output) {
    return valueOf(output.name());
  }

  abstract String text(String text);

  /** An address on the web as a link; anything else, such as a script, as text. */
  abstract String link(String address);

  String wholeLine(String line) {
    return line;
  }

  private static boolean onTheWeb(String address) {
    String start = address.toLowerCase(Locale.ROOT);
    return start.startsWith("http://") || start.startsWith("https://");
  }
}
