package merese.desk.web;

import java.io.Closeable;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;

/**
 * Shelves that stay open between questions, one for each processor, since opening one takes longer
 * than most answers. One is opened anew where the library has changed: what the desk writes is
 * noticed at once, what somebody edits by hand or at the terminal by a question that comes a second
 * later.
 */
final class Shelves implements Closeable {
  private static final long BETWEEN_LOOKS = TimeUnit.SECONDS.toNanos(1);

  private final LibraryFolder folder;
  private final Semaphore free;
  private final Deque<Kept> idle = new ArrayDeque<>();

  /** Only one looks through the library's folders, or brings the index up to date. */
  private final ReentrantLock looking = new ReentrantLock();

  /** Counts what was edited by hand. */
  private final AtomicInteger edits = new AtomicInteger();

  private final AtomicLong looked = new AtomicLong(System.nanoTime() - BETWEEN_LOOKS);

  private record Kept(Shelf shelf, String moment, int edits) {}

  Shelves(LibraryFolder folder, int number) {
    this.folder = folder;
    this.free = new Semaphore(number);
  }

  /** Says that the library has just been changed, so that each shelf is opened anew. */
  void changed() {
    edits.incrementAndGet();
  }

  /** Asks a question of the library as it is now. */
  <T> T ask(Function<Shelf, T> question) {
    return with(question, true);
  }

  /** Asks a question that must be quick, of the library as it was when it was last looked at. */
  <T> T glance(Function<Shelf, T> question) {
    return with(question, false);
  }

  private <T> T with(Function<Shelf, T> question, boolean fresh) {
    free.acquireUninterruptibly();
    Kept kept = null;
    try {
      kept = take();
      if (kept == null || fresh && !isCurrent(kept)) {
        Kept old = kept;
        kept = null;
        if (old != null) {
          old.shelf().close();
        }
        kept = open();
      }
      return kept.shelf().ask(question);
    } finally {
      giveBack(kept);
      free.release();
    }
  }

  private Kept take() {
    synchronized (idle) {
      return idle.pollFirst();
    }
  }

  private void giveBack(Kept kept) {
    if (kept != null) {
      synchronized (idle) {
        idle.addFirst(kept);
      }
    }
  }

  private boolean isCurrent(Kept kept) {
    if (!folder.isStill(kept.moment()) || kept.edits() != edits.get()) {
      return false;
    }
    long last = looked.get();
    if (System.nanoTime() - last < BETWEEN_LOOKS || !looking.tryLock()) {
      return true;
    }
    try {
      boolean current = kept.shelf().isCurrent();
      if (!current) {
        edits.incrementAndGet();
      }
      looked.set(System.nanoTime());
      return current;
    } finally {
      looking.unlock();
    }
  }

  private Kept open() {
    looking.lock();
    try {
      int edited = edits.get();
      String moment = folder.moment();
      return new Kept(Shelf.open(folder, Watcher.NONE), moment, edited);
    } finally {
      looking.unlock();
    }
  }

  @Override
  public void close() {
    synchronized (idle) {
      idle.forEach(kept -> kept.shelf().close());
      idle.clear();
    }
  }
}
