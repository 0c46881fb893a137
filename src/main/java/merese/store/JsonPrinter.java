package merese.store;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Tree to text. On several lines there is one value a line, in lists too, so that a diff shows what
 * changed and nothing else; only an empty list or object stays on its line. Nothing is escaped that
 * need not be.
 */
final class JsonPrinter {
  private static final int ONE_LINE = -1;

  private final StringBuilder out = new StringBuilder();
  private final Source source;

  private JsonPrinter(Source source) {
    this.source = source;
  }

  /** Without any white space: for an index. */
  static byte[] compact(Json value) {
    JsonPrinter printer = new JsonPrinter(null);
    printer.value(value, ONE_LINE);
    return printer.out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Two-space JSON with a line end at its end. */
  static byte[] lines(Json value) {
    return lines(value, null);
  }

  /** The same, but each value that was read from {@code source} stays as it stood there. */
  static byte[] lines(Json value, Source source) {
    JsonPrinter printer = new JsonPrinter(source);
    printer.value(value, 0);
    return printer.out.append('\n').toString().getBytes(StandardCharsets.UTF_8);
  }

  private void value(Json value, int depth) {
    if (source != null && value.wasRead()) {
      out.append(source.slice(value));
    } else if (value instanceof Json.Obj object) {
      object(object.members(), depth);
    } else if (value instanceof Json.Arr array) {
      array(array.items(), depth);
    } else if (value instanceof Json.Text text) {
      text(text.value());
    } else {
      out.append(((Json.Word) value).spelling());
    }
  }

  private void object(List<Json.Member> members, int depth) {
    out.append('{');
    for (int i = 0; i < members.size(); i++) {
      separate(i, depth);
      text(members.get(i).key());
      out.append(depth == ONE_LINE ? ":" : ": ");
      value(members.get(i).value(), inside(depth));
    }
    close('}', members.isEmpty(), depth);
  }

  private void array(List<Json> items, int depth) {
    out.append('[');
    for (int i = 0; i < items.size(); i++) {
      separate(i, depth);
      value(items.get(i), inside(depth));
    }
    close(']', items.isEmpty(), depth);
  }

  private void separate(int index, int depth) {
    if (index > 0) {
      out.append(',');
    }
    newLine(inside(depth));
  }

  private void close(char bracket, boolean empty, int depth) {
    if (!empty) {
      newLine(depth);
    }
    out.append(bracket);
  }

  private static int inside(int depth) {
    return depth == ONE_LINE ? ONE_LINE : depth + 1;
  }

  private void newLine(int depth) {
    if (depth != ONE_LINE) {
      out.append('\n');
      for (int i = 0; i < depth; i++) {
        out.append("  ");
      }
    }
  }

  private void text(String value) {
    out.append('"');
    int from = out.length();
    JsonStringEncoder.getInstance().quoteAsString(value, out);
    escapeHalfPairs(from);
    out.append('"');
  }

  /** Half a surrogate pair has no UTF-8; it stays what it was only as an escape. */
  private void escapeHalfPairs(int from) {
    for (int i = from; i < out.length(); i++) {
      char c = out.charAt(i);
      if (!Character.isSurrogate(c)) {
        continue;
      }
      if (Character.isHighSurrogate(c)
          && i + 1 < out.length()
          && Character.isLowSurrogate(out.charAt(i + 1))) {
        i++;
      } else {
        out.replace(i, i + 1, "\\u" + Integer.toHexString(c));
        i += 5;
      }
    }
  }
}
