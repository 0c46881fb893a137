package merese.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Work;
import merese.search.BareWriter;
import merese.search.IndexUpdate;
import merese.search.IndexedFile;
import merese.shelf.FilesForIndex;
import merese.shelf.Shelf;
import merese.store.Stored;
import merese.vocabulary.Thesaurus;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.store.FSDirectory;

/**
 * Building the index at each size, against a bare Lucene writer of the same documents, with the
 * reading of the files and without; opening it, after nothing has changed and after one work has;
 * and all of it in a small heap.
 */
final class BuildBenchmark implements Benchmark {
  private static final double WITHOUT_READING = 0.8;
  private static final double WITH_READING = 0.55;
  private static final double ONE_CHANGE = 0.01;
  private static final int CHUNK = 1_000;

  /** Larger libraries are built once, since that takes minutes. */
  private static final int BUILT_AGAIN = 50_000;

  private static final int RUNS = 3;
  private static final int CHANGES = 5;
  private static final String HEAP = "512m";

  private final Libraries libraries;

  BuildBenchmark(Libraries libraries) {
    this.libraries = libraries;
  }

  /** Takes the works of a library as they are made. */
  private interface Writer {
    void take(List<Work> works) throws IOException;

    void commit() throws IOException;
  }

  @Override
  public void run(Report report) throws Exception {
    for (int works : libraries.sizes()) {
      LargeLibrary large = libraries.of(works);
      Thesaurus thesaurus;
      try (Shelf shelf = large.open()) {
        thesaurus = shelf.thesaurus();
      }
      build(report, large, thesaurus);
      opening(report, large);
      memory(report, large);
    }
  }

  private static void build(Report report, LargeLibrary large, Thesaurus thesaurus)
      throws IOException {
    String size = Report.whole(large.list().notes()) + " notes";
    report.input(
        "Bare Lucene writer, "
            + large.words()
            + ": given what each work was made into, it makes the same documents of it, with the"
            + " same fields, analysis, buffer and one thread, and commits; ours is given the works"
            + " in memory, or the files. Both are given "
            + Report.whole(CHUNK)
            + " works at a time, and making those does not count");
    int runs = large.list().works() > BUILT_AGAIN ? 1 : RUNS;
    double[] whole = new double[runs];
    double[] ours = new double[runs];
    double[] bare = new double[runs];
    int documents = 0;
    if (runs > 1) {
      ours(large, thesaurus); // warms up
    }
    for (int run = 0; run < runs; run++) { // in turn, so that all meet the same machine
      large.deleteIndex();
      long before = System.nanoTime();
      large.open().close();
      whole[run] = InTurns.since(before);
      ours[run] = ours(large, thesaurus);
      Bare writer = new Bare(thesaurus);
      bare[run] = milliseconds(large, writer);
      LargeLibrary.delete(writer.folder);
      documents = writer.documents;
    }
    double rate = documents * 1e3 / Report.median(bare);
    report.share(
        "index build, " + size + ", works in memory, against a bare Lucene writer",
        documents * 1e3 / Report.median(ours),
        rate,
        WITHOUT_READING);
    report.share(
        "index build, " + size + ", from the files, against the same",
        documents * 1e3 / Report.median(whole),
        rate,
        WITH_READING);
    report.cost("full build of the index", large.list().works(), Report.median(whole), "ms");
    report.cost(
        "… documents a second", large.list().works(), documents * 1e3 / Report.median(whole), "");
  }

  private static double ours(LargeLibrary large, Thesaurus thesaurus) throws IOException {
    Path folder = Files.createTempDirectory("merese-index");
    double milliseconds;
    try (IndexUpdate update = IndexUpdate.fromNothing(folder)) {
      FilesForIndex files = new FilesForIndex(thesaurus);
      Writer writer =
          new Writer() {
            @Override
            public void take(List<Work> works) {
              works.forEach(work -> update.replace(files.of(work)));
            }

            @Override
            public void commit() {
              update.commit();
            }
          };
      milliseconds = milliseconds(large, writer);
    }
    LargeLibrary.delete(folder);
    return milliseconds;
  }

