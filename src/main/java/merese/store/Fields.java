package merese.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Coded;
import merese.model.Locator;
import merese.model.Nearest;
import merese.model.PageMap;
import merese.model.PageMapException;

/**
 * The keys of one object while it is read. What is wrong is recorded, and a stand-in given, so that
 * one reading finds everything; see {@link Codec}. A key that is null or, where it is optional, ""
 * counts as left out.
 */
final class Fields {
  private static final String STAND_IN = "?";

  private final Reading reading;
  private final Fields parent;
  private final Spot spot;
  private final Json.Obj object;
  private final List<String> asked;
  private int next;
  private boolean failed;

  Fields(Reading reading, Fields parent, Spot spot) {
    this.reading = reading;
    this.parent = parent;
    this.spot = spot;
    this.object = (Json.Obj) spot.value();
    this.asked = reading.warns() ? new ArrayList<>() : null;
  }

  boolean failed() {
    return failed;
  }

  boolean has(String key) {
    Json value = object.get(key);
    return value != null && !(value instanceof Json.Word word && word.isNull());
  }

  String text(String key) {
    Json value = required(key, "a text");
    if (value instanceof Json.Text text && text.value().isBlank()) {
      fail(value, key, "must not be empty", "write it, or \"?\" where it is unknown");
    }
    return value == null ? STAND_IN : textOf(value, key);
  }

  /** A text that must be there and may be "". */
  String textOrEmpty(String key) {
    Json value = required(key, "a text, or \"\"");
    return value == null ? STAND_IN : textOf(value, key);
  }

  Optional<String> optionalText(String key) {
    Json value = get(key);
    if (value == null || (value instanceof Json.Text text && text.value().isBlank())) {
      return Optional.empty();
    }
    return Optional.of(textOf(value, key));
  }

  /** A text that says something even where it is "". */
  Optional<String> optionalTextOrEmpty(String key) {
    Json value = get(key);
    return value == null ? Optional.empty() : Optional.of(textOf(value, key));
  }

  List<String> texts(String key) {
    List<Json> items = items(key);
    List<String> result = new ArrayList<>(items.size());
    for (int i = 0; i < items.size(); i++) {
      Json item = items.get(i);
      if (item instanceof Json.Text text && !text.value().isBlank()) {
        result.add(text.value());
      } else {
        fail(item, key + '[' + i + ']', item.described() + " stands here", "write a text");
      }
    }
    return result;
  }

  int number(String key) {
    Json value = required(key, "a number");
    return value == null ? 0 : numberOf(value, key);
  }

  OptionalInt optionalNumber(String key) {
    Json value = get(key);
    return value == null ? OptionalInt.empty() : OptionalInt.of(numberOf(value, key));
  }

  boolean flag(String key, boolean otherwise) {
    Json value = get(key);
    if (value == null) {
      return otherwise;
    }
    if (value instanceof Json.Word word && !word.isNumber()) {
      return word.spelling().equals(Json.Word.TRUE);
    }
    fail(value, key, value.described() + " stands here", "write true or false, unquoted");
    return otherwise;
  }

  <E extends Coded> E code(String key, Codes<E> codes) {
    Json value = required(key, "a text");
    return value == null ? null : codeOf(value, key, codes);
  }

  <E extends Coded> E code(String key, Codes<E> codes, E otherwise) {
    Json value = get(key);
    return value == null ? otherwise : codeOf(value, key, codes);
  }

  <E extends Coded> Optional<E> optionalCode(String key, Codes<E> codes) {
    return Optional.ofNullable(code(key, codes, null));
  }

  <E extends Coded> List<E> codes(String key, Codes<E> codes) {
    List<Json> items = items(key);
    List<E> result = new ArrayList<>(items.size());
    for (int i = 0; i < items.size(); i++) {
      E code = codeOf(items.get(i), key + '[' + i + ']', codes);
      if (code != null) {
        result.add(code);
      }
    }
    return result;
  }

  Locator locator(String key) {
    String text = text(key);
    return failed && text.equals(STAND_IN) ? null : locatorOf(text, key);
  }

  Optional<Locator> optionalLocator(String key) {
    Optional<String> text = optionalText(key);
    return text.isEmpty() ? Optional.empty() : Optional.ofNullable(locatorOf(text.get(), key));
  }

  Optional<LocalDate> optionalDate(String key) {
    Optional<String> text = optionalText(key);
    LocalDate date = text.isEmpty() ? null : Scalars.date(text.get());
    if (text.isPresent() && date == null) {
      fail(get(key), key, Quote.of(text.get()) + " is not a day", "write it as in 2025-03-02");
    }
    return Optional.ofNullable(date);
  }

  /** The map of pages; one that names none where it is left out. */
  PageMap pageMap(String key) {
    Optional<String> text = optionalText(key);
    try {
      return text.isEmpty() ? PageMap.NONE : PageMap.parse(text.get());
    } catch (PageMapException e) {
      fail(get(key), key, e.getMessage(), "");
      return PageMap.NONE;
    }
  }

  <T> T object(String key, Codec<T> codec) {
    Json value = required(key, "an object");
    return value == null ? null : objectOf(new Spot(spot, key, -1, value), codec);
  }

  <T> Optional<T> optionalObject(String key, Codec<T> codec) {
    Json value = get(key);
    return value == null
        ? Optional.empty()
        : Optional.ofNullable(objectOf(new Spot(spot, key, -1, value), codec));
  }

