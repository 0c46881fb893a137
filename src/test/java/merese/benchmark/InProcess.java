package merese.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import merese.answer.Coverage;
import merese.answer.CoverageQuestion;
import merese.answer.Covers;
import merese.answer.Find;
import merese.answer.Found;
import merese.change.notes.NoteTaking;
import merese.change.notes.NoteTaking.Taken;
import merese.change.notes.TypedNote;
import merese.change.notes.TypedNote.Doing;
import merese.change.notes.TypedNote.Where;
import merese.model.Naming;
import merese.model.Naming.Why;
import merese.search.BareQueries;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.shelf.SourceAddress;
import merese.shelf.Watcher;
import merese.shelf.WritingShelf;
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

/**
 * What a question costs once the program is warm, ours beside Lucene's own searcher on the same
 * index. Run by {@link QuestionsBenchmark}, which draws the questions.
 */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class InProcess {
  private static final int MOST = 20;

  private static LibraryFolder library(String folder) {
    return LibraryFolder.open(Path.of(folder).resolve("library"));
  }

  /** Questions in turn. */
  private static final class Turn {
    private final List<String> all;
    private int next;

    Turn(List<String> all) {
      this.all = all;
    }

    String next() {
      next = (next + 1) % all.size();
      return all.get(next);
    }
  }

  /** A library that is open for questions. */
  @State(Scope.Benchmark)
  public static class Open {
    @Param("")
    public String folder;

    private Shelf shelf;
    private Turn evenly;
    private Turn asNamed;
    private Turn words;

    @Setup
    public void open() throws IOException {
      shelf = Shelf.open(library(folder), Watcher.NONE);
      Drawn drawn = Drawn.read(Path.of(folder));
      evenly = new Turn(drawn.evenly());
      asNamed = new Turn(drawn.asNamed());
      words = new Turn(drawn.words());
    }

    @TearDown
    public void close() {
      shelf.close();
    }
  }

  /** The same index, open for Lucene alone; what each question asks for is known beforehand. */
  @State(Scope.Benchmark)
  public static class Bare {
    @Param("")
    public String folder;

    private BareQueries queries;
    private final List<List<NoteCriterion>> evenly = new ArrayList<>();
    private final List<List<NoteCriterion>> asNamed = new ArrayList<>();
    private Turn words;
    private int next;

    @Setup
    public void open() throws IOException {
      LibraryFolder library = library(folder);
      Drawn drawn = Drawn.read(Path.of(folder));
      try (Shelf shelf = Shelf.open(library, Watcher.NONE)) {
        drawn.evenly().forEach(c -> evenly.add(Drawn.groups(shelf.thesaurus(), c)));
        drawn.asNamed().forEach(c -> asNamed.add(Drawn.groups(shelf.thesaurus(), c)));
      }
      words = new Turn(drawn.words());
      queries = new BareQueries(library.index().resolve("lucene"));
    }

    private List<NoteCriterion> next(List<List<NoteCriterion>> all) {
      next = (next + 1) % all.size();
      return all.get(next);
    }

    @TearDown
    public void close() throws IOException {
      queries.close();
    }
  }

  /** A library that is written to. */
  @State(Scope.Benchmark)
  public static class Written {
    @Param("")
    public String folder;

    private WritingShelf shelf;
    private NoteTaking taking;
    private final List<SourceAddress> sources = new ArrayList<>();
    private int count;

    @Setup
    public void open() throws IOException {
      shelf = WritingShelf.open(library(folder), Watcher.NONE);
      taking =
          new NoteTaking(shelf, Clock.fixed(Instant.parse("2026-01-01T00:00:00Z"), ZoneOffset.UTC));
      List<SourceAddress> all = shelf.sources();
      for (int i = 0; i < 40; i++) {
        sources.add(all.get((int) ((long) i * all.size() / 40)));
      }
    }

    @TearDown
    public void close() {
      shelf.close();
    }
  }

  @Benchmark
  public Coverage covers(Open open) {
    return Covers.answer(
        open.shelf,
        CoverageQuestion.ofConcept(open.evenly.next()).with(CoverageQuestion.Showing.USUAL));
  }

  @Benchmark
  public Coverage coversAsNamed(Open open) {
    return Covers.answer(
        open.shelf,
        CoverageQuestion.ofConcept(open.asNamed.next()).with(CoverageQuestion.Showing.USUAL));
  }

  @Benchmark
  public Found find(Open open) {
    String words = open.words.next();
    return open.shelf.ask(shelf -> Find.answer(shelf, words, MOST));
  }

  @Benchmark
  public long bareCovers(Bare bare) throws IOException {
    return bare.queries.visit(bare.next(bare.evenly));
  }

  @Benchmark
  public long bareCoversAsNamed(Bare bare) throws IOException {
    return bare.queries.visit(bare.next(bare.asNamed));
  }

  @Benchmark
  public long bareFind(Bare bare) throws IOException {
    return bare.queries.best(bare.words.next(), MOST);
  }

  @Benchmark
  public int open(Open open) {
    try (Shelf another = Shelf.open(library(open.folder), Watcher.NONE)) {
      return another.upToDate().opened().size();
    }
  }

  /** Durable on the disk, with its entry in the history. */
  @Benchmark
  public Taken note(Written written) {
    written.count++;
    SourceAddress source = written.sources.get(written.count % written.sources.size());
    return written.taking.note(source, typed("p. " + written.count), true);
  }

  private static TypedNote typed(String locator) {
    Naming naming = new Naming("bladed ring", Optional.of("ring-bladed"), Optional.of(Why.TEXT));
    Where where =
        new Where(
            locator,
            Doing.NAMES,
            Optional.empty(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return new TypedNote(
        List.of(naming),
        where,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        "me");
  }
}
