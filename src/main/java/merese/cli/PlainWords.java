package merese.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a command line that leaves no question: options by their whole names, each with its value
 * after it, and as many words as the command takes. All else, a mistake, {@code --name=value} or a
 * call for help, is left to picocli from the first word on. Most lines are plain, and picocli alone
 * costs a start more than half a Java hello-world.
 */
final class PlainWords {
  private final List<Given<?>> declared;
  private final Map<Given<?>, List<String>> typed = new LinkedHashMap<>();

  private PlainWords(List<Given<?>> declared) {
    this.declared = declared;
  }

  /**
   * Gives each value to what it was typed for.
   *
   * @param declared what the command takes, its words in their order
   * @return false, and nothing is given, where the line is not a plain one
   */
  static boolean read(List<Given<?>> declared, String... line) {
    PlainWords words = new PlainWords(declared);
    if (!words.sort(line) || !words.areComplete()) {
      return false;
    }
    for (Map.Entry<Given<?>, List<String>> each : words.typed.entrySet()) {
      each.getKey().take(each.getValue());
    }
    return true;
  }

  private boolean sort(String... line) {
    int taken = 0;
    for (int i = 0; i < line.length; i++) {
      Given<?> given = isOption(line[i]) ? option(line[i]) : word(taken++);
      if (given == null) {
        return false;
      }
      if (given.shape() == Given.Shape.OPTION || given.shape() == Given.Shape.OPTIONS) {
        i++;
        if (i == line.length || isOption(line[i])) {
          return false;
        }
      }
      if (!add(given, line[i])) {
        return false;
      }
    }
    return true;
  }

  private boolean add(Given<?> given, String value) {
    List<String> values = typed.get(given);
    if (values == null) {
      values = new ArrayList<>();
      typed.put(given, values);
    }
    values.add(value);
    return given.canTake(value) && (values.size() == 1 || given.shape().isMany());
  }

  private boolean areComplete() {
    for (Given<?> given : declared) {
      if (given.shape().isRequired() && !typed.containsKey(given)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isOption(String word) {
    return word.startsWith("-");
  }

  /** The option of a name, or null. */
  private Given<?> option(String name) {
    for (Given<?> given : declared) {
      if (given.names().contains(name)) {
        return given;
      }
    }
    return null;
  }

  /** What takes a word that has so many before it, or null. */
  private Given<?> word(int before) {
    int place = 0;
    for (Given<?> given : declared) {
      if (given.shape().isWord()) {
        if (place == before || given.shape().isMany()) {
          return given;
        }
        place++;
      }
    }
    return null;
  }
}
