package merese.exchange;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
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

  /** As many as there are processors: the reading thread waits for them most of the time. */
  private static final ExecutorService WORKERS =
      Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors(), InFileOrder::worker);

  private final Receiver to;
  private final Deque<Future<List<Consumer<Receiver>>>> waiting = new ArrayDeque<>();
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
    waiting.add(WORKERS.submit(() -> work.stream().map(Supplier::get).toList()));
    batch = new ArrayList<>();
    bytes = 0;
  }

  private void handOn() {
    done(waiting.remove()).forEach(told -> told.accept(to));
  }

  private static <T> T done(Future<T> work) {
    try {
      return work.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the reading was interrupted", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Error error) {
        throw error;
      }
      throw e.getCause() instanceof RuntimeException fault
          ? fault
          : new IllegalStateException(e.getCause());
    }
  }

  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "what records mean");
    thread.setDaemon(true); // ends with the process
    return thread;
  }
}
