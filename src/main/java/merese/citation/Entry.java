package merese.citation;

/** One entry of a bibliography. */
public record Entry(Source source, String text) {
  /** See {@link Source#id()}. */
  public String id() {
    return source.id();
  }
}
