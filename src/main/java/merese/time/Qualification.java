package merese.time;

/** What is said of the trust in a date, or in a part of one. */
public enum Qualification {
  NONE(""),
  /** Possibly this, but not definitely. */
  UNCERTAIN("?"),
  /** Estimated to be this or near it. */
  APPROXIMATE("~"),
  UNCERTAIN_AND_APPROXIMATE("%");

  private final String mark;

  Qualification(String mark) {
    this.mark = mark;
  }

  /** What EDTF writes for it; "" for none. */
  public String mark() {
    return mark;
  }

  public boolean isUncertain() {
    return this == UNCERTAIN || this == UNCERTAIN_AND_APPROXIMATE;
  }

  public boolean isApproximate() {
    return this == APPROXIMATE || this == UNCERTAIN_AND_APPROXIMATE;
  }

  /** Both of two. */
  Qualification and(Qualification other) {
    return of(isUncertain() || other.isUncertain(), isApproximate() || other.isApproximate());
  }

  private static Qualification of(boolean uncertain, boolean approximate) {
    return uncertain
        ? approximate ? UNCERTAIN_AND_APPROXIMATE : UNCERTAIN
        : approximate ? APPROXIMATE : NONE;
  }

  static boolean isMark(char c) {
    return c == '?' || c == '~' || c == '%';
  }

  static Qualification ofMark(char c) {
    return c == '?' ? UNCERTAIN : c == '~' ? APPROXIMATE : UNCERTAIN_AND_APPROXIMATE;
  }
}
