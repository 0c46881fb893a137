package merese.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * The right to write to a library, for one thread of one process at a time. A thread that has it
 * can take it again. It ends with the process, so a crash leaves no library locked; the file {@code
 * .lock} stays, and says who has or last had the lock.
 */
public final class LibraryLock implements AutoCloseable {
  static final String FILE = ".lock";

  /** Far beyond the text, since on some systems what is locked cannot be read. */
  private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

  private static final Map<Path, Holder> HOLDERS = new ConcurrentHashMap<>();

  /** A process must not open the file twice: closing one would give up the lock of the other. */
  private static final class Holder {
    final ReentrantLock thread = new ReentrantLock();
    FileChannel channel;
    volatile String who = "";
    boolean changing;
  }

  private final Holder holder;
  private final Thread owner = Thread.currentThread();
  private boolean closed;

  private LibraryLock(Holder holder) {
    this.holder = holder;
  }

  /**
   * Waits until nobody else has the lock.
   *
   * @throws LibraryException where somebody still has it after {@code patience}, saying who
   */
  static LibraryLock take(Path root, Duration patience, Clock clock) {
    Path file = root.resolve(FILE);
    Holder holder = HOLDERS.computeIfAbsent(realPath(root), path -> new Holder());
    long end = System.nanoTime() + patience.toNanos();
    try {
      if (!holder.thread.tryLock(patience.toNanos(), TimeUnit.NANOSECONDS)) {
        throw busy(file, holder.who);
      }
      if (holder.thread.getHoldCount() == 1) {
        try {
          holder.channel = open(file, end);
          holder.who = sign(holder.channel, clock);
        } catch (IOException e) {
          release(holder);
          throw Disk.unwritable(file, e);
        } catch (LibraryException | InterruptedException e) {
          release(holder);
          throw e;
        }
      }
      return new LibraryLock(holder);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new LibraryException(file, "waiting for the library was broken off", "try it again");
    }
  }

  private static Path realPath(Path root) {
    try {
      return root.toRealPath();
    } catch (IOException e) {
      throw Disk.unreadable(root, e);
    }
  }

  private static FileChannel open(Path file, long end) throws IOException, InterruptedException {
    FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE,
            LinkOption.NOFOLLOW_LINKS);
    boolean locked = false;
    try {
      while (true) {
        FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
        if (lock != null) {
          locked = true;
          return channel;
        }
        if (System.nanoTime() - end >= 0) {
          throw busy(file, read(channel));
        }
        Thread.sleep(20);
      }
    } finally {
      if (!locked) {
        channel.close();
      }
    }
  }

  private static String read(FileChannel channel) throws IOException {
    ByteBuffer buffer = ByteBuffer.allocate(200);
    channel.read(buffer, 0);
    return new String(buffer.array(), 0, buffer.position(), StandardCharsets.UTF_8).strip();
  }

  private static String sign(FileChannel channel, Clock clock) throws IOException {
    String who =
        "process "
            + ProcessHandle.current().pid()
            + ", since "
            + Scalars.text(clock.instant().truncatedTo(ChronoUnit.SECONDS));
    channel.truncate(0);
    channel.write(ByteBuffer.wrap((who + '\n').getBytes(StandardCharsets.UTF_8)), 0);
    return who;
  }

  private static LibraryException busy(Path file, String who) {
    return new LibraryException(
        file,
        "somebody else is writing to this library" + (who.isEmpty() ? "" : ": " + Quote.cut(who)),
        "wait until that is done, or end it, then try again; nothing was written");
  }

  private static void release(Holder holder) {
    try {
      if (holder.channel != null && holder.thread.getHoldCount() == 1) {
        holder.channel.close();
        holder.channel = null;
      }
    } catch (IOException e) {
      throw new java.io.UncheckedIOException("giving up the lock of a library", e);
    } finally {
      holder.thread.unlock();
    }
  }

  /** Whether whoever has the lock is at a change of several files. */
  boolean isChanging() {
    return holder.changing;
  }

  void setChanging(boolean changing) {
    holder.changing = changing;
  }

  /** Gives the right back, once; only the thread that took it can. */
  @Override
  public void close() {
    if (Thread.currentThread() != owner) {
      throw new IllegalStateException("a lock is given back by the thread that took it");
    }
    if (!closed) {
      closed = true;
      release(holder);
    }
  }
}
