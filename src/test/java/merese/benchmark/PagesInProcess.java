package merese.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import merese.answer.Coverage;
import merese.answer.CoverageQuestion;
import merese.answer.Covers;
import merese.answer.Find;
import merese.answer.Found;
import merese.answer.Sweep;
import merese.answer.Swept;
import merese.search.BareQueries;
import merese.shelf.Shelf;
import merese.shelf.Watcher;
import merese.store.LibraryFolder;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** The questions of {@link InProcess} that show words on pages. Run by {@link PagesBenchmark}. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PagesInProcess {
  private static final int MOST = 20;
  private static final int MOST_PLACES = 50;

  /** A library with page texts, open for questions, and its index for Lucene alone. */
  @State(Scope.Benchmark)
  public static class Open {
    @Param("")
    public String folder;

    private Shelf shelf;
    private BareQueries bare;
    private Drawn drawn;
    private int next;

    @Setup
    public void open() throws IOException {
      LibraryFolder library = LibraryFolder.open(Path.of(folder).resolve("library"));
      shelf = Shelf.open(library, Watcher.NONE);
      bare = new BareQueries(library.index().resolve("lucene"));
      drawn = Drawn.read(Path.of(folder));
    }

    private String next(List<String> all) {
      next = (next + 1) % all.size();
      return all.get(next);
    }

    @TearDown
    public void close() throws IOException {
      shelf.close();
      bare.close();
    }
  }

  @Benchmark
  public Found find(Open open) {
    String words = open.next(open.drawn.words());
    return open.shelf.ask(shelf -> Find.answer(shelf, words, MOST));
  }

  @Benchmark
  public Found findOnPages(Open open) {
    String words = "is:page " + open.next(open.drawn.words());
    return open.shelf.ask(shelf -> Find.answer(shelf, words, MOST));
  }

  @Benchmark
  public long bareFindOnPages(Open open) throws IOException {
    return open.bare.bestPages(open.next(open.drawn.words()), MOST);
  }

  @Benchmark
  public Coverage covers(Open open) {
    return Covers.answer(
        open.shelf,
        CoverageQuestion.ofConcept(open.next(open.drawn.evenly()))
            .with(CoverageQuestion.Showing.USUAL));
  }

  @Benchmark
  public Swept sweep(Open open) {
    return Sweep.answer(open.shelf, open.next(open.drawn.evenly()), MOST_PLACES, false);
  }

  @Benchmark
  public Swept sweepAsNamed(Open open) {
    return Sweep.answer(open.shelf, open.next(open.drawn.asNamed()), MOST_PLACES, false);
  }

  @Benchmark
  public long bareSweep(Open open) throws IOException {
    return open.bare.pagesNaming(open.next(open.drawn.evenly()));
  }

  @Benchmark
  public long bareSweepAsNamed(Open open) throws IOException {
    return open.bare.pagesNaming(open.next(open.drawn.asNamed()));
  }
}
