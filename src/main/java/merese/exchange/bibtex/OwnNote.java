package merese.exchange.bibtex;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import merese.model.Edition.Lineage.Form;

/**
 * What our own export says in the field {@code note} since BibTeX has no field for it ({@link
 * NoteField}): those sentences of it that can be told from what somebody wrote, for sure.
 */
final class OwnNote {
  private static final Pattern DATE = sentence("Date: (\\[[^\\[\\]]*\\]|[^.;\\[\\]]*\\d)");
  private static final Pattern COVER = sentence("Year on the cover: (\\d{1,4})");
  private static final Pattern FACSIMILE = sentence("Facsimile of the edition of (\\d{1,4})");
  private static final Pattern REPRINT = sentence("Reprint of the edition of (\\d{1,4})");
  private static final Pattern TRANSLATION = sentence("Translation of the edition of (\\d{1,4})");
  private static final Pattern REVISED = sentence("First published (\\d{1,4})");
  private static final Pattern WRONG_ISBN = sentence("ISBN as printed: ([\\dXx -]+)");
  private static final Pattern ARCHIVED = sentence("Archived at (https?://\\S+?)");

  private String rest;
  private final Optional<String> date;
  private final OptionalInt coverYear;
  private final Optional<Form> form;
  private final Optional<String> wrongIsbn;
  private final Optional<String> archived;
  private OptionalInt originalYear = OptionalInt.empty();

  private OwnNote(String note, boolean ours) {
    rest = note;
    date = ours ? taken(DATE) : Optional.empty();
    coverYear = ours ? year(taken(COVER)) : OptionalInt.empty();
    form = ours ? form() : Optional.empty();
    wrongIsbn = ours ? taken(WRONG_ISBN) : Optional.empty();
    archived = ours ? taken(ARCHIVED) : Optional.empty();
  }

  /**
   * @param ours whether the entry is from our own export; else all of the note is the rest
   */
  static OwnNote of(EntryFields fields, boolean ours) {
    return new OwnNote(fields.plain("note").orElse(""), ours);
  }

  private static Pattern sentence(String words) {
    return Pattern.compile("(?:^|(?<=\\. ))" + words + "(?:\\. |$)");
  }

  private Optional<String> taken(Pattern sentence) {
    Matcher matcher = sentence.matcher(rest);
    if (!matcher.find()) {
      return Optional.empty();
    }
    String value = matcher.group(1);
    String others = rest.substring(0, matcher.start()) + rest.substring(matcher.end());
    rest = others.endsWith(". ") ? others.substring(0, others.length() - 2) : others;
    return Optional.of(value);
  }

  private Optional<Form> form() {
    for (Form candidate : Form.values()) {
      Pattern sentence =
          switch (candidate) {
            case FACSIMILE -> FACSIMILE;
            case REPRINT -> REPRINT;
            case TRANSLATION -> TRANSLATION;
            case REVISED, TWIN -> REVISED;
          };
      originalYear = year(taken(sentence));
      if (originalYear.isPresent()) {
        return Optional.of(candidate);
      }
    }
    return Optional.empty();
  }

  private static OptionalInt year(Optional<String> digits) {
    return digits.isPresent()
        ? OptionalInt.of(Integer.parseInt(digits.get()))
        : OptionalInt.empty();
  }

  /** The date as printed or as the user brackets it. */
  Optional<String> date() {
    return date;
  }

  OptionalInt coverYear() {
    return coverYear;
  }

  Optional<Form> lineageForm() {
    return form;
  }

  OptionalInt originalYear() {
    return originalYear;
  }

  Optional<String> wrongIsbn() {
    return wrongIsbn;
  }

  Optional<String> archived() {
    return archived;
  }

  /** The sentences that are not read as anything else. */
  Optional<String> rest() {
    return Optional.of(rest).filter(r -> !r.isBlank());
  }
}
