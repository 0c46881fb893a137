package merese.exchange.marc;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import merese.model.Edition.Lineage;
import merese.model.Edition.Lineage.Form;

/**
 * What an edition repeats: the note of an original version (534), a general note that starts as one
 * of a reprint does (500), or a date of field 008 that is the original's.
 */
final class DescentMeaning {
  /** Before what was added to the original (534 $n). */
  static final String NEW = "New";

  private static final Pattern YEAR = Pattern.compile("[12]\\d{3}");

  private DescentMeaning() {}

  static Optional<Lineage> of(MarcRecord record) {
    for (MarcField note : record.all("534")) {
      Optional<Lineage> original = original(note);
      if (original.isPresent()) {
        return original;
      }
    }
    for (MarcField note : record.all("500")) {
      if (isOfReprint(note)) {
        String words = note.first('a').orElse("");
        return Optional.of(lineage(form(words), MarcDate.year(words)));
      }
    }
    String fixed = record.control("008");
    String second = fixed.length() > 14 && fixed.charAt(6) == 'r' ? fixed.substring(11, 15) : "";
    return YEAR.matcher(second).matches()
        ? Optional.of(lineage(Form.REPRINT, OptionalInt.of(Integer.parseInt(second))))
        : Optional.empty();
  }

  private static Optional<Lineage> original(MarcField note) {
    OptionalInt year = OptionalInt.empty();
    for (String words : note.all('c')) {
      year = year.isPresent() ? year : MarcDate.year(words);
    }
    String lead = note.first('p').or(() -> note.first('a')).orElse("");
    Optional<String> added = NamedText.get(note, 'n', NEW);
    return year.isEmpty() && lead.isEmpty()
        ? Optional.empty()
        : Optional.of(new Lineage(form(lead), Optional.empty(), year, added, List.of()));
  }

  /** "Reprint. Originally published: London : Marchbank, 1926." */
  static boolean isOfReprint(MarcField note) {
    String words = note.first('a').orElse("").toLowerCase(Locale.ROOT);
    boolean lead =
        List.of("reprint", "facsim", "originally published", "photoreprint", "nachdr", "reprod")
            .stream()
            .anyMatch(words::startsWith);
    return note.is("500") && lead && MarcDate.year(words).isPresent();
  }

  private static Form form(String words) {
    String small = words.toLowerCase(Locale.ROOT);
    if (small.contains("facsim")) {
      return Form.FACSIMILE;
    }
    if (small.startsWith(lead(Form.TRANSLATION).toLowerCase(Locale.ROOT))) {
      return Form.TRANSLATION;
    }
    if (small.startsWith(lead(Form.REVISED).toLowerCase(Locale.ROOT))) {
      return Form.REVISED;
    }
    return small.startsWith(lead(Form.TWIN).toLowerCase(Locale.ROOT)) ? Form.TWIN : Form.REPRINT;
  }

  /** The words before an original version (534 $p). */
  static String lead(Form form) {
    return switch (form) {
      case FACSIMILE -> "Facsimile of";
      case REPRINT -> "Reprint of";
      case TRANSLATION -> "Translation of";
      case REVISED -> "Revision of";
      case TWIN -> "Also published as";
    };
  }

  private static Lineage lineage(Form form, OptionalInt year) {
    return new Lineage(form, Optional.empty(), year, Optional.empty(), List.of());
  }
}
