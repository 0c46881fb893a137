package merese.benchmark;

import java.nio.file.Path;
import java.util.List;
import merese.model.Edition;
import merese.model.Note;
import merese.testing.UnionList;

/**
 * Questions from a cold process, launcher and all: beside a Java hello-world with the flags that
 * Java has by itself, at each size beside the demo library, and beside {@code grep} over the same
 * files.
 */
final class StartBenchmark implements Benchmark {
  private static final String TERM = "bladed ring";
  private static final double AGAINST_HELLO = 3;
  private static final double AGAINST_DEMO = 1.3;

  private final Libraries libraries;

  StartBenchmark(Libraries libraries) {
    this.libraries = libraries;
  }

  @Override
  public void run(Report report) throws Exception {
    String java = System.getProperty("java.home") + "/bin/java";
    String classes = Path.of("target/test-classes").toAbsolutePath().toString();
    Path demo = Path.of("target/merese/demo").toAbsolutePath();
    Timed hello = new Timed(List.of(java, "-cp", classes, Hello.class.getName()), demo);
    Timed covers = Timed.merese(demo, "covers", TERM);
    report.input(
        "Cold processes: 'merese covers \"" + TERM + "\"' on the demo library; java -cp … Hello");
    double[] times = InTurns.medians(hello, covers);
    report.ratio(
        "cold covers, demo library, against a Java hello-world",
        times[1],
        times[0],
        "ms",
        AGAINST_HELLO);
    for (int works : libraries.sizes()) {
      atSize(report, libraries.of(works), covers);
    }
  }

  private static void atSize(Report report, LargeLibrary large, Timed demo) throws Exception {
    int works = large.list().works();
    large.open().close(); // makes the index where there is none
    String size = Report.whole(large.list().notes()) + " notes";
    Timed here = Timed.merese(large.folder(), "covers", TERM);
    double[] times = InTurns.medians(demo, here);
    report.ratio(
        "cold covers, " + size + ", against the demo library",
        times[1],
        times[0],
        "ms",
        AGAINST_DEMO);
    report.cost("cold covers of “" + TERM + "”", works, times[1], "ms");

    String word = rare(large.list());
    String grep = "grep -r -i -w -F " + word + " library/works";
    report.input("A word in files, " + large.words() + ": " + grep + "; merese find " + word);
    double[] found =
        InTurns.medians(
            Timed.merese(large.folder(), "find", word),
            new Timed(List.of(grep.split(" ")), large.folder()));
    report.beside("cold find of one word, " + size + ", against grep", found[0], found[1], "ms");
    report.cost("cold find of a rare word", works, found[0], "ms");
    report.cost("grep for it in the files", works, found[1], "ms");
  }

  /** A word that is in the library and that few texts have: the longest of some readings. */
  private static String rare(UnionList list) {
    String longest = "";
    for (int number = 0; number < 40; number++) {
      for (Edition edition : list.work(number).editions()) {
        for (Note note : edition.notes()) {
          for (String word : note.reading().orElse("").split(" ")) {
            longest = word.length() > longest.length() ? word : longest;
          }
        }
      }
    }
    return longest;
  }
}
