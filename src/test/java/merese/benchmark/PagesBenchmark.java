package merese.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import merese.model.PageText;
import merese.search.BareWriter;
import merese.search.IndexUpdate;
import merese.shelf.FilesForIndex;
import merese.shelf.Shelf;
import merese.store.ChangeSet;
import merese.store.LibraryFile;
import merese.store.Stored;
import merese.vocabulary.Thesaurus;
import org.openjdk.jmh.util.Statistics;

/**
 * Texts of books, as many pages as notes: indexing them beside a bare Lucene writer, a text that is
 * replaced, and the questions that show words on pages beside Lucene's own searcher, SQLite's
 * full-text table and grep. The libraries are its own, and gone after it.
 */
final class PagesBenchmark implements Benchmark {
  private static final int PAGES_A_WORK = 5;
  private static final double FROM_FILES = 0.55;
  private static final double ONE_CHANGE = 0.01;
  private static final double AGAINST_LUCENE = 2;

  /** Larger ones are indexed once, since that takes minutes. */
  private static final int BUILT_AGAIN = 5_000;

  private static final int RUNS = 3;
  private static final int CHANGES = 5;

  private final Libraries libraries;

  PagesBenchmark(Libraries libraries) {
    this.libraries = libraries;
  }

  @Override
  public void run(Report report) throws Exception {
    for (int works : libraries.sizes()) {
      int many = works * PAGES_A_WORK;
      try (LargeLibrary large = LargeLibrary.of(works, many, many)) {
        build(report, large);
        replaced(report, large);
        questions(report, large);
        cold(report, large);
      }
    }
  }

  private static String size(LargeLibrary large) {
    return Report.whole(large.list().pages()) + " pages";
  }

  private static void build(Report report, LargeLibrary large) throws IOException {
    Thesaurus thesaurus;
    long before = System.nanoTime();
    try (Shelf shelf = large.open()) {
      report.cost("full build, with pages", large.list().works(), InTurns.since(before), "ms");
      thesaurus = shelf.thesaurus();
    }
    long texts = 0;
    for (LibraryFile file : large.library().pages()) {
      texts += file.size();
    }
    report.input(
        "Pages, "
            + large.words()
            + ", "
            + size(large)
            + ": "
            + (texts >> 20)
            + " MB of texts. Bare Lucene writer: given the words and names of each page, it makes"
            + " the same documents, with the same fields, analysis, buffer and one thread, and"
            + " commits; ours is given the files, reads, and finds words and names");
    int runs = large.list().works() > BUILT_AGAIN ? 1 : RUNS;
    double[] ours = new double[runs];
    double[] bare = new double[runs];
    if (runs > 1) {
      ours(large, thesaurus); // warms up
    }
    for (int run = 0; run < runs; run++) {
      ours[run] = ours(large, thesaurus);
      bare[run] = bare(large, thesaurus);
    }
    int pages = large.list().pages();
    double rate = pages * 1e3 / Report.median(ours);
    report.share(
        "pages indexed, " + size(large) + ", from the files, against a bare Lucene writer",
        rate,
        pages * 1e3 / Report.median(bare),
        FROM_FILES);
    report.cost("pages indexed a second", large.list().works(), rate, "");
    report.cost(
        "index, of the size of the texts",
        large.list().works(),
        100.0 * sizeOf(large.index()) / texts,
        "%");
  }

