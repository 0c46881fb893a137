package merese.desk.web;

import io.javalin.http.Context;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What somebody typed into a form, so that a form that is refused can show it again. */
public final class Typed {
  public static final Typed NOTHING = new Typed(Map.of());

  private final Map<String, List<String>> fields;

  private Typed(Map<String, List<String>> fields) {
    this.fields = fields;
  }

  /** The fields of a form that was sent. */
  public static Typed form(Context request) {
    return new Typed(new LinkedHashMap<>(request.formParamMap()));
  }

  /** The parts of an address, by which a link can fill a form in. */
  public static Typed address(Context request) {
    return new Typed(new LinkedHashMap<>(request.queryParamMap()));
  }

  /** With a field of one value. */
  public Typed with(String name, String value) {
    return with(name, List.of(value));
  }

  /** With a field of several values. */
  public Typed with(String name, List<String> values) {
    Map<String, List<String>> other = new LinkedHashMap<>(fields);
    other.put(name, List.copyOf(values));
    return new Typed(other);
  }

  /** The first value of a field; "" where there is none. */
  public String get(String name) {
    List<String> values = all(name);
    return values.isEmpty() ? "" : values.get(0);
  }

  public List<String> all(String name) {
    return fields.getOrDefault(name, List.of());
  }

  public boolean has(String name) {
    return !get(name).isEmpty();
  }

  /** The fields there are, in their order. */
  public Set<String> names() {
    return Collections.unmodifiableSet(fields.keySet());
  }

  /** Whether a choice of several was taken. */
  public boolean is(String name, String value) {
    return all(name).contains(value);
  }
}
