package merese.exchange;

/** What stands round and between records so that a file of them can be read. */
public record Wrapping(String before, String between, String after) {
  public static final Wrapping NONE = new Wrapping("", "\n", "");
}
