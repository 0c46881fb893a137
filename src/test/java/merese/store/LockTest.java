package merese.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static merese.store.Fixture.refusal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import merese.model.Mine;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LockTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T10:12:03.5Z"), ZoneOffset.UTC);

  @TempDir Path dir;
  private Path root;

  @BeforeEach
  void copyTheFixture() {
    root = Fixture.in(dir).path();
  }

  private LibraryFolder open(Duration patience) {
    return LibraryFolder.open(root, patience, CLOCK);
  }

  private static Mine withWord(Mine mine, String word) {
    List<Mine.Untraced> words = new ArrayList<>(mine.untraced());
    words.add(new Mine.Untraced(word, Optional.empty(), Optional.empty()));
    return new Mine(mine.preferences(), mine.coinages(), mine.experience(), words);
  }

  @Test
  void ofTwoWritersWhoReadTheSameOneIsRefusedAndNothingIsLost() {
    LibraryFolder one = open(Duration.ofSeconds(30));
    LibraryFolder two = open(Duration.ofSeconds(30));
    Stored<Mine> readByOne = one.readMine();
    Stored<Mine> readByTwo = two.readMine();
    one.save(readByOne, withWord(readByOne.value(), "first"));
    refusal(() -> two.save(readByTwo, withWord(readByTwo.value(), "second")));
    Stored<Mine> again = two.readMine();
    two.save(again, withWord(again.value(), "second"));
    assertEquals(
        List.of("nun's collar", "first", "second"),
        one.readMine().value().untraced().stream().map(Mine.Untraced::word).toList());
  }

  @Test
  void everyWordOfManyWritersArrivesOnce() throws Exception {
    int writers = 4;
    int words = 12;
    ExecutorService threads = Executors.newFixedThreadPool(writers);
    CountDownLatch start = new CountDownLatch(writers);
    List<Future<Void>> results = new ArrayList<>();
    for (int w = 0; w < writers; w++) {
      String name = "w" + w + "-";
      Callable<Void> writer =
          () -> {
            LibraryFolder library = open(Duration.ofSeconds(60));
            start.countDown();
            start.await();
            for (int i = 0; i < words; i++) {
              try (LibraryLock lock = library.lock()) {
                Stored<Mine> mine = library.readMine();
                library.save(mine, withWord(mine.value(), name + i));
              }
            }
            return null;
          };
      results.add(threads.submit(writer));
    }
    for (Future<Void> result : results) {
      result.get();
    }
    threads.shutdown();
    List<String> found =
        open(Duration.ZERO).readMine().value().untraced().stream()
            .map(Mine.Untraced::word)
            .toList();
    assertEquals(1 + writers * words, found.size());
    assertEquals(found.size(), found.stream().distinct().count());
  }

  @Test
  void whoWaitsTooLongIsToldWhoHasIt() throws Exception {
    try (LibraryLock lock = open(Duration.ZERO).lock()) {
      Thread other =
          new Thread(
              () ->
                  assertEquals(
                      root.resolve(".lock")
                          + ": somebody else is writing to this library: process "
                          + ProcessHandle.current().pid()
                          + ", since 2026-03-01T10:12:03Z; wait until that is done, or end it, then"
                          + " try again; nothing was written",
                      refusal(() -> open(Duration.ofMillis(20)).lock())));
      List<Throwable> failures = new ArrayList<>();
      other.setUncaughtExceptionHandler((thread, failure) -> failures.add(failure));
      other.start();
      other.join();
      assertEquals(List.of(), failures);
    }
    open(Duration.ZERO).lock().close();
  }

  @Test
  void anotherProcessIsNamedToo() throws Exception {
    Process holder = startHolder();
    try {
      String signal = new String(holder.getInputStream().readNBytes(6), UTF_8);
      assertEquals("locked", signal);
      Stored<Mine> mine = open(Duration.ZERO).readMine();
      String found =
          refusal(() -> open(Duration.ofMillis(50)).save(mine, withWord(mine.value(), "a word")));
      assertTrue(found.contains(": process " + holder.pid() + ", since 2026-03-01T10:12"), found);
      assertEquals(Fixture.text("mine.json"), Fixture.read(mine.file()));
    } finally {
      holder.destroyForcibly().waitFor();
    }
    // It died with the lock in its hand, which leaves nothing locked.
    Stored<Mine> mine = open(Duration.ZERO).readMine();
    open(Duration.ofSeconds(30)).save(mine, withWord(mine.value(), "a word"));
  }

  private Process startHolder() throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            Holder.class.getName(),
            root.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  /** Takes the lock of a library, says so and keeps it. */
  static final class Holder {
    @SuppressWarnings("try")
    public static void main(String[] args) throws InterruptedException {
      LibraryFolder library = LibraryFolder.open(Path.of(args[0]), Duration.ZERO, CLOCK);
      try (LibraryLock lock = library.lock()) {
        System.out.print("locked");
        System.out.flush();
        Thread.sleep(60_000);
      }
    }
  }

  @Test
  void aThreadThatHasItCanTakeItAgain() {
    LibraryFolder library = open(Duration.ZERO);
    LibraryLock outer = library.lock();
    library.lock().close();
    Stored<Mine> mine = library.readMine();
    library.save(mine, withWord(mine.value(), "a word"));
    assertStillLocked();
    outer.close();
    outer.close();
    library.lock().close();
  }

  /** A process may not lock what it has locked already; this gives up the lock as it closes. */
  private void assertStillLocked() {
    assertThrows(
        OverlappingFileLockException.class,
        () -> {
          try (FileChannel channel =
              FileChannel.open(root.resolve(".lock"), StandardOpenOption.WRITE)) {
            channel.tryLock();
          }
        });
  }
}
