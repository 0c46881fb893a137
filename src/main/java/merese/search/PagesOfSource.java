package merese.search;

import java.util.Arrays;
import merese.search.Hits.Owner;

/** Which pages of one source were found, unread. */
public final class PagesOfSource {
  private final Owner owner;
  private int[] documents = new int[2];
  private int count;

  PagesOfSource(Owner owner) {
    this.owner = owner;
  }

  void add(int document) {
    if (count == documents.length) {
      documents = Arrays.copyOf(documents, 2 * count);
    }
    documents[count++] = document;
  }

  public Owner owner() {
    return owner;
  }

  /** The pages' numbers in this commit. */
  public int[] documents() {
    return Arrays.copyOf(documents, count);
  }
}
