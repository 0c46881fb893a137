package merese.search;

import java.util.Arrays;
import merese.search.Hits.Owner;

/** Which notes of one source were found, unread. */
public final class NotesOfSource {
  private final Owner owner;
  private boolean pictured;
  private int[] documents = new int[2];
  private int count;

  NotesOfSource(Owner owner) {
    this.owner = owner;
  }

  void add(int document, boolean isPictured) {
    if (count == documents.length) {
      documents = Arrays.copyOf(documents, 2 * count);
    }
    documents[count++] = document;
    pictured |= isPictured;
  }

  public Owner owner() {
    return owner;
  }

  /** Whether one of them meets what was asked of pictures. */
  public boolean isPictured() {
    return pictured;
  }

  /** The notes' numbers in this commit. */
  public int[] documents() {
    return Arrays.copyOf(documents, count);
  }
}
