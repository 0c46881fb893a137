package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.marc.MarcField.Subfield;

/** Texts with a name before them in one repeated subfield: "House: Harkaway &amp; Lisle". */
final class NamedText {
  private NamedText() {}

  static Optional<String> get(MarcField field, char code, String name) {
    return all(field, code, name).stream().findFirst();
  }

  static List<String> all(MarcField field, char code, String name) {
    List<String> all = new ArrayList<>();
    for (String text : field.all(code)) {
      if (text.startsWith(name + ": ")) {
        all.add(text.substring(name.length() + 2));
      }
    }
    return all;
  }

  static void put(List<Subfield> to, char code, String name, Optional<String> text) {
    text.ifPresent(t -> to.add(new Subfield(code, name + ": " + t)));
  }
}
