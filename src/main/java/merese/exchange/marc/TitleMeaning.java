package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.exchange.marc.MarcField.Subfield;

/**
 * The title (245) and the other titles (246) of a record.
 *
 * <p>A title that stands after " = " is the same in another language (ISBD 1.3), so it is another
 * title and no subtitle; what stands after " ; " is a second work under one title page, and part of
 * the title. Numbers and names of parts ($n $p) stay with what they follow: "Glass. Part 2,
 * Cruets".
 */
final class TitleMeaning {
  private final boolean punctuated;
  private final StringBuilder title = new StringBuilder();
  private final StringBuilder subtitle = new StringBuilder();
  private final List<String> others = new ArrayList<>();

  private TitleMeaning(boolean punctuated) {
    this.punctuated = punctuated;
  }

  /**
   * @param title without its subtitle; "" where the record has none
   */
  record Titles(String title, Optional<String> subtitle, List<String> others) {}

  static Titles of(MarcRecord record) {
    TitleMeaning meaning = new TitleMeaning(record.isPunctuated());
    record.first("245").ifPresent(meaning::title);
    for (MarcField field : record.all("246")) {
      if (isTitleOfWhole(field)) {
        meaning.other(field);
      }
    }
    String title = meaning.title.toString();
    return new Titles(
        title,
        Optional.of(meaning.subtitle.toString()).filter(s -> !s.isEmpty() && !title.isEmpty()),
        List.copyOf(meaning.others));
  }

  /** Not the title of a portion (second indicator 0), nor one that is not to be shown (first 2). */
  static boolean isTitleOfWhole(MarcField field) {
    return field.two() != '0' && field.one() != '2' && field.first('a').isPresent();
  }

  private void title(MarcField field) {
    String before = "";
    StringBuilder current = title;
    char last = ' ';
    for (Subfield subfield : field.subfields()) {
      String text = MarcText.tidy(subfield.text());
      String bare = MarcText.withPairedBrackets(MarcText.bare(text, punctuated));
      bare = bare.isEmpty() ? text : bare; // a title that is a mark
      switch (subfield.code()) {
        case 'a' -> append(title, title.isEmpty() ? "" : "; ", bare);
        case 'b' -> {
          if (before.endsWith("=")) {
            parallel(bare);
          } else if (before.endsWith(" ;")) {
            append(title, "; ", bare);
          } else {
            current = subtitle;
            String[] parts = bare.split(" = ");
            append(subtitle, subtitle.isEmpty() ? "" : ": ", parts[0].replace(" : ", ": "));
            for (int i = 1; i < parts.length; i++) {
              add(parts[i].replace(" : ", ": "));
            }
          }
        }
        case 'n' -> append(current, ". ", bare);
        case 'p' -> append(current, last == 'n' ? ", " : ". ", bare);
        default -> {}
      }
      before = text;
      last = subfield.code();
    }
  }

  /** Titles in other languages, each with its subtitle: "Verre : étude = Glas". */
  private void parallel(String text) {
    for (String one : text.split(" = ")) {
      add(one.replace(" : ", ": "));
    }
  }

  private static void append(StringBuilder to, String joint, String text) {
    if (!text.isEmpty()) {
      if (!to.isEmpty()) {
        boolean stopped = joint.startsWith(".") && to.charAt(to.length() - 1) == '.';
        to.append(stopped ? joint.substring(1) : joint);
      }
      to.append(text);
    }
  }

  private void other(MarcField field) {
    StringBuilder whole = new StringBuilder();
    char last = ' ';
    for (Subfield subfield : field.subfields()) {
      String bare = MarcText.bare(MarcText.tidy(subfield.text()), punctuated);
      switch (subfield.code()) {
        case 'a' -> append(whole, ": ", bare);
        case 'b' -> append(whole, ": ", bare);
        case 'n' -> append(whole, ". ", bare);
        case 'p' -> append(whole, last == 'n' ? ", " : ". ", bare);
        default -> {}
      }
      last = subfield.code();
    }
    add(whole.toString());
  }

  private void add(String other) {
    String folded = MarcText.folded(other);
    boolean same =
        folded.equals(MarcText.folded(title.toString()))
            || folded.equals(MarcText.folded(title.toString() + subtitle));
    if (!folded.isEmpty() && !same && !others.contains(other)) {
      others.add(other);
    }
  }
}
