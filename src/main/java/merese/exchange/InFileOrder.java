package merese.exchange;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Hands on what a file holds, in its order, while other processors work out what the next records
 * mean. The receiver is called by the reading thread alone, and may break the reading off by an
 * exception; few batches wait at a time, so that memory does not grow with the file.
 */
public final class InFileOrder {
  private static final int BATCH_BYTES = 1 << 16;
  private static final int MOST_WAITING = 16;

  private final Receiver to;
  private final Deque<ForkJoinTask<List<Consumer<Receiver>>>> waiting = new ArrayDeque<>();
  private List<Supplier<Consumer<Receiver>>> batch = new ArrayList<>();
  private long bytes;

  public InFileOrder(Receiver to) {
    this.to = to;
  }

  /**
   * Takes the next record.
   *
   * @param length of the record, in bytes or characters
   * @param work touches nothing that the reading changes; gives what to tell the receiver
   */
  public void add(int length, Supplier<Consumer<Receiver>> work) {
    batch.add(work);
    bytes += length;
    if (bytes >= BATCH_BYTES) {
      submit();
      if (waiting.size() > MOST_WAITING) {
        handOn();
      }
    }
  }

  /** Hands on all that is still waiting. */
  public void finish() {
    if (waiting.isEmpty()) { // a small file is not worth another thread
      batch.forEach(work -> work.get().accept(to));
      batch.clear();
      return;
    }
    submit();
    while (!waiting.isEmpty()) {
      handOn();
    }
  }

  private void submit() {
    List<Supplier<Consumer<Receiver>>> work = batch;
    waiting.add(ForkJoinPool.commonPool().submit(() -> work.stream().map(Supplier::get).toList()));
    batch = new ArrayList<>();
    bytes = 0;
  }

  private void handOn() {
    waiting.remove().join().forEach(told -> told.accept(to));
  }
}
