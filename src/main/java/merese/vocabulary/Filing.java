package merese.vocabulary;

import com.ibm.icu.text.Collator;
import com.ibm.icu.text.RuleBasedCollator;
import com.ibm.icu.util.ULocale;
import java.util.Arrays;

/**
 * The two ways of filing headings, as keys that can be stored and compared without a collator.
 *
 * <p>The order is that of the root collation of CLDR, through ICU4J. A key compares as unsigned
 * bytes; it is comparable with keys of the same way of filing and the same version of ICU4J only.
 */
public enum Filing {
  /** A space files before any letter: "New York" before "Newark" (UCA, non-ignorable). */
  WORD_BY_WORD,
  /** Spaces and punctuation count only where all else is equal (UCA, shifted). */
  LETTER_BY_LETTER;

  /** The key of a heading. Loads ICU the first time. */
  public byte[] key(String heading) {
    return collator().getCollationKey(heading).toByteArray();
  }

  /** The order of two keys of one way of filing. Loads no ICU. */
  public static int compare(byte[] a, byte[] b) {
    return Arrays.compareUnsigned(a, b);
  }

  private RuleBasedCollator collator() {
    return this == WORD_BY_WORD ? Collators.WORDS : Collators.LETTERS;
  }

  private static final class Collators {
    private static final RuleBasedCollator WORDS = make(false);
    private static final RuleBasedCollator LETTERS = make(true);

    private static RuleBasedCollator make(boolean shifted) {
      RuleBasedCollator collator = (RuleBasedCollator) Collator.getInstance(ULocale.ROOT);
      collator.setAlternateHandlingShifted(shifted);
      // The fourth level is where a shifted space still counts.
      collator.setStrength(shifted ? Collator.QUATERNARY : Collator.TERTIARY);
      collator.setDecomposition(Collator.CANONICAL_DECOMPOSITION);
      return (RuleBasedCollator) collator.freeze();
    }
  }
}
