package merese.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import merese.answer.written.Harmless;
import merese.desk.Desk;
import merese.desk.DeskSettings;
import merese.store.LibraryFolder;

/** Opens the desk: the same answers in a browser. */
final class DeskCommand extends LibraryCommand {
  /** In the range that nobody registers: dynamic ports begin at 49152 (RFC 6335). */
  private static final int PORT = 49_700;

  private static final int HIGHEST_PORT = 65_535;

  private final Given<Integer> port =
      option(
          Integer.class,
          "N",
          "The port to listen to; without this, " + PORT + ", or the next that is free.",
          "--port");

  private final Given<Boolean> quiet =
      flag("Only say where it is; do not open a browser.", "--no-browser");

  private final Given<String> by =
      option(String.class, "NAME", "Who notes; else MERESE_BY, else me.", "--by");

  private final Given<Boolean> fresh =
      flag("Make the library first, where there is none yet.", "--new");

  DeskCommand(Context context) {
    super(
        context,
        "Open the desk: the library as pages in a browser, on this machine alone.\n"
            + "It runs until you stop it with Ctrl-C.",
        "merese desk",
        "merese desk --library shelf --no-browser");
  }

  @Override
  int run() throws IOException {
    int wanted = port.value().orElse(PORT);
    if (wanted < 0 || wanted > HIGHEST_PORT) {
      throw CommandException.wrongUse("--port takes a number up to 65535, not " + wanted);
    }
    String who = by.value().orElse(context().environment().getOrDefault("MERESE_BY", "me"));
    if (fresh.isSet()) {
      makeIfMissing();
    }
    DeskSettings settings =
        new DeskSettings(library(), wanted, Clock.system(ZoneId.systemDefault()), who, this::tell);
    try (Desk desk = Desk.start(settings)) {
      say(desk, wanted);
      if (!quiet.isSet()) {
        open(desk.address());
      }
      waitForTheEnd();
    }
    return ExitCode.DONE;
  }

  /** What is there in any form is left as it is, and said to be what it is. */
  private void makeIfMissing() throws IOException {
    Path place = context().resolve(Path.of(named().orElse("")));
    boolean empty = !Files.exists(place);
    if (Files.isDirectory(place)) {
      try (Stream<Path> files = Files.list(place)) {
        empty = files.findAny().isEmpty();
      }
    }
    if (empty) {
      LibraryFolder made = LibraryFolder.create(place, "My shelf");
      context().out().println("A new library was made in " + context().fromHere(made.path()) + ".");
    }
  }

  private synchronized void tell(String fault) {
    ErrorLines.print(context(), "merese desk:", Harmless.words(fault));
    context().err().flush();
  }

  private void say(Desk desk, int wanted) {
    Page page = new Page(context().out(), context().screen());
    if (wanted != 0 && desk.port() != wanted) {
      page.text("Port " + wanted + " is in use; the desk takes " + desk.port() + ".");
    }
    page.text("The desk is at " + desk.address());
    page.text("It answers to this machine alone. Ctrl-C closes it.");
    context().out().flush();
  }

  private static void waitForTheEnd() {
    try {
      new CountDownLatch(1).await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** What opens an address with the user's own browser, on each system; where none is, no harm. */
  private static void open(String address) {
    String system = System.getProperty("os.name", "");
    List<String> words =
        system.startsWith("Mac")
            ? List.of("open", address)
            : system.startsWith("Windows")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
                : List.of("xdg-open", address);
    try {
      new ProcessBuilder(words)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException e) {
      // The address stands on the screen.
    }
  }
}
