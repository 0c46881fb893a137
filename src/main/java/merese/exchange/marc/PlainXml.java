package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.marc.MarcField.Subfield;

/**
 * Reads MARCXML records of the plain sort, several times as fast as an XML parser does.
 *
 * <p>Guarantees: what it reads, it reads as {@link XmlFields} does; for everything else, sound or
 * not, it says nothing. Plain are start and end tags, attributes without references, text with
 * references to characters and to XML's five entities.
 */
final class PlainXml {
  private static final int ATTRIBUTES = 8;

  private final String text;
  private int at;
  private final String[] names = new String[ATTRIBUTES];
  private final String[] values = new String[ATTRIBUTES];
  private int attributes;
  private boolean empty;
  private final StringBuilder held = new StringBuilder();

  private PlainXml(String text) {
    this.text = text;
  }

  private static final class NotPlain extends Exception {
    private static final long serialVersionUID = 1;

    NotPlain() {
      super(null, null, false, false);
    }
  }

  /** Empty for a record that is not plain. */
  static Optional<MarcRecord> read(String text) {
    try {
      PlainXml xml = new PlainXml(text);
      List<MarcField> fields = xml.fields();
      return xml.at == text.length() ? Optional.of(new MarcRecord(fields)) : Optional.empty();
    } catch (NotPlain | StringIndexOutOfBoundsException e) {
      return Optional.empty();
    }
  }

  private static NotPlain notPlain() {
    return new NotPlain();
  }

  private List<MarcField> fields() throws NotPlain {
    List<MarcField> fields = new ArrayList<>();
    String record = start();
    check(local(record).equals("record") && !empty);
    while (space()) {
      String name = start();
      check(!empty);
      switch (local(name)) {
        case "leader" -> {
          check(attributes == 0);
          fields.add(MarcField.control(MarcField.LEADER, content(name)));
        }
        case "controlfield" -> {
          check(attributes == 1);
          fields.add(MarcField.control(tag(), content(name)));
        }
        case "datafield" -> fields.add(data(name));
        default -> throw notPlain();
      }
    }
    end(record);
    return fields;
  }

  private static void check(boolean plain) throws NotPlain {
    if (!plain) {
      throw notPlain();
    }
  }

  private static String local(String name) {
    return name.substring(name.indexOf(':') + 1);
  }

  /** To the next tag; false before an end tag. */
  private boolean space() throws NotPlain {
    char c = text.charAt(at);
    while (c == ' ' || c == '\n' || c == '\t') {
      c = text.charAt(++at);
    }
    check(c == '<');
    return text.charAt(at + 1) != '/';
  }

  private String start() throws NotPlain {
    check(text.charAt(at) == '<');
    at++;
    String name = name();
    attributes = 0;
    char c = text.charAt(at);
    while (c == ' ') {
      c = text.charAt(++at);
      if (c != '>' && c != '/') {
        attribute();
        c = text.charAt(at);
      }
    }
    empty = c == '/';
    if (empty) {
      c = text.charAt(++at);
    }
    check(c == '>');
    at++;
    return name;
  }

  private String name() throws NotPlain {
    int from = at;
    int colons = 0;
    char c = text.charAt(at);
    check(isLetter(c));
    while (isLetter(c) || (c >= '0' && c <= '9') || c == '-' || c == '.' || c == ':') {
      colons += c == ':' ? 1 : 0;
      c = text.charAt(++at);
    }
    check(colons <= 1 && text.charAt(at - 1) != ':');
    return text.substring(from, at);
  }

  private static boolean isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_';
  }

  private void attribute() throws NotPlain {
    String name = name();
    check(text.charAt(at) == '=' && attributes < ATTRIBUTES);
    char quote = text.charAt(at + 1);
    check(quote == '"' || quote == '\'');
    int from = at + 2;
    int to = from;
    char c = text.charAt(to);
    while (c != quote) {
      check(c >= ' ' && c != '<' && c != '&' && c < 0xfffe);
      c = text.charAt(++to);
    }
    at = to + 1;
    for (int i = 0; i < attributes; i++) {
      check(!names[i].equals(name));
    }
    names[attributes] = name;
    values[attributes++] = text.substring(from, to);
  }

  private String value(String name, int length) throws NotPlain {
    for (int i = 0; i < attributes; i++) {
      if (names[i].equals(name)) {
        check(values[i].length() == length);
        return values[i];
      }
    }
    throw notPlain();
  }

  private String tag() throws NotPlain {
    String tag = value("tag", 3);
    check(!tag.isBlank());
    return tag;
  }

  private MarcField data(String name) throws NotPlain {
    String tag = tag();
    String indicators = value("ind1", 1) + value("ind2", 1);
    check(attributes == 3 && indicators.indexOf('#') < 0);
    List<Subfield> subfields = new ArrayList<>(4);
    while (space()) {
      String subfield = start();
      check(local(subfield).equals("subfield") && !empty && attributes == 1);
      char code = value("code", 1).charAt(0);
      subfields.add(new Subfield(code, content(subfield)));
    }
    end(name);
    return MarcField.data(tag, indicators, subfields);
  }

  private void end(String name) throws NotPlain {
    int to = at + 2 + name.length();
    check(text.startsWith(name, at + 2) && text.charAt(to) == '>');
    check(text.charAt(at) == '<' && text.charAt(at + 1) == '/');
    at = to + 1;
  }

  /** The text of an element, and past its end. */
  private String content(String name) throws NotPlain {
    int from = at;
    held.setLength(0);
    char c = text.charAt(at);
    while (c != '<') {
      check((c >= ' ' || c == '\n' || c == '\t') && c != '>' && c < 0xfffe);
      if (c == '&') {
        held.append(text, from, at);
        reference();
        from = at;
      } else {
        at++;
      }
      c = text.charAt(at);
    }
    String whole =
        held.isEmpty() ? text.substring(from, at) : held.append(text, from, at).toString();
    end(name);
    return whole;
  }

  private void reference() throws NotPlain {
    int to = text.indexOf(';', at);
    check(to > 0 && to - at < 10);
    String name = text.substring(at + 1, to);
    switch (name) {
      case "amp" -> held.append('&');
      case "lt" -> held.append('<');
      case "gt" -> held.append('>');
      case "quot" -> held.append('"');
      case "apos" -> held.append('\'');
      default -> held.appendCodePoint(number(name));
    }
    at = to + 1;
  }

  private static int number(String name) throws NotPlain {
    check(name.length() > 1 && name.charAt(0) == '#');
    boolean hex = name.charAt(1) == 'x';
    int code = 0;
    check(name.length() > (hex ? 2 : 1));
    for (int i = hex ? 2 : 1; i < name.length(); i++) {
      char c = name.charAt(i);
      int digit = Character.digit(c, hex ? 16 : 10);
      check(digit >= 0 && c < 0x80);
      code = code * (hex ? 16 : 10) + digit;
    }
    boolean control = code < ' ' && code != '\n' && code != '\t' && code != '\r';
    boolean surrogate = code >= 0xd800 && code < 0xe000;
    check(!control && !surrogate && code <= 0x10ffff && code != 0xfffe && code != 0xffff);
    return code;
  }
}
