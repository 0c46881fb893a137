package merese.exchange.pages;

import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Has files read by {@link Extraction} in a process of its own, of the same Java and the same
 * program: whatever is in them, it gets so much memory and so much time, and is ended when it is
 * over either. What it sends is bounded here once more.
 */
final class ReadingProcess {
  /** With this Java ends where memory does not suffice. */
  private static final int OUT_OF_MEMORY = 3;

  private static final int LONGEST_MESSAGE = 10_000;
  private static final int MOST_BYTES_OF_A_CHARACTER = 3;

  private final Limits limits;
  private final AtomicLong sign = new AtomicLong(System.nanoTime());
  private volatile String overrun = "";

  ReadingProcess(Limits limits) {
    this.limits = limits;
  }

  /** What comes of the files, in their order. */
  interface Receiver {
    void page(String text) throws IOException;

    default void endOfFile() {}
  }

  /**
   * @throws RefusedException where a file cannot be read, or not within the limits
   */
  void read(FileSort sort, List<Path> files, Receiver receiver) throws IOException {
    Process process = start();
    Thread hook = new Thread(process::destroyForcibly);
    Runtime.getRuntime().addShutdownHook(hook);
    Thread watch = new Thread(() -> watch(process), "limits of " + process.pid());
    watch.setDaemon(true);
    watch.start();
    try (DataOutputStream to = new DataOutputStream(process.getOutputStream());
        DataInputStream from =
            new DataInputStream(new BufferedInputStream(process.getInputStream()))) {
      ask(to, sort, files);
      receive(from, receiver);
    } catch (EOFException e) {
      throw brokenOff(process);
    } catch (IOException e) {
      if (process.isAlive() && overrun.isEmpty()) {
        throw e;
      }
      throw brokenOff(process);
    } finally {
      process.destroyForcibly();
      try {
        Runtime.getRuntime().removeShutdownHook(hook);
      } catch (IllegalStateException e) {
        // the program is ending
      }
    }
  }

  private Process start() throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx" + limits.heapMegabytes() + "m",
            "-Xss2m",
            "-XX:+UseSerialGC",
            "-XX:+ExitOnOutOfMemoryError",
            "-XX:-UsePerfData",
            "-XX:-CreateCoredumpOnCrash",
            "-XX:+SuppressFatalErrorMessage",
            "-Djava.awt.headless=true",
            "-Duser.language=en",
            "-Duser.country=GB",
            Extraction.class.getName());
    Map<String, String> environment = builder.environment();
    environment.put("CLASSPATH", System.getProperty("java.class.path"));
    // they would win over the words above
    environment
        .keySet()
        .removeAll(List.of("JAVA_TOOL_OPTIONS", "_JAVA_OPTIONS", "JDK_JAVA_OPTIONS"));
    return builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
  }

  private void ask(DataOutputStream to, FileSort sort, List<Path> files) throws IOException {
    to.writeUTF(sort.name());
    to.writeInt(limits.pages());
    to.writeLong(limits.characters());
    to.writeInt(limits.pageCharacters());
    to.writeInt(files.size());
    for (Path file : files) {
      Extraction.writeText(to, file.toAbsolutePath().toString());
    }
    to.flush();
  }

  private void receive(DataInputStream from, Receiver receiver) throws IOException {
    while (true) {
      int what = from.read();
      sign.set(System.nanoTime());
      switch (what) {
        case Extraction.PAGE ->
            receiver.page(text(from, limits.pageCharacters() * MOST_BYTES_OF_A_CHARACTER));
        case Extraction.FILE -> receiver.endOfFile();
        case Extraction.REFUSED ->
            throw new RefusedException(text(from, LONGEST_MESSAGE), text(from, LONGEST_MESSAGE));
        case Extraction.END -> {
          return;
        }
        default -> throw new EOFException();
      }
    }
  }

  private String text(DataInputStream from, int most) throws IOException {
    int length = from.readInt();
    if (length < 0 || length > most) {
      throw new RefusedException(
          "one of its pages has more than "
              + Counted.of(limits.pageCharacters())
              + " characters of text",
          "no page of a book has so many; look at the file");
    }
    byte[] bytes = new byte[length];
    from.readFully(bytes);
    return new String(bytes, StandardCharsets.UTF_8);
  }

  private void watch(Process process) {
    long begun = System.nanoTime();
    while (process.isAlive()) {
      long now = System.nanoTime();
      if (now - sign.get() > limits.forPage().toNanos()) {
        overrun = "no page of it came within " + seconds(limits.forPage().toSeconds());
      } else if (now - begun > limits.forFile().toNanos()) {
        overrun = "it could not be read within " + seconds(limits.forFile().toSeconds());
      }
      if (!overrun.isEmpty()) {
        process.destroyForcibly();
        return;
      }
      try {
        process.waitFor(100, TimeUnit.MILLISECONDS);
      } catch (InterruptedException e) {
        return;
      }
    }
  }

  private static String seconds(long seconds) {
    return Counted.of(seconds) + (seconds == 1 ? " second" : " seconds");
  }

  private RefusedException brokenOff(Process process) {
    int code = 0;
    try {
      code = process.waitFor(5, TimeUnit.SECONDS) ? process.exitValue() : 0;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    String remedy =
        "it is damaged, or made to do harm: open it in a viewer and save or print it as a new file,"
            + " or attach its plain text";
    if (!overrun.isEmpty()) {
      return new RefusedException(overrun, remedy);
    }
    return code == OUT_OF_MEMORY
        ? new RefusedException(
            "reading it takes more than " + limits.heapMegabytes() + " MB of memory", remedy)
        : new RefusedException("reading it broke off", remedy);
  }
}
