package merese.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import merese.search.Finder.Scored;
import org.junit.jupiter.api.Test;

class MatchesTest {
  /** By sorting them all, which is what finding the best stands for. */
  private static List<Scored> sorted(List<Scored> all, int most) {
    List<Scored> best = new ArrayList<>(all);
    best.sort(Comparator.comparingInt(Scored::score).reversed());
    int last = best.isEmpty() || most <= 0 ? 0 : best.get(Math.min(most, best.size()) - 1).score();
    best.removeIf(each -> most <= 0 || each.score() < last);
    best.sort(Comparator.comparingInt(Scored::id));
    return best;
  }

  @Test
  void theBestAreThoseThatSortingWouldPutFirstWithAllThatAreAsGood() {
    Random random = new Random(3);
    for (int size : new int[] {0, 1, 2, 63, 64, 65, 1_000}) {
      Matches matches = new Matches();
      List<Scored> all = new ArrayList<>();
      for (int i = 0; i < size; i++) {
        Scored each = new Scored(i * 3, random.nextInt(40) - 5);
        all.add(each);
        matches.add(each.id(), each.score());
      }
      assertEquals(all, matches.all());
      assertEquals(size, matches.count());
      for (int most : new int[] {-1, 0, 1, 2, 20, 64, 2_000}) {
        assertEquals(sorted(all, most), matches.notWorseThanTheLast(most), size + " " + most);
      }
    }
  }
}
