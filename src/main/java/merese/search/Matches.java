package merese.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;
import merese.search.Finder.Scored;

/** The documents that a question matches, in the order of their numbers, each with its score. */
final class Matches {
  static final Matches NONE = new Matches();

  private int[] ids = new int[64];
  private int[] scores = new int[64];
  private int count;

  void add(int id, int score) {
    if (count == ids.length) {
      ids = Arrays.copyOf(ids, 2 * count);
      scores = Arrays.copyOf(scores, 2 * count);
    }
    ids[count] = id;
    scores[count] = score;
    count++;
  }

  int count() {
    return count;
  }

  int id(int index) {
    return ids[index];
  }

  List<Scored> all() {
    List<Scored> all = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      all.add(new Scored(ids[i], scores[i]));
    }
    return all;
  }

  /** The best of them, and what is as good as the last of these, by number. */
  List<Scored> notWorseThanTheLast(int most) {
    List<Scored> best = new ArrayList<>();
    if (most > 0 && count > 0) {
      int last = last(most);
      for (int i = 0; i < count; i++) {
        if (scores[i] >= last) {
          best.add(new Scored(ids[i], scores[i]));
        }
      }
    }
    return best;
  }

  /** The score of the last of the best. */
  private int last(int most) {
    PriorityQueue<Integer> best = new PriorityQueue<>();
    int least = Integer.MIN_VALUE;
    for (int i = 0; i < count; i++) {
      if (best.size() < most) {
        best.add(scores[i]);
        least = best.peek();
      } else if (scores[i] > least) {
        best.poll();
        best.add(scores[i]);
        least = best.peek();
      }
    }
    return least;
  }
}
