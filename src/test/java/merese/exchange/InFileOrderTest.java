package merese.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import merese.model.ReceivedRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InFileOrderTest {
  private static final int LONG = 10_000;

  private final List<Integer> lines = new ArrayList<>();
  private final List<Thread> threads = new ArrayList<>();
  private int most = Integer.MAX_VALUE;

  private final Receiver receiver =
      new Receiver() {
        @Override
        public void source(Incoming source) {
          throw new AssertionError("there is none");
        }

        @Override
        public void kept(FilePlace place, ReceivedRecord record) {
          throw new AssertionError("there is none");
        }

        @Override
        public void refused(Refused record) {
          if (lines.size() == most) {
            throw new IllegalStateException("enough");
          }
          lines.add(record.place().line());
          threads.add(Thread.currentThread());
        }
      };

  private static Consumer<Receiver> refusal(int line) {
    Refused refused = new Refused(new FilePlace("x", line, 1, line), "", "", new byte[0]);
    return to -> to.refused(refused);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 5, 2_000})
  void handsOnEveryRecordOnceAndInItsOrder(int records) {
    InFileOrder order = new InFileOrder(receiver);
    for (int i = 0; i < records; i++) {
      int line = i;
      order.add(LONG, () -> refusal(line));
    }
    order.finish();
    order.finish();
    assertEquals(IntStream.range(0, records).boxed().toList(), lines);
    assertTrue(threads.stream().allMatch(t -> t == Thread.currentThread()));
  }

  @Test
  void isBrokenOffByTheReceiverLongBeforeTheEnd() {
    AtomicInteger done = new AtomicInteger();
    most = 3;
    IllegalStateException thrown =
        assertThrows(
            IllegalStateException.class,
            () -> {
              InFileOrder order = new InFileOrder(receiver);
              for (int i = 0; i < 100_000; i++) {
                int line = i;
                order.add(
                    LONG,
                    () -> {
                      done.incrementAndGet();
                      return refusal(line);
                    });
              }
            });
    assertEquals("enough", thrown.getMessage());
    assertEquals(List.of(0, 1, 2), lines);
    assertTrue(done.get() < 1_000, done + " records were worked out");
  }
}
