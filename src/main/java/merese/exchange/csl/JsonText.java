package merese.exchange.csl;

import java.util.List;
import merese.exchange.csl.Json.Items;
import merese.exchange.csl.Json.Member;
import merese.exchange.csl.Json.Members;
import merese.exchange.csl.Json.Text;

/**
 * JSON written out. Half characters (lone surrogates) and control characters are escaped, all else
 * stands as it is.
 */
final class JsonText {
  private static final String HEX = "0123456789abcdef";

  private JsonText() {}

  static void compact(Json value, StringBuilder out) {
    if (value instanceof Text text) {
      quoted(text.value(), out);
    } else if (value instanceof Json.Bare bare) {
      out.append(bare.source());
    } else if (value instanceof Items list) {
      out.append('[');
      for (int i = 0; i < list.items().size(); i++) {
        out.append(i == 0 ? "" : ",");
        compact(list.items().get(i), out);
      }
      out.append(']');
    } else if (value instanceof Members object) {
      out.append('{');
      for (int i = 0; i < object.members().size(); i++) {
        Member member = object.members().get(i);
        out.append(i == 0 ? "" : ",");
        quoted(member.name(), out);
        out.append(':');
        compact(member.value(), out);
      }
      out.append('}');
    }
  }

  /** With two spaces a level; a list without objects stands on one line. */
  static void indented(Json value, int level, StringBuilder out) {
    if (value instanceof Members object && !object.members().isEmpty()) {
      String lead = "{\n";
      for (Member member : object.members()) {
        out.append(lead).append("  ".repeat(level + 1));
        quoted(member.name(), out);
        out.append(": ");
        indented(member.value(), level + 1, out);
        lead = ",\n";
      }
      out.append('\n').append("  ".repeat(level)).append('}');
    } else if (value instanceof Items list && holdsObject(list)) {
      String lead = "[\n";
      for (Json item : list.items()) {
        out.append(lead).append("  ".repeat(level + 1));
        indented(item, level + 1, out);
        lead = ",\n";
      }
      out.append('\n').append("  ".repeat(level)).append(']');
    } else if (value instanceof Items list) {
      inline(list.items(), out);
    } else {
      compact(value, out);
    }
  }

  private static void inline(List<Json> items, StringBuilder out) {
    out.append('[');
    for (int i = 0; i < items.size(); i++) {
      out.append(i == 0 ? "" : ", ");
      if (items.get(i) instanceof Items list) {
        inline(list.items(), out);
      } else {
        compact(items.get(i), out);
      }
    }
    out.append(']');
  }

  private static boolean holdsObject(Items list) {
    for (Json item : list.items()) {
      if (item instanceof Members || item instanceof Items inner && holdsObject(inner)) {
        return true;
      }
    }
    return false;
  }

  static void quoted(String text, StringBuilder out) {
    out.append('"');
    int done = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c >= ' ' && c != '"' && c != '\\' && !isHalf(text, i)) {
        continue;
      }
      out.append(text, done, i).append('\\');
      done = i + 1;
      switch (c) {
        case '"', '\\' -> out.append(c);
        case '\n' -> out.append('n');
        case '\r' -> out.append('r');
        case '\t' -> out.append('t');
        case '\b' -> out.append('b');
        case '\f' -> out.append('f');
        default -> {
          out.append('u').append(HEX.charAt(c >> 12)).append(HEX.charAt(c >> 8 & 15));
          out.append(HEX.charAt(c >> 4 & 15)).append(HEX.charAt(c & 15));
        }
      }
    }
    out.append(text, done, text.length()).append('"');
  }

  /** The text with U+FFFD for each half character. */
  static String whole(String text) {
    StringBuilder out = null;
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= Character.MIN_SURROGATE && isHalf(text, i)) {
        out = out == null ? new StringBuilder(text) : out;
        out.setCharAt(i, '\uFFFD');
      }
    }
    return out == null ? text : out.toString();
  }

  /** Whether there is half a character: one surrogate without its other. */
  static boolean isHalf(String text, int at) {
    char c = text.charAt(at);
    if (!Character.isSurrogate(c)) {
      return false;
    }
    return Character.isHighSurrogate(c)
        ? at + 1 == text.length() || !Character.isLowSurrogate(text.charAt(at + 1))
        : at == 0 || !Character.isHighSurrogate(text.charAt(at - 1));
  }
}
