package merese.benchmark;

import java.util.List;
import java.util.Map;
import org.openjdk.jmh.util.Statistics;

/**
 * What a question costs in a warm process at each size, beside Lucene's own searcher and SQLite's
 * full-text table asked the same.
 */
final class QuestionsBenchmark implements merese.benchmark.Benchmark {
  private static final double AGAINST_LUCENE = 2;
  private static final double LONGEST = 10;

  private final Libraries libraries;

  QuestionsBenchmark(Libraries libraries) {
    this.libraries = libraries;
  }

  @Override
  public void run(Report report) throws Exception {
    if (!Sqlite.isInstalled()) {
      report.input("SQLite is left out: there is no 'sqlite3' here (apt-get install sqlite3)");
    }
    for (int works : libraries.sizes()) {
      atSize(report, libraries.of(works));
    }
  }

  private static void atSize(Report report, LargeLibrary large) throws Exception {
    large.open().close(); // makes the index where there is none
    Drawn drawn = Drawn.from(large.list());
    drawn.write(large.folder());
    report.input(
        "Questions, "
            + large.words()
            + ": "
            + drawn.evenly().size()
            + " concepts drawn evenly, as many as often as notes name them, and pairs of words."
            + " Bare Lucene: IndexSearcher on the same index, a TermQuery for each group, the"
            + " stored value of every match read; for words BM25, the best 20");
    Map<String, Statistics> inProcess =
        Warm.measured(
            InProcess.class,
            large.folder(),
            List.of("covers", "bareCovers", "find", "note", "open"));
    covers(report, large, inProcess, "covers", "concepts drawn evenly");
    covers(report, large, inProcess, "coversAsNamed", "concepts as often as noted");
    Statistics find = inProcess.get("find");
    String size = Report.whole(large.list().notes()) + " notes";
    report.beside(
        "find in the process, p99, " + size + ", against bare Lucene",
        find.getPercentile(99),
        inProcess.get("bareFind").getPercentile(99),
        "ms");
    int works = large.list().works();
    cost(report, "find in the process", works, find);
    cost(report, "noting in the process", works, inProcess.get("note"));
    cost(report, "opening in the process, nothing changed", works, inProcess.get("open"));
    if (Sqlite.isInstalled()) {
      sqlite(report, large, drawn, inProcess);
    }
  }

  private static void covers(
      Report report, LargeLibrary large, Map<String, Statistics> all, String which, String drawn) {
    String name = "covers in the process, " + Report.whole(large.list().notes()) + " notes, ";
    Statistics ours = all.get(which);
    Statistics bare = all.get("bareC" + which.substring(1));
    report.bound(name + drawn + ", p99", ours.getPercentile(99), "ms", LONGEST);
    report.ratio(
        name + drawn + ", p99, against bare Lucene",
        ours.getPercentile(99),
        bare.getPercentile(99),
        "ms",
        AGAINST_LUCENE);
    report.beside(
        name + drawn + ", p50, against bare Lucene",
        ours.getPercentile(50),
        bare.getPercentile(50),
        "ms");
    cost(report, "covers in the process, " + drawn, large.list().works(), ours);
  }

  private static void cost(Report report, String operation, int works, Statistics times) {
    report.cost(operation + ", p50", works, times.getPercentile(50), "ms");
    report.cost(operation + ", p99", works, times.getPercentile(99), "ms");
  }

  private static void sqlite(
      Report report, LargeLibrary large, Drawn drawn, Map<String, Statistics> inProcess)
      throws Exception {
    String size = Report.whole(large.list().notes()) + " notes";
    try (Sqlite sqlite = Sqlite.of(large)) {
      report.input(sqlite.inputs());
      report.cost("SQLite FTS5: the table made", large.list().works(), sqlite.built(), "ms");
      against(
          report,
          "covers in the process, " + size + ", p99, against SQLite FTS5",
          inProcess.get("covers"),
          sqlite.covers(drawn.evenly()));
      against(
          report,
          "covers as often as noted, " + size + ", p99, against SQLite FTS5",
          inProcess.get("coversAsNamed"),
          sqlite.covers(drawn.asNamed()));
      against(
          report,
          "find in the process, " + size + ", p99, against SQLite FTS5",
          inProcess.get("find"),
          sqlite.find(drawn.words()));
    }
  }

  private static void against(Report report, String what, Statistics ours, double[] theirs) {
    report.ratio(what, ours.getPercentile(99), Report.percentile(theirs, 99), "ms", 1);
  }
}
