package merese.exchange.csl;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A value of JSON; numbers keep the form in which they are written. */
sealed interface Json {
  /** A text. */
  record Text(String value) implements Json {}

  /** A number, true, false or null, as it is written. */
  record Bare(String source) implements Json {
    boolean isNumber() {
      return source.charAt(0) == '-' || source.charAt(0) <= '9';
    }
  }

  /** A list. */
  record Items(List<Json> items) implements Json {}

  /** An object; its names stand in the order of the file, and one may come twice. */
  final class Members implements Json {
    private static final int FEW = 4;

    private final List<Member> members;
    private Map<String, Json> byName; // made when first asked for

    Members(List<Member> members) {
      this.members = members;
    }

    List<Member> members() {
      return members;
    }

    /** The first value of a name. */
    Optional<Json> get(String name) {
      if (members.size() > FEW) {
        return Optional.ofNullable(byName().get(name));
      }
      for (Member member : members) {
        if (member.name().equals(name)) {
          return Optional.of(member.value());
        }
      }
      return Optional.empty();
    }

    private Map<String, Json> byName() {
      if (byName == null) {
        byName = new HashMap<>();
        for (Member member : members) {
          byName.putIfAbsent(member.name(), member.value());
        }
      }
      return byName;
    }

    Optional<String> text(String name) {
      return get(name).flatMap(Json::asText);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Members that && members.equals(that.members);
    }

    @Override
    public int hashCode() {
      return members.hashCode();
    }
  }

  /** A name in an object, with its value. */
  record Member(String name, Json value) {}

  static Json nothing() {
    return new Bare("null");
  }

  static Json of(String text) {
    return new Text(text);
  }

  static Json of(int number) {
    return new Bare(Integer.toString(number));
  }

  /** From the types of the JDK; another type is written as its text. */
  static Json of(Object value) {
    if (value instanceof Map<?, ?> map) {
      List<Member> members = new ArrayList<>();
      map.forEach((name, each) -> members.add(new Member(name.toString(), of(each))));
      return new Members(members);
    }
    if (value instanceof List<?> list) {
      List<Json> items = new ArrayList<>();
      list.forEach(each -> items.add(of(each)));
      return new Items(items);
    }
    return value instanceof Integer || value instanceof Boolean
        ? new Bare(value.toString())
        : new Text(value.toString());
  }

  /** The words of a text, or a number as it is written; empty for all else. */
  default Optional<String> asText() {
    if (this instanceof Text text) {
      return Optional.of(text.value());
    }
    return this instanceof Bare bare && bare.isNumber()
        ? Optional.of(bare.source())
        : Optional.empty();
  }

  /** The text of this, without a space between its parts. */
  default String compact() {
    StringBuilder out = new StringBuilder(128);
    JsonText.compact(this, out);
    return out.toString();
  }
}
