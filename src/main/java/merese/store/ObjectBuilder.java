package merese.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Coded;
import merese.model.Locator;

/** Makes an object as the program writes it: what is optional and empty is left out. */
final class ObjectBuilder {
  private final List<Json.Member> members = new ArrayList<>();

  static <T> Json.Obj object(T value, Codec<T> codec) {
    ObjectBuilder out = new ObjectBuilder();
    codec.write(value, out);
    return new Json.Obj(out.members);
  }

  private static <T> Json json(T value, Codec<T> codec) {
    String text = codec.asText(value);
    return text != null ? new Json.Text(text) : object(value, codec);
  }

  private void add(String key, Json value) {
    members.add(new Json.Member(key, value));
  }

  void text(String key, String value) {
    add(key, new Json.Text(value));
  }

  void text(String key, Optional<String> value) {
    if (value.isPresent() && !value.get().isBlank()) {
      text(key, value.get());
    }
  }

  /** A text that says something even where it is "". */
  void textOrEmpty(String key, Optional<String> value) {
    if (value.isPresent()) {
      text(key, value.get());
    }
  }

  void texts(String key, List<String> values) {
    if (!values.isEmpty()) {
      allTexts(key, values);
    }
  }

  /** The same, but an empty list stands there. */
  void allTexts(String key, List<String> values) {
    List<Json> items = new ArrayList<>(values.size());
    for (String value : values) {
      items.add(new Json.Text(value));
    }
    add(key, new Json.Arr(items));
  }

  void number(String key, int value) {
    add(key, new Json.Word(Integer.toString(value)));
  }

  void number(String key, OptionalInt value) {
    if (value.isPresent()) {
      number(key, value.getAsInt());
    }
  }

  /** Written only where it differs from what its absence means. */
  void flag(String key, boolean value, boolean otherwise) {
    if (value != otherwise) {
      add(key, new Json.Word(value ? Json.Word.TRUE : Json.Word.FALSE));
    }
  }

  void code(String key, Coded value) {
    text(key, value.code());
  }

  void code(String key, Optional<? extends Coded> value) {
    if (value.isPresent()) {
      code(key, value.get());
    }
  }

  void locator(String key, Locator value) {
    text(key, value.toString());
  }

  void locator(String key, Optional<Locator> value) {
    if (value.isPresent()) {
      locator(key, value.get());
    }
  }

  void date(String key, Optional<LocalDate> value) {
    if (value.isPresent()) {
      text(key, value.get().toString());
    }
  }

  <T> void object(String key, T value, Codec<T> codec) {
    add(key, json(value, codec));
  }

  <T> void object(String key, Optional<T> value, Codec<T> codec) {
    if (value.isPresent()) {
      object(key, value.get(), codec);
    }
  }

  <T> void list(String key, List<T> values, Codec<T> codec) {
    if (!values.isEmpty()) {
      allOf(key, values, codec);
    }
  }

  /** The same, but an empty list stands there. */
  <T> void allOf(String key, List<T> values, Codec<T> codec) {
    List<Json> items = new ArrayList<>(values.size());
    for (T value : values) {
      items.add(json(value, codec));
    }
    add(key, new Json.Arr(items));
  }
}
