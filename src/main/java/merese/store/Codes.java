package merese.store;

import java.util.ArrayList;
import java.util.List;
import merese.model.Coded;
import merese.model.Nearest;

/** A closed set of words as a file has them, with the noun a message uses for one of them. */
final class Codes<E extends Coded> {
  private final String noun;
  private final E[] values;
  private final String[] codes;

  Codes(String noun, E[] values) {
    this.noun = noun;
    this.values = values;
    this.codes = new String[values.length];
    for (int i = 0; i < values.length; i++) {
      codes[i] = values[i].code();
    }
  }

  /** The value of a code, or null. */
  E get(String code) {
    for (int i = 0; i < codes.length; i++) {
      if (codes[i].equals(code)) {
        return values[i];
      }
    }
    return null;
  }

  String refusal(String code) {
    return Quote.of(code) + " is not " + noun;
  }

  String remedy(String code) {
    List<String> known = new ArrayList<>(List.of(codes));
    List<String> near = Nearest.bySlips(code, known);
    String hint = near.isEmpty() ? "" : "; did you mean " + Quote.of(near.get(0)) + "?";
    return "write one of " + String.join(", ", known) + hint;
  }
}
