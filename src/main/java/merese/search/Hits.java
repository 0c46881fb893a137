package merese.search;

/** What a question to the index gives back. */
public final class Hits {
  private Hits() {}

  /**
   * What something in the index is of.
   *
   * @param file the library's file that it is from
   * @param edition empty for what belongs to no edition
   * @param standing on a note and a source: where the source stands among all, by its bytes,
   *     unsigned
   */
  public record Owner(String file, String edition, byte[] standing) {}

  /**
   * A note.
   *
   * @param order its position among the notes of its edition, from 0
   */
  public record NoteHit(Owner owner, int order, byte[] payload) {
    /** The library's file that it is from. */
    public String file() {
      return owner.file();
    }

    public String edition() {
      return owner.edition();
    }
  }

  /** Takes notes one by one. */
  public interface NoteTaker {
    void take(NoteHit hit);
  }

  /** Tells notes from others by what they give back. */
  public interface NoteTest {
    boolean test(byte[] payload);
  }

  /** Takes editions one by one. */
  public interface SourceTaker {
    void take(SourceHit hit);
  }

  /** An edition. */
  public record SourceHit(String file, String edition, byte[] payload) {}

  /** A line of a check log. */
  public record CheckHit(String edition, byte[] payload) {}

  /** Something that was stored whole. */
  public record RecordHit(String file, byte[] payload) {}
}