  <T> List<T> list(String key, Codec<T> codec) {
    List<Json> items = items(key);
    List<T> result = new ArrayList<>(items.size());
    for (int i = 0; i < items.size(); i++) {
      T value = objectOf(new Spot(spot, key, i, items.get(i)), codec);
      if (value != null) {
        result.add(value);
      }
    }
    return result;
  }

  /** Records that what the object says as a whole is refused; a message is "what; remedy". */
  void refuse(String message) {
    refuse(object, spot.where(), message);
  }

  private void refuse(Json value, String where, String message) {
    int split = message.indexOf("; ");
    String what = split < 0 ? message : message.substring(0, split);
    fail();
    reading.error(value.start(), where, what, split < 0 ? "" : message.substring(split + 2));
  }

  /** The keys that nobody asked for; only where the reading warns. */
  List<String> unknownKeys() {
    List<String> unknown = new ArrayList<>();
    for (Json.Member member : object.members()) {
      if (!asked.contains(member.key())) {
        unknown.add(member.key());
      }
    }
    return unknown;
  }

  void warnOfMisspeltKeys() {
    for (Json.Member member : object.members()) {
      if (asked.contains(member.key())) {
        continue;
      }
      List<String> near = Nearest.bySlips(member.key(), asked);
      if (!near.isEmpty() && !has(near.get(0))) {
        reading.warning(
            member.start(),
            spot.where(),
            "the key " + Quote.of(member.key()) + " is not known and is kept as it is",
            "did you mean " + Quote.of(near.get(0)) + "?");
      }
    }
  }

  private Json get(String key) {
    if (asked != null) {
      asked.add(key);
    }
    Json value = find(key);
    return value instanceof Json.Word word && word.isNull() ? null : value;
  }

  /** Keys mostly stand in the order in which they are asked for. */
  private Json find(String key) {
    List<Json.Member> members = object.members();
    if (next < members.size() && members.get(next).key().equals(key)) {
      return members.get(next++).value();
    }
    return object.get(key);
  }

  private Json required(String key, String kind) {
    Json value = get(key);
    if (value == null) {
      fail();
      List<String> there = new ArrayList<>();
      for (Json.Member member : object.members()) {
        there.add(member.key());
      }
      List<String> near = has(key) ? List.of() : Nearest.bySlips(key, there);
      String remedy =
          !near.isEmpty() && !near.get(0).equals(key)
              ? "did you mean it by " + Quote.of(near.get(0)) + "?"
              : "add it with " + kind;
      reading.error(object.start(), spot.where(), Quote.of(key) + " is missing", remedy);
    }
    return value;
  }

  private String textOf(Json value, String key) {
    if (value instanceof Json.Text text) {
      return text.value();
    }
    boolean word = value instanceof Json.Word;
    fail(
        value,
        key,
        value.described() + " stands where a text belongs",
        "write " + (word ? Quote.of(((Json.Word) value).spelling()) : "\"…\""));
    return STAND_IN;
  }

  private int numberOf(Json value, String key) {
    OptionalInt number =
        value instanceof Json.Word word ? Scalars.whole(word.spelling()) : OptionalInt.empty();
    if (number.isPresent()) {
      return number.getAsInt();
    }
    boolean quoted = value instanceof Json.Text text && Scalars.whole(text.value()).isPresent();
    fail(
        value,
        key,
        value.described() + " stands where a whole number belongs",
        quoted ? "write it without quotation marks" : "write digits only, unquoted");
    return 0;
  }

  private <E extends Coded> E codeOf(Json value, String key, Codes<E> codes) {
    String text = textOf(value, key);
    E code = codes.get(text);
    if (code == null && value instanceof Json.Text) {
      fail(value, key, codes.refusal(text), codes.remedy(text));
    }
    return code;
  }

  private Locator locatorOf(String text, String key) {
    try {
      return Locator.parse(text);
    } catch (RuntimeException e) {
      fail(object.get(key), key, String.valueOf(e.getMessage()), "");
      return null;
    }
  }

  private <T> T objectOf(Spot child, Codec<T> codec) {
    Json value = child.value();
    if (value instanceof Json.Obj) {
      return reading.value(new Fields(reading, this, child), codec);
    }
    T fromText = null;
    try {
      if (value instanceof Json.Text text && !text.value().isBlank()) {
        fromText = codec.fromText(text.value());
      }
    } catch (IllegalArgumentException e) {
      refuse(value, child.where(), String.valueOf(e.getMessage()));
      return null;
    }
    if (fromText == null) {
      fail();
      reading.error(
          value.start(),
          child.where(),
          value.described() + " stands where " + codec.shape() + " belongs",
          "write " + codec.example());
    }
    return fromText;
  }

  private List<Json> items(String key) {
    Json value = get(key);
    if (value == null) {
      return List.of();
    }
    if (value instanceof Json.Arr array) {
      return array.items();
    }
    fail(
        value,
        key,
        value.described() + " stands where a list belongs",
        "put it in square brackets: [ … ]");
    return List.of();
  }

  private void fail(Json value, String key, String what, String remedy) {
    fail();
    String above = spot.where();
    reading.error(value.start(), above.isEmpty() ? key : above + '.' + key, what, remedy);
  }

  private void fail() {
    for (Fields fields = this; fields != null && !fields.failed; fields = fields.parent) {
      fields.failed = true;
    }
  }
}
