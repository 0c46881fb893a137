package merese.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import merese.search.Hits.Owner;

/** Which pages of one source were found, unread. */
public final class PagesOfSource {
  private final Owner owner;
  private final List<String> files = new ArrayList<>(1);
  private int[] documents = new int[2];
  private int count;

  PagesOfSource(Owner owner) {
    this.owner = owner;
  }

  /** Documents are added by number; those of a file follow each other, for the most part. */
  void add(int document, String file) {
    if (files.isEmpty() || !files.get(files.size() - 1).equals(file)) {
      files.add(file);
    }
    if (count == documents.length) {
      documents = Arrays.copyOf(documents, 2 * count);
    }
    documents[count++] = document;
  }

  public Owner owner() {
    return owner;
  }

  public int count() {
    return count;
  }

  /** The files that they are in; one may be there twice. */
  public List<String> files() {
    return List.copyOf(files);
  }

  /** The pages' numbers in this commit, in their order. */
  public int[] documents() {
    return Arrays.copyOf(documents, count);
  }
}
