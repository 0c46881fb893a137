package merese.store;

import java.util.List;

/**
 * A JSON value that knows where it stood. Objects keep the order of their keys and numbers their
 * spelling.
 */
abstract sealed class Json {
  private static final int MADE = -1;

  private final int start;
  private final int end;

  private Json(int start, int end) {
    this.start = start;
    this.end = end;
  }

  /** The offset of its first character in the source; below 0 for a value made by the program. */
  final int start() {
    return start;
  }

  /** The offset after its last character. */
  final int end() {
    return end;
  }

  final boolean wasRead() {
    return start >= 0;
  }

  /** Whether both say the same, wherever they stood. The order of keys counts. */
  abstract boolean sameAs(Json other);

  /** How a message calls it. */
  abstract String described();

  /** An object. */
  static final class Obj extends Json {
    private final List<Member> members;

    Obj(List<Member> members) {
      this(members, MADE, MADE);
    }

    Obj(List<Member> members, int start, int end) {
      super(start, end);
      this.members = members;
    }

    List<Member> members() {
      return members;
    }

    /** The value of a key, or null. */
    Json get(String key) {
      for (int i = 0; i < members.size(); i++) {
        if (members.get(i).key.equals(key)) {
          return members.get(i).value;
        }
      }
      return null;
    }

    @Override
    boolean sameAs(Json other) {
      if (!(other instanceof Obj that) || that.members.size() != members.size()) {
        return false;
      }
      for (int i = 0; i < members.size(); i++) {
        if (!members.get(i).key.equals(that.members.get(i).key)
            || !members.get(i).value.sameAs(that.members.get(i).value)) {
          return false;
        }
      }
      return true;
    }

    @Override
    String described() {
      return "an object { }";
    }
  }

  /** A key with its value; {@code start} is where the key stood. */
  record Member(String key, int start, Json value) {
    Member(String key, Json value) {
      this(key, MADE, value);
    }

    Member with(Json other) {
      return new Member(key, start, other);
    }
  }

  /** A list. */
  static final class Arr extends Json {
    private final List<Json> items;

    Arr(List<Json> items) {
      this(items, MADE, MADE);
    }

    Arr(List<Json> items, int start, int end) {
      super(start, end);
      this.items = items;
    }

    List<Json> items() {
      return items;
    }

    @Override
    boolean sameAs(Json other) {
      if (!(other instanceof Arr that) || that.items.size() != items.size()) {
        return false;
      }
      for (int i = 0; i < items.size(); i++) {
        if (!items.get(i).sameAs(that.items.get(i))) {
          return false;
        }
      }
      return true;
    }

    @Override
    String described() {
      return "a list [ ]";
    }
  }

  /** A text. */
  static final class Text extends Json {
    private final String value;

    Text(String value) {
      this(value, MADE, MADE);
    }

    Text(String value, int start, int end) {
      super(start, end);
      this.value = value;
    }

    String value() {
      return value;
    }

    @Override
    boolean sameAs(Json other) {
      return other instanceof Text that && that.value.equals(value);
    }

    @Override
    String described() {
      return "the text " + Quote.of(value);
    }
  }

  /** A number, true, false or null, as it is spelt. */
  static final class Word extends Json {
    static final String TRUE = "true";
    static final String FALSE = "false";
    static final String NULL = "null";

    private final String spelling;

    Word(String spelling) {
      this(spelling, MADE, MADE);
    }

    Word(String spelling, int start, int end) {
      super(start, end);
      this.spelling = spelling;
    }

    String spelling() {
      return spelling;
    }

    boolean isNull() {
      return spelling.equals(NULL);
    }

    boolean isNumber() {
      char first = spelling.charAt(0);
      return first == '-' || (first >= '0' && first <= '9');
    }

    @Override
    boolean sameAs(Json other) {
      return other instanceof Word that && that.spelling.equals(spelling);
    }

    @Override
    String described() {
      return isNumber() ? "the number " + Quote.cut(spelling) : spelling;
    }
  }
}
