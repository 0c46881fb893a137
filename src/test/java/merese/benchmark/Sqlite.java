package merese.benchmark;

import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import merese.model.Claim;
import merese.model.Edition;
import merese.model.Naming;
import merese.model.Note;
import merese.model.PageText;
import merese.model.Work;
import merese.search.NoteCriterion;
import merese.shelf.Shelf;
import merese.store.LibraryJson;
import merese.vocabulary.Thesaurus;

/**
 * The same texts in a full-text table (FTS5) of SQLite, through Debian's {@code sqlite3}: a row a
 * note and a row a source, with the concepts of a note and all their ancestors as words of a column
 * and the whole note beside them. It answers all questions in one process, so that its start does
 * not count.
 */
final class Sqlite implements Closeable {
  private static final char COLUMN = 0x1F;
  private static final char ROW = 0x1E;
  private static final String TIME = "Run Time: real ";

  private final Path folder;
  private final LargeLibrary large;
  private final Thesaurus thesaurus;
  private double built;
  private int rows;

  private Sqlite(Path folder, LargeLibrary large, Thesaurus thesaurus) {
    this.folder = folder;
    this.large = large;
    this.thesaurus = thesaurus;
  }

  static boolean isInstalled() {
    try {
      return new ProcessBuilder("sqlite3", "-version").start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  static Sqlite of(LargeLibrary large) throws Exception {
    Thesaurus thesaurus;
    try (Shelf shelf = large.open()) {
      thesaurus = shelf.thesaurus();
    }
    Sqlite sqlite = new Sqlite(Files.createTempDirectory("merese-sqlite"), large, thesaurus);
    sqlite.build();
    return sqlite;
  }

  /** A table of the page texts: a row a page. */
  static Sqlite ofPages(LargeLibrary large) throws Exception {
    Sqlite sqlite = new Sqlite(Files.createTempDirectory("merese-sqlite"), large, null);
    try (BufferedWriter out = Files.newBufferedWriter(sqlite.rowsFile())) {
      for (int number = 0; number < large.list().works(); number++) {
        for (PageText text : large.pages(number)) {
          for (int page = 1; page <= text.pages().size(); page++) {
            sqlite.row(
                out,
                String.join("\n", text.pages().get(page - 1).lines()),
                text.source() + ", " + text.map().cited(page));
          }
        }
      }
    }
    sqlite.make("words, place UNINDEXED, tokenize=unicode61");
    return sqlite;
  }

  private Path rowsFile() {
    return folder.resolve("rows");
  }

  private void build() throws Exception {
    try (BufferedWriter out = Files.newBufferedWriter(rowsFile())) {
      for (int number = 0; number < large.list().works(); number++) {
        write(large.list().work(number), out);
      }
    }
    make("printed, concept, words, whole UNINDEXED, tokenize=\"unicode61 tokenchars '-_'\"");
  }

  private void make(String columns) throws Exception {
    long before = System.nanoTime();
    run(
        List.of(
            "CREATE VIRTUAL TABLE shelf USING fts5(" + columns + ");",
            ".mode ascii",
            ".import " + rowsFile() + " shelf"));
    built = InTurns.since(before);
    Files.delete(rowsFile());
  }

  private void write(Work work, Writer out) throws IOException {
    for (Edition edition : work.editions()) {
      for (Note note : edition.notes()) {
        write(note, out);
      }
      List<String> words = new ArrayList<>(List.of(work.title()));
      work.subtitle().ifPresent(words::add);
      work.contributors().forEach(c -> words.add(c.name().full()));
      edition.imprint().publisher().ifPresent(words::add);
      words.addAll(edition.imprint().places());
      row(out, "", "", String.join(" ", words), edition.key());
    }
  }

  private void write(Note note, Writer out) throws IOException {
    Set<String> concepts = new LinkedHashSet<>();
    List<String> printed = new ArrayList<>();
    for (Naming naming : note.namings()) {
      printed.add(naming.printed());
      if (naming.concept().isPresent()) {
        String concept = naming.concept().get();
        concepts.add("is_" + concept);
        concepts.add("in_" + concept);
        thesaurus.broader(concept).forEach(broader -> concepts.add("in_" + broader));
      }
    }
    List<String> words = new ArrayList<>(printed);
    note.quotation().ifPresent(words::add);
    note.reading().ifPresent(words::add);
    note.claims().stream().map(Claim::words).forEach(words::add);
    String whole = new String(LibraryJson.encodeNote(note), StandardCharsets.UTF_8);
    row(
        out,
        String.join(" / ", printed),
        String.join(" ", concepts),
        String.join(" ", words),
        whole);
  }

  private void row(Writer out, String... columns) throws IOException {
    out.write(String.join(String.valueOf(COLUMN), columns));
    out.write(ROW);
    rows++;
  }

  /** Milliseconds that making the table took, its rows being in a file. */
  double built() {
    return built;
  }

  String inputs() throws IOException {
    return "SQLite FTS5: "
        + Report.whole(rows)
        + " rows of the same notes and sources, "
        + Report.whole(Files.size(folder.resolve("shelf.db")) >> 20)
        + " MB; one process for all questions, each match's whole note read; ranked by bm25 for"
        + " words, the best 20";
  }

  /** Milliseconds of each question; SQLite's clock has steps of one. */
  double[] covers(List<String> concepts) throws Exception {
    List<String> questions = new ArrayList<>();
    for (String concept : concepts) {
      questions.add(
          "SELECT count(*), sum(length(whole)) FROM shelf WHERE shelf MATCH '"
              + match(Drawn.groups(thesaurus, concept)).replace("'", "''")
              + "';");
    }
    return times(questions);
  }

  private static String match(List<NoteCriterion> groups) {
    List<String> concepts = new ArrayList<>();
    List<String> phrases = new ArrayList<>();
    for (NoteCriterion group : groups) {
      if (group instanceof NoteCriterion.Means means) {
        concepts.add("\"in_" + means.concept() + '"');
      } else if (group instanceof NoteCriterion.MeansExactly exactly) {
        concepts.add("\"is_" + exactly.concept() + '"');
      } else if (group instanceof NoteCriterion.Prints prints) {
        phrases.add('"' + prints.words() + '"');
      }
    }
    String matched = "concept : (" + String.join(" OR ", concepts) + ")";
    return phrases.isEmpty()
        ? matched
        : "(" + matched + ") OR (printed : (" + String.join(" OR ", phrases) + "))";
  }

  /** The same for words, the best 20 by rank. */
  double[] find(List<String> words) throws Exception {
    List<String> questions = new ArrayList<>();
    for (String each : words) {
      questions.add(
          "SELECT sum(length(whole)) FROM (SELECT whole FROM shelf WHERE shelf MATCH 'words : ("
              + String.join(" OR ", each.split(" "))
              + ")' ORDER BY rank LIMIT 20);");
    }
    return times(questions);
  }

  String pageInputs() throws IOException {
    return "SQLite FTS5: "
        + Report.whole(rows)
        + " rows of the same page texts, "
        + Report.whole(Files.size(folder.resolve("shelf.db")) >> 20)
        + " MB; one process for all questions, all of the words, ranked by bm25, the best 20 read";
  }

  /** The same for pages with all of the words. */
  double[] findPages(List<String> words) throws Exception {
    List<String> questions = new ArrayList<>();
    for (String each : words) {
      questions.add(
          "SELECT sum(length(words)) FROM (SELECT words FROM shelf WHERE shelf MATCH 'words : ("
              + String.join(" AND ", each.split(" "))
              + ")' ORDER BY rank LIMIT 20);");
    }
    return times(questions);
  }

  private double[] times(List<String> questions) throws Exception {
    List<String> all = new ArrayList<>(questions); // the first time warms the disk
    all.add(".timer on");
    all.addAll(questions);
    double[] times =
        run(all)
            .lines()
            .filter(line -> line.startsWith(TIME))
            .mapToDouble(
                line -> Double.parseDouble(line.substring(TIME.length()).split(" ")[0]) * 1_000)
            .toArray();
    if (times.length != questions.size()) {
      throw new IllegalStateException("SQLite answered " + times.length + " questions");
    }
    return times;
  }

  private String run(List<String> lines) throws IOException, InterruptedException {
    Path input = folder.resolve("input.sql");
    Path output = folder.resolve("output.txt");
    Files.write(input, lines);
    int code =
        new ProcessBuilder("sqlite3", "-batch", "shelf.db")
            .directory(folder.toFile())
            .redirectInput(input.toFile())
            .redirectOutput(output.toFile())
            .redirectErrorStream(true)
            .start()
            .waitFor();
    String said = Files.readString(output);
    if (code != 0 || said.contains("Error:")) {
      throw new IllegalStateException("sqlite3 failed: " + said);
    }
    return said;
  }

  @Override
  public void close() throws IOException {
    LargeLibrary.delete(folder);
  }
}
