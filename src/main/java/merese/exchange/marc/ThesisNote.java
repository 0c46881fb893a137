package merese.exchange.marc;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import merese.model.Edition.Archive;

/**
 * A thesis note (502): "Thesis (Ph. D.)--University of Wessex Vale, 1996." or degree $b, university
 * $c, year $d. A book that "originally presented" a thesis is not one.
 */
final class ThesisNote {
  private static final Pattern FREE =
      Pattern.compile(
          "^(?:[^(]*?)\\(([^)]*)\\)\\s*(?:--|—|–|-|,)\\s*(.*?)(?:,\\s*\\[?(?:c?[12]\\d{3})\\]?)?\\.?$");
  private static final Pattern WITHOUT_DEGREE =
      Pattern.compile("^(?:.*?)(?:--|—|–|, )\\s*(.*?)(?:,\\s*\\[?(?:c?[12]\\d{3})\\]?)?\\.?$");

  private ThesisNote() {}

  static boolean isOfThesisItself(MarcField note) {
    String words = note.first('a').orElse("").toLowerCase(Locale.ROOT);
    boolean other =
        words.startsWith("originally") || words.startsWith("revis") || words.startsWith("based");
    return note.is("502") && !other && !note.subfields().isEmpty();
  }

  static Optional<Archive> archive(MarcField note) {
    if (!isOfThesisItself(note)) {
      return Optional.empty();
    }
    Optional<String> degree = note.first('b').map(b -> MarcText.bare(b, true));
    Optional<String> university = note.first('c').map(c -> MarcText.bare(c, true));
    if (university.isEmpty()) {
      String words = note.first('a').orElse("");
      Matcher free = FREE.matcher(words);
      Matcher bare = WITHOUT_DEGREE.matcher(words);
      if (free.matches()) {
        degree = Optional.of(degree(free.group(1))).filter(d -> !d.isEmpty());
        university = Optional.of(free.group(2));
      } else if (bare.matches()) {
        university = Optional.of(bare.group(1));
      }
    }
    Optional<String> mark = note.first('o').map(o -> MarcText.bare(o, true));
    Optional<String> said = degree;
    return university
        .filter(u -> !u.isBlank())
        .map(u -> new Archive(u.strip(), mark, Optional.empty(), Optional.empty(), said));
  }

  /** "Ph. D." as "PhD", as most write it. */
  private static String degree(String printed) {
    String bare = printed.strip();
    String closed = bare.replace(" ", "").replace(".", "");
    return closed.equals("PhD") || closed.equals("DPhil") ? closed : bare;
  }
}
