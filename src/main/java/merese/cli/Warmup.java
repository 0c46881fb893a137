package merese.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Runs the commands whose classes belong into the class-data archive. The launcher starts it, with
 * the folder of the demonstration, when it makes the archive; nothing that it prints is shown.
 */
final class Warmup {
  /** The commands that a user waits for most. Each must succeed on the demo library. */
  static final List<List<String>> COMMANDS =
      List.of(
          List.of("covers", "bladed ring", "--pictured"), // makes the index
          List.of("covers", "bladed ring", "--pictured"), // finds it made
          List.of("covers", "neck ring", "--limit", "1"), // of most groups there are more
          List.of("covers", "triple ring"),
          List.of("find", "knife-edged rings"),
          List.of("covers", "--help"),
          List.of("covers", "--no-such-option"),
          List.of("--help"),
          List.of("--version"));

  /**
   * What is waited for as often beside an open book. Each must succeed, in this order, in an empty
   * folder.
   */
  static final List<List<String>> WRITING =
      List.of(
          List.of("new", ".", "--title", "My glass shelf"),
          List.of(
              "add",
              "--kind",
              "monograph",
              "--title",
              "Neck and Stopper",
              "--author",
              "Quenby, Mabel",
              "--year",
              "1949"),
          List.of(
              "note",
              "quenby-1949",
              "pl. 31, fig. 3",
              "bladed ring",
              "--pictured",
              "--date",
              "c. 1790–1810",
              "--place",
              "mainly Irish"),
          List.of("note", "quenby-1949", "p. 70", "knife-edged rings"),
          List.of("undo"),
          List.of("history"));

  private Warmup() {}

  public static void main(String[] args) {
    run(COMMANDS, System.getenv(), Path.of(args[0]).toAbsolutePath());
    write();
  }

  /** Nothing of the user's environment is handed on, which may name the user's own library. */
  private static void write() {
    try {
      Path folder = Files.createTempDirectory("merese-warmup").toAbsolutePath();
      try {
        run(WRITING, Map.of(), folder);
      } finally {
        delete(folder);
      }
    } catch (IOException e) {
      // without room for it the first note is slow, and no more
    }
  }

  private static void delete(Path path) throws IOException {
    if (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
      try (DirectoryStream<Path> inside = Files.newDirectoryStream(path)) {
        for (Path each : inside) {
          delete(each);
        }
      }
    }
    Files.delete(path);
  }

  private static void run(
      List<List<String>> commands, Map<String, String> environment, Path folder) {
    for (List<String> command : commands) {
      Main.run(
          InputStream.nullInputStream(),
          OutputStream.nullOutputStream(),
          OutputStream.nullOutputStream(),
          environment,
          folder,
          command.toArray(String[]::new));
    }
  }
}