  /** Gives a writer all works, and says how long it had them. */
  private static double milliseconds(LargeLibrary large, Writer writer) throws IOException {
    double milliseconds = 0;
    int works = large.list().works();
    for (int from = 0; from < works; from += CHUNK) {
      List<Work> chunk = new ArrayList<>();
      for (int number = from; number < Math.min(works, from + CHUNK); number++) {
        chunk.add(large.list().work(number));
      }
      long before = System.nanoTime();
      writer.take(chunk);
      milliseconds += InTurns.since(before) - (writer instanceof Bare bare ? bare.making : 0);
    }
    long before = System.nanoTime();
    writer.commit();
    return milliseconds + InTurns.since(before);
  }

  /** Lucene alone. */
  private static final class Bare implements Writer {
    private final FilesForIndex files;
    private final Path folder = Files.createTempDirectory("merese-bare");
    private final BareWriter writer = new BareWriter(folder);
    private int documents;

    /** Milliseconds that it took to make of the last works what Lucene is given. */
    private double making;

    Bare(Thesaurus thesaurus) throws IOException {
      files = new FilesForIndex(thesaurus);
    }

    @Override
    public void take(List<Work> works) throws IOException {
      long before = System.nanoTime();
      List<IndexedFile> made = files.of(works);
      making = InTurns.since(before);
      documents += writer.add(made);
    }

    @Override
    public void commit() throws IOException {
      writer.close();
    }
  }

  private static void opening(Report report, LargeLibrary large) throws Exception {
    String size = Report.whole(large.list().works()) + " works";
    report.input("Opening, " + large.words() + ": Lucene's DirectoryReader on the same index");
    double[] open =
        InTurns.medians(
            () -> {
              long before = System.nanoTime();
              large.open().close();
              return InTurns.since(before);
            },
            () -> {
              long before = System.nanoTime();
              DirectoryReader.open(FSDirectory.open(large.index())).close();
              return InTurns.since(before);
            });
    report.beside(
        "opening a library of " + size + ", against opening its index alone",
        open[0],
        open[1],
        "ms");
    report.cost("opening, nothing changed", large.list().works(), open[0], "ms");

    double[] changed = new double[CHANGES];
    int read = 0;
    for (int change = 0; change < CHANGES; change++) {
      String id = large.list().work(change * large.list().works() / CHANGES).id();
      Stored<Work> stored = large.library().findWork(id).orElseThrow();
      large.library().save(stored, withSubtitle(stored.value(), "changed " + change));
      long before = System.nanoTime();
      try (Shelf shelf = large.open()) {
        changed[change] = InTurns.since(before);
        read = Math.max(read, shelf.upToDate().opened().size());
      }
    }
    large.deleteIndex();
    long before = System.nanoTime();
    large.open().close();
    double full = InTurns.since(before);
    report.ratio(
        "one work of " + size + " changed: opening, against a full build",
        Report.median(changed),
        full,
        "ms",
        ONE_CHANGE);
    report.bound("… library files read for it", read, "", 1);
    report.cost("opening, one work changed", large.list().works(), Report.median(changed), "ms");
    report.cost("… library files read for it", large.list().works(), read, "");
  }

  private static Work withSubtitle(Work work, String subtitle) {
    return new Work(
        work.id(),
        work.kind(),
        work.title(),
        Optional.of(subtitle),
        work.alternateTitles(),
        work.contributors(),
        work.language(),
        work.mine(),
        work.editions(),
        work.links());
  }

  /** A process that runs out of memory fails the run. */
  private static void memory(Report report, LargeLibrary large) throws Exception {
    large.deleteIndex();
    Timed covers = Timed.meresesHeap(HEAP, large.folder(), "covers", "bladed ring");
    double first = covers.once();
    double second = covers.once();
    Timed find = Timed.meresesHeap(HEAP, large.folder(), "find", "bladed ring");
    double found = find.once();
    report.fits(
        large.words() + ": read, indexed and asked; asked; searched, all by the launcher",
        Report.words(first, "ms")
            + "; "
            + Report.words(second, "ms")
            + "; "
            + Report.words(found, "ms"),
        "fits in 512 MB");
  }
}
