package merese.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import merese.search.PageFiles.PageFile;

/**
 * The best of many pages, of which most are equally good: then those of the first file come first.
 * No more are kept than may still be among them, with all of the last one's file.
 */
final class BestPages {
  private static final int ROOM = 64;

  private final int most;
  private List<Candidate> candidates = new ArrayList<>();
  private int room = ROOM;

  /** The last of the best so far; null where there are not enough yet. */
  private Candidate last;

  /**
   * @param most how many
   */
  BestPages(int most) {
    this.most = most;
  }

  /**
   * A page.
   *
   * @param document its number among those of all segments
   */
  record Candidate(int score, PageFile file, int document) {
    static final Comparator<Candidate> BEST_FIRST =
        Comparator.comparingInt((Candidate c) -> -c.score()).thenComparing(Candidate::file);
  }

  /** Whether pages so good may be among the best, if they are in a file that comes early. */
  boolean mayTake(int score) {
    return most > 0 && (last == null || score >= last.score);
  }

  /** Whether a page so good may be among the best. */
  boolean mayTake(int score, PageFile file) {
    return mayTake(score) && (last == null || score > last.score || file.compareTo(last.file) <= 0);
  }

  void take(int score, PageFile file, int document) {
    candidates.add(new Candidate(score, file, document));
    if (candidates.size() >= room) {
      leaveOut();
      room = Math.max(ROOM, 2 * candidates.size());
    }
  }

  private void leaveOut() {
    candidates.sort(Candidate.BEST_FIRST);
    if (candidates.size() >= most) {
      last = candidates.get(most - 1);
      candidates.removeIf(c -> Candidate.BEST_FIRST.compare(c, last) > 0);
    }
  }

  /** The best with all that is as good as the last of them and in its file, the best first. */
  List<Candidate> all() {
    if (most <= 0) {
      return List.of();
    }
    leaveOut();
    return candidates;
  }
}