  private static long sizeOf(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      long size = 0;
      for (Path file : files.toList()) {
        size += Files.size(file);
      }
      return size;
    }
  }

  private static double ours(LargeLibrary large, Thesaurus thesaurus) throws IOException {
    Path folder = Files.createTempDirectory("merese-index");
    FilesForIndex files = new FilesForIndex(thesaurus);
    long before = System.nanoTime();
    try (IndexUpdate update = IndexUpdate.fromNothing(folder)) {
      for (LibraryFile file : large.library().pages()) {
        files.add(file.relative(), large.library().readPages(file.path()).value(), update);
      }
      update.commit();
    }
    double milliseconds = InTurns.since(before);
    LargeLibrary.delete(folder);
    return milliseconds;
  }

  private static double bare(LargeLibrary large, Thesaurus thesaurus) throws IOException {
    Path folder = Files.createTempDirectory("merese-bare");
    FilesForIndex files = new FilesForIndex(thesaurus);
    double milliseconds = 0;
    BareWriter writer = new BareWriter(folder);
    for (int number = 0; number < large.list().works(); number++) {
      for (PageText text : large.pages(number)) {
        var made = files.of(text);
        long before = System.nanoTime();
        writer.add(text.source() + "/" + text.file(), made);
        milliseconds += InTurns.since(before);
      }
    }
    long before = System.nanoTime();
    writer.close();
    milliseconds += InTurns.since(before);
    LargeLibrary.delete(folder);
    return milliseconds;
  }

  /** Each time another text, of which a page is gone. */
  private static void replaced(Report report, LargeLibrary large) throws IOException {
    List<LibraryFile> texts = large.library().pages();
    double[] changed = new double[CHANGES];
    int read = 0;
    int pages = 0;
    for (int change = 0; change < CHANGES; change++) {
      Path file = texts.get(change * texts.size() / CHANGES).path();
      Stored<PageText> stored = large.library().readPages(file);
      PageText text = stored.value();
      pages = Math.max(pages, text.pages().size());
      try (ChangeSet set = large.library().change("a text again")) {
        set.replacePages(stored, shorter(text));
        set.commit();
      }
      long before = System.nanoTime();
      try (Shelf shelf = large.open()) {
        changed[change] = InTurns.since(before);
        read = Math.max(read, shelf.upToDate().opened().size());
      }
    }
    large.deleteIndex();
    long before = System.nanoTime();
    large.open().close();
    report.ratio(
        "one text of " + size(large) + " replaced (" + pages + " pages at most), against a build",
        Report.median(changed),
        InTurns.since(before),
        "ms",
        ONE_CHANGE);
    report.bound("… library files read for it", read, "", 1);
    report.cost("opening, one text replaced", large.list().works(), Report.median(changed), "ms");
    report.cost("… library files read for it", large.list().works(), read, "");
  }

  private static PageText shorter(PageText text) {
    int pages = Math.max(1, text.pages().size() - 1);
    return new PageText(
        text.source(),
        text.file(),
        text.sha256(),
        text.from(),
        merese.model.PageMap.NONE,
        text.pages().subList(0, pages));
  }

  private static void questions(Report report, LargeLibrary large) throws Exception {
    Drawn drawn = Drawn.from(large.list());
    drawn.write(large.folder());
    Map<String, Statistics> times =
        Warm.measured(
            PagesInProcess.class,
            large.folder(),
            List.of("find", "findOnPages", "bareFindOnPages", "covers", "sweep", "bareSweep"));
    report.input(
        "Questions on "
            + size(large)
            + ": two words as likely as texts have them. Bare Lucene: a page has both, BM25, the"
            + " stored values of the best 20; of a concept each page that names it, its value"
            + " read");
    for (String each : List.of("find", "findOnPages", "covers", "sweep", "sweepAsNamed")) {
      int works = large.list().works();
      report.cost(each + " with pages, p50", works, times.get(each).getPercentile(50), "ms");
      report.cost(each + " with pages, p99", works, times.get(each).getPercentile(99), "ms");
    }
    for (String each : List.of("FindOnPages", "Sweep", "SweepAsNamed")) {
      String ours = each.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + each.substring(1);
      report.ratio(
          ours + ", " + size(large) + ", p99, against bare Lucene",
          times.get(ours).getPercentile(99),
          times.get("bare" + each).getPercentile(99),
          "ms",
          AGAINST_LUCENE);
    }
    if (Sqlite.isInstalled()) {
      try (Sqlite sqlite = Sqlite.ofPages(large)) {
        report.input(sqlite.pageInputs());
        report.cost("SQLite FTS5: the table of pages", large.list().works(), sqlite.built(), "ms");
        report.ratio(
            "findOnPages, " + size(large) + ", p99, against SQLite FTS5",
            times.get("findOnPages").getPercentile(99),
            Report.percentile(sqlite.findPages(drawn.words()), 99),
            "ms",
            1);
      }
    }
  }

  private static void cold(Report report, LargeLibrary large) throws Exception {
    int works = large.list().works();
    String word = rare(large);
    String grep = "grep -r -i -w -F " + word + " library/pages";
    report.input("A word on pages, " + size(large) + ": " + grep + "; merese find " + word);
    double[] found =
        InTurns.medians(
            Timed.merese(large.folder(), "find", word),
            new Timed(List.of(grep.split(" ")), large.folder()));
    report.beside(
        "cold find of a word on pages, " + size(large) + ", against grep",
        found[0],
        found[1],
        "ms");
    report.cost("cold find of a word on pages", works, found[0], "ms");
    report.cost("grep for it in the texts", works, found[1], "ms");
    List<String> concepts = large.concepts();
    String common = concepts.get(0);
    String rare = concepts.get(concepts.size() - 1);
    double[] asked =
        InTurns.medians(
            Timed.merese(large.folder(), "covers", common),
            Timed.merese(large.folder(), "covers", rare),
            Timed.merese(large.folder(), "sweep", common),
            Timed.merese(large.folder(), "sweep", rare));
    List<String> names =
        List.of(
            "cold covers, the commonest",
            "… the rarest",
            "cold sweep, the commonest",
            "the rarest");
    for (int i = 0; i < asked.length; i++) {
      report.cost(names.get(i), works, asked[i], "ms");
    }
  }

  /** A word that stands on a page and on few: the longest of the first text. */
  private static String rare(LargeLibrary large) {
    String longest = "";
    List<String> lines = new ArrayList<>();
    large.pages(0).forEach(text -> text.pages().forEach(page -> lines.addAll(page.lines())));
    for (String line : lines) {
      String[] words = line.split(" ");
      for (int i = 1; i < words.length - 1; i++) { // those at the ends may be broken
        longest = words[i].length() > longest.length() ? words[i] : longest;
      }
    }
    return longest;
  }
}
