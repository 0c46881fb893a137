package merese.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.ArgSpec;

/**
 * One option or word that a command declares, and what the user typed for it; known once the words
 * have been read.
 *
 * @param <T> Boolean for a flag; String, Integer or Path; a list of String where there may be many
 */
final class Given<T> {
  /** How often it may be typed, and with what. */
  enum Shape {
    FLAG,
    OPTION,
    OPTIONS,
    WORD,
    OPTIONAL_WORD,
    WORDS,
    OPTIONAL_WORDS;

    boolean isWord() {
      return this == WORD || this == WORDS || isOptionalWord();
    }

    private boolean isOptionalWord() {
      return this == OPTIONAL_WORD || this == OPTIONAL_WORDS;
    }

    boolean isMany() {
      return this == OPTIONS || this == WORDS || this == OPTIONAL_WORDS;
    }

    boolean isRequired() {
      return this == WORD || this == WORDS;
    }
  }

  private final Shape shape;
  private final Class<?> type;
  private final List<String> names;
  private final String label;
  private final String description;
  private T read;
  private ArgSpec spec;

  /**
   * @param type of one value
   * @param names of an option; none for a word
   * @param label what stands for the value in the help; empty for a flag
   */
  Given(Shape shape, Class<?> type, List<String> names, String label, String description) {
    this.shape = shape;
    this.type = type;
    this.names = names;
    this.label = label;
    this.description = description;
  }

  /** Empty when it was left out. */
  Optional<T> value() {
    return Optional.ofNullable(read != null || spec == null ? read : spec.getValue());
  }

  /** For what nobody can leave out. */
  T required() {
    return value().orElseThrow();
  }

  /** Whether a flag was typed. */
  boolean isSet() {
    return Boolean.TRUE.equals(value().orElse(null));
  }

  Shape shape() {
    return shape;
  }

  Class<?> type() {
    return type;
  }

  List<String> names() {
    return names;
  }

  String label() {
    return label;
  }

  String description() {
    return description;
  }

  /** Whether {@link #take} can make a value of what was typed. */
  boolean canTake(String typed) {
    return type != Integer.class || isShortNumber(typed);
  }

  /**
   * Takes what was typed for it.
   *
   * @param typed what {@link #canTake}, at least one; just one unless it is of many
   */
  @SuppressWarnings("unchecked") // the shape and the type say what T is
  void take(List<String> typed) {
    read = (T) valueOf(typed);
  }

  private Object valueOf(List<String> typed) {
    if (shape.isMany()) {
      return typed;
    }
    String one = typed.get(0);
    if (shape == Shape.FLAG) {
      return true;
    } else if (type == Integer.class) {
      return Integer.valueOf(one);
    } else if (type == Path.class) {
      return Path.of(one);
    }
    return one;
  }

  /** From now on picocli knows the value. */
  void leaveTo(ArgSpec picocli) {
    spec = picocli;
  }

  /** Digits alone, and too few of them to be too many. */
  private static boolean isShortNumber(String typed) {
    for (int i = 0; i < typed.length(); i++) {
      if (typed.charAt(i) < '0' || typed.charAt(i) > '9') {
        return false;
      }
    }
    return !typed.isEmpty() && typed.length() < 10;
  }
}
