package merese.time;

import java.util.List;
import java.util.Optional;

/**
 * Reads dates in words: "c. 1790–1810", "late eighteenth century", "before 1780", "Regency". What
 * is not read whole is not read at all; EDTF is read too.
 */
public final class DateWords {
  private final DateProfile profile;

  public DateWords(DateProfile profile) {
    this.profile = profile;
  }

  public DateProfile profile() {
    return profile;
  }

  /** What the words say. */
  public WordedDate read(String words) {
    if (words.length() > Edtf.LONGEST) {
      return new WordedDate.Unread();
    }
    List<String> tokens = DateTokens.of(words);
    WordedDate read = new WordReader(tokens, profile).read();
    if (!(read instanceof WordedDate.Unread)) {
      return read;
    }
    try {
      return edtf(Edtf.parse(words.strip()));
    } catch (EdtfException e) {
      return read;
    }
  }

  /** What a date in EDTF says by this profile. */
  public WordedDate.Read edtf(Edtf date) {
    Span core = date.core();
    Span outer = date.outer(profile.circa());
    return new WordedDate.Read(
        core,
        outer,
        date.printed(),
        Optional.empty(),
        core.equals(outer) ? WordedDate.Width.SAME : WordedDate.Width.CIRCA,
        date.level() == 0 && core.equals(outer));
  }
}
