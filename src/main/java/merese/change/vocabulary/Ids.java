package merese.change.vocabulary;

import java.util.ArrayList;
import java.util.List;

/** Lists of ids of concepts. */
final class Ids {
  private Ids() {}

  /** The same with one id for another, each once. */
  static List<String> led(List<String> ids, String from, String to) {
    List<String> led = new ArrayList<>();
    for (String id : ids) {
      String now = id.equals(from) ? to : id;
      if (!now.equals(to) || !led.contains(to)) {
        led.add(now);
      }
    }
    return led;
  }

  /** Refuses what cannot be typed as one word. */
  static boolean isUsable(String id) {
    if (id.isEmpty() || id.startsWith("-") || id.endsWith("-")) {
      return false;
    }
    for (int i = 0; i < id.length(); i += Character.charCount(id.codePointAt(i))) {
      int c = id.codePointAt(i);
      if (c != '-' && !Character.isDigit(c) && !Character.isLowerCase(c)) {
        return false;
      }
    }
    return true;
  }
}
