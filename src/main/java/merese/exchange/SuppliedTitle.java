package merese.exchange;

import java.util.Optional;

/** A title for a source that comes without one: in square brackets, as cataloguers have it. */
public final class SuppliedTitle {
  /** What is said of a source that gets one. */
  public static final String REMARK = "It has no title; one is supplied, in square brackets";

  /** In code points, without the brackets. */
  private static final int LONGEST = 120;

  private SuppliedTitle() {}

  /**
   * @param words that describe the source, such as a note or what it is in
   * @param key what the file calls it, used where there are no such words; may be blank
   */
  public static String of(Optional<String> words, String key) {
    String whole = words.orElse(key.isBlank() ? "untitled" : key.strip());
    boolean cut = whole.codePointCount(0, whole.length()) > LONGEST;
    String used = cut ? whole.substring(0, whole.offsetByCodePoints(0, LONGEST)) : whole;
    return "[" + used.strip() + (cut ? "…]" : "]");
  }
}
