package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.ReceivedRecord;

/**
 * A field of a MARC record; {@code LDR} is the leader.
 *
 * <p>In a received record its name is the tag, with a space and both indicators ("#" for a blank)
 * after it unless it is a control field. Its value is the Library of Congress's line form, as in
 * {@code $aGlass :$ba study}: "$" starts a subfield, and in a text stand {dollar}, {lcub} and
 * {rcub} for the three marks. The value of a control field is its text as it stands.
 *
 * @param control the text of a control field; empty for a field with subfields
 * @param one the first indicator
 * @param two the second indicator
 */
record MarcField(
    String tag, Optional<String> control, char one, char two, List<Subfield> subfields) {
  static final String LEADER = "LDR";
  private static final int NAME_WITH_INDICATORS = 6;

  /** A subfield by its code. */
  record Subfield(char code, String text) {}

  MarcField {
    subfields = List.copyOf(subfields);
  }

  static MarcField control(String tag, String text) {
    return new MarcField(tag, Optional.of(text), ' ', ' ', List.of());
  }

  /**
   * @param indicators two characters, a space for a blank
   */
  static MarcField data(String tag, String indicators, List<Subfield> subfields) {
    return new MarcField(
        tag, Optional.empty(), indicators.charAt(0), indicators.charAt(1), subfields);
  }

  boolean is(String... tags) {
    for (String other : tags) {
      if (other.equals(tag)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Where it stands among the others: by tag, but those that stand in an order of their own (names
   * of added entries, standard numbers) as one.
   */
  String place() {
    return switch (tag) {
      case "110", "111" -> "100";
      case "022", "024" -> "020";
      case "710", "711" -> "700";
      default -> tag;
    };
  }

  boolean isLeader() {
    return tag.equals(LEADER) && control.isPresent();
  }

  boolean has(char code) {
    for (Subfield subfield : subfields) {
      if (subfield.code == code) {
        return true;
      }
    }
    return false;
  }

  /** The text of the first subfield with a code, tidied. */
  Optional<String> first(char code) {
    for (Subfield subfield : subfields) {
      if (subfield.code == code) {
        String text = MarcText.tidy(subfield.text);
        if (!text.isEmpty()) {
          return Optional.of(text);
        }
      }
    }
    return Optional.empty();
  }

  /** The texts of all subfields with a code, tidied. */
  List<String> all(char code) {
    List<String> texts = new ArrayList<>();
    for (Subfield subfield : subfields) {
      if (subfield.code == code) {
        String text = MarcText.tidy(subfield.text);
        if (!text.isEmpty()) {
          texts.add(text);
        }
      }
    }
    return texts;
  }

  /** The same field with more subfields at its end. */
  MarcField with(List<Subfield> more) {
    List<Subfield> all = new ArrayList<>(subfields);
    all.addAll(more);
    return new MarcField(tag, control, one, two, all);
  }

  ReceivedRecord.Field received() {
    if (control.isPresent()) {
      return new ReceivedRecord.Field(tag, control.get());
    }
    StringBuilder value = new StringBuilder();
    for (Subfield subfield : subfields) {
      value.append('$').append(subfield.code);
      escape(subfield.text, value);
    }
    String name = tag + " " + shown(one) + shown(two);
    return new ReceivedRecord.Field(name, value.toString());
  }

  private static char shown(char indicator) {
    return indicator == ' ' ? '#' : indicator;
  }

  private static void escape(String text, StringBuilder to) {
    if (text.indexOf('$') < 0 && text.indexOf('{') < 0 && text.indexOf('}') < 0) {
      to.append(text);
      return;
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '$' -> to.append("{dollar}");
        case '{' -> to.append("{lcub}");
        case '}' -> to.append("{rcub}");
        default -> to.append(c);
      }
    }
  }

  static MarcField of(ReceivedRecord.Field field) {
    String name = field.name();
    if (name.length() != NAME_WITH_INDICATORS || name.charAt(3) != ' ') {
      return control(name, field.value());
    }
    String indicators = name.substring(4).replace('#', ' ');
    return data(name.substring(0, 3), indicators, subfields(field.value()));
  }

  /** What stands before the first "$" belongs to no subfield and is left out. */
  private static List<Subfield> subfields(String line) {
    List<Subfield> subfields = new ArrayList<>();
    int at = line.indexOf('$');
    while (at >= 0 && at + 1 < line.length()) {
      int next = line.indexOf('$', at + 2);
      String text = line.substring(at + 2, next < 0 ? line.length() : next);
      if (text.indexOf('{') >= 0) {
        text = text.replace("{dollar}", "$").replace("{rcub}", "}").replace("{lcub}", "{");
      }
      subfields.add(new Subfield(line.charAt(at + 1), text));
      at = next;
    }
    return subfields;
  }
}
