package merese.benchmark;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import merese.testing.UnionList;

/** Writes a large library by hand: {@code MakeUnionList FOLDER WORKS NOTES PAGES}. */
final class MakeUnionList {
  private MakeUnionList() {}

  public static void main(String[] args) throws IOException {
    System.exit(run(System.out, args));
  }

  private static int run(PrintStream out, String... args) throws IOException {
    if (args.length != 4) {
      out.println("Say where and how much: MakeUnionList FOLDER WORKS NOTES PAGES");
      return 2;
    }
    long before = System.nanoTime();
    UnionList list =
        UnionList.of(
            Integer.parseInt(args[1]), Integer.parseInt(args[2]), Integer.parseInt(args[3]));
    Path library = list.write(Path.of(args[0])).path();
    long seconds = (System.nanoTime() - before) / 1_000_000_000L;
    out.println(
        list.works()
            + " works, "
            + list.notes()
            + " notes, "
            + list.pages()
            + " pages and "
            + list.concepts().size()
            + " concepts in "
            + library
            + ", written in "
            + seconds
            + " s");
    return 0;
  }
}
