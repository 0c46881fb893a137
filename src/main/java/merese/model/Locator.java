package merese.model;

/** Stub. */
public final class Locator implements Comparable<Locator> {
  private final String printed;

  private Locator(String printed) {
    this.printed = printed;
  }

  public static Locator parse(String text) {
    return new Locator(text);
  }

  public boolean usuallyPicture() {
    return printed.startsWith("pl") || printed.startsWith("fig");
  }

  @Override
  public int compareTo(Locator other) {
    return printed.compareTo(other.printed);
  }

  @Override
  public boolean equals(Object o) {
    return o instanceof Locator other && other.printed.equals(printed);
  }

  @Override
  public int hashCode() {
    return printed.hashCode();
  }

  @Override
  public String toString() {
    return printed;
  }
}
