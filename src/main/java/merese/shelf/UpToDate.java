package merese.shelf;

import java.util.List;
import java.util.Optional;

/**
 * What it took to bring the index up to date.
 *
 * @param built why the index was built from nothing; empty where it was not
 * @param opened the files of the library that were read, by their path below it
 * @param removed files that are no longer there
 * @param pagesAgain how many pages of other files were indexed again, because what is named on them
 *     changed
 * @param compared how many files were looked at, unread
 */
public record UpToDate(
    Optional<String> built,
    List<String> opened,
    List<String> removed,
    int pagesAgain,
    int compared) {
  public UpToDate {
    opened = List.copyOf(opened);
    removed = List.copyOf(removed);
  }
}
