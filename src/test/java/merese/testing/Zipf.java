package merese.testing;

import java.util.Arrays;
import java.util.Random;

/** Ranks drawn so that the first comes about twice as often as the second (Zipf's law). */
final class Zipf {
  private final double[] upTo;

  /** Ranks from 0 to one below a size. */
  Zipf(int size) {
    upTo = new double[size];
    double sum = 0;
    for (int rank = 0; rank < size; rank++) {
      sum += 1.0 / (rank + 1);
      upTo[rank] = sum;
    }
  }

  int next(Random random) {
    double drawn = random.nextDouble() * upTo[upTo.length - 1];
    int found = Arrays.binarySearch(upTo, drawn);
    return Math.min(found < 0 ? -found - 1 : found, upTo.length - 1);
  }
}
