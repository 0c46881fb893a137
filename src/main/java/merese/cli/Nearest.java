package merese.cli;

import java.util.ArrayList;
import java.util.List;
import merese.model.Slips;

/** Which commands a mistyped word may have meant. */
final class Nearest {
  private static final int MOST = 3;

  private Nearest() {}

  /** The names that start with the word, else those at most two slips away, nearest first. */
  static List<String> to(String typed, List<Commands.Entry> commands) {
    List<String> near = new ArrayList<>();
    for (Commands.Entry entry : commands) {
      if (entry.name().startsWith(typed) && near.size() < MOST) {
        near.add(entry.name());
      }
    }
    for (int slips = 0; near.isEmpty() && slips <= Math.min(2, typed.length() / 2); slips++) {
      for (Commands.Entry entry : commands) {
        if (Slips.between(typed, entry.name()) == slips && near.size() < MOST) {
          near.add(entry.name());
        }
      }
    }
    return near;
  }
}
