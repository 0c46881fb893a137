package merese.search;

/** What a question to the index gives back. */
public final class Hits {
  private Hits() {}

  /**
   * A note.
   *
   * @param file the library's file that it is from
   * @param order its position among the notes of its edition, from 0
   */
  public record NoteHit(String file, String edition, int order, byte[] payload) {}

  /** An edition. */
  public record SourceHit(String file, String edition, byte[] payload) {}

  /** A line of a check log. */
  public record CheckHit(String edition, byte[] payload) {}
}
