package merese.change.checks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Edition;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Slips;
import merese.model.Work;
import merese.store.Stored;
import merese.vocabulary.Folding;

/**
 * Terms of one source that are one slip of a letter apart and may mean the same. A plural, a hyphen
 * or a British spelling beside an American is no slip: a source may well print both.
 */
final class Spelling {
  /** A shorter word is another word with one letter changed: "cut" and "cup". */
  private static final int LONG_ENOUGH = 5;

  /** Two letters that changed places seldom make another word: "rnig" is none. */
  private static final int LONG_ENOUGH_SWAPPED = 4;

  /** A text that is longer is no term, and looking at it would take the square of its length. */
  private static final int LONGEST = 200;

  /** A term with what it means and the note that has it first. */
  private record Term(String printed, List<String> words, Set<String> concepts, String note) {}

  private final Stored<Work> file;
  private final Edition edition;
  private final Findings findings;

  Spelling(Stored<Work> file, Edition edition, Findings findings) {
    this.file = file;
    this.edition = edition;
    this.findings = findings;
  }

  void look() {
    Map<String, Term> terms = terms();
    Map<String, List<Term>> shortened = new HashMap<>();
    for (Map.Entry<String, Term> entry : terms.entrySet()) {
      Set<Term> near = new LinkedHashSet<>();
      for (String lessOne : lessOne(entry.getKey())) {
        List<Term> alike = shortened.computeIfAbsent(lessOne, s -> new ArrayList<>(2));
        near.addAll(alike);
        alike.add(entry.getValue());
      }
      near.stream()
          .filter(t -> isSlip(t, entry.getValue()))
          .findFirst()
          .ifPresent(before -> warn(before, entry.getValue()));
    }
  }

  /** By their folded words, so that only one of each spelling is compared. */
  private Map<String, Term> terms() {
    Map<String, Term> terms = new LinkedHashMap<>();
    for (Note note : edition.notes()) {
      for (Naming naming : note.namings()) {
        List<String> words = Folding.words(naming.printed());
        String key = String.join(" ", words);
        if (!words.isEmpty() && key.length() <= LONGEST) {
          Term term =
              terms.computeIfAbsent(
                  key, k -> new Term(naming.printed(), words, new LinkedHashSet<>(), note.id()));
          naming.concept().ifPresent(term.concepts()::add);
        }
      }
    }
    return terms;
  }

  /**
   * A text with each of its letters left out, and itself: two that are one slip apart share one.
   */
  private static Set<String> lessOne(String text) {
    Set<String> all = new LinkedHashSet<>();
    all.add(text);
    for (int i = 0; i < text.length(); i++) {
      all.add(text.substring(0, i) + text.substring(i + 1));
    }
    return all;
  }

  private static boolean isSlip(Term one, Term other) {
    boolean mayMeanTheSame =
        one.concepts().isEmpty()
            || other.concepts().isEmpty()
            || one.concepts().stream().anyMatch(other.concepts()::contains);
    if (!mayMeanTheSame || one.words().size() != other.words().size()) {
      return false;
    }
    int differing = 0;
    for (int i = 0; i < one.words().size(); i++) {
      String word = one.words().get(i);
      String with = other.words().get(i);
      if (!word.equals(with)) {
        differing++;
        boolean slip =
            Math.min(word.length(), with.length())
                    >= (hasLettersOf(word, with) ? LONG_ENOUGH_SWAPPED : LONG_ENOUGH)
                && hasNoDigit(word)
                && hasNoDigit(with)
                && Slips.between(word, with) == 1;
        differing += slip ? 0 : 2;
      }
    }
    return differing == 1;
  }

  private static boolean hasLettersOf(String word, String other) {
    return Arrays.equals(word.chars().sorted().toArray(), other.chars().sorted().toArray());
  }

  private static boolean hasNoDigit(String word) {
    return word.chars().noneMatch(Character::isDigit);
  }

  private void warn(Term before, Term term) {
    findings.warn(
        file,
        Position.inNote(file.content(), edition.key(), term.note(), term.printed()),
        edition.key() + ", " + term.note(),
        "\""
            + term.printed()
            + "\" is one letter from \""
            + before.printed()
            + "\" in "
            + before.note(),
        "compare the source; where it prints both, leave both");
  }
}
