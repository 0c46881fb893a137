package merese.exchange.skos;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.exchange.FilePlace;
import merese.exchange.UnreadableException;

/**
 * Concepts of the Art &amp; Architecture Thesaurus with their terms, as a table: the concept's
 * number, the thesaurus's facet, and the terms with bars between, the preferred one first. The
 * columns stand apart by tabs and are named by the first line; lines that begin with "#" are passed
 * over.
 *
 * @param concepts in the order of the file, each number once
 */
public record AatTerms(List<AatConcept> concepts) {
  /** What a concept's number is put behind to make its address. */
  public static final String ADDRESS = "http://vocab.getty.edu/aat/";

  /** To be printed with whatever is made from the thesaurus. */
  public static final String LICENCE_NOTICE =
      "This contains information from the Art & Architecture Thesaurus (AAT)®, which is made"
          + " available under the ODC Attribution License (ODC-By 1.0).";

  private static final int LARGEST = 64;
  private static final int LONGEST = 1 << 16;

  /** Of a cell that a message names. */
  private static final int SHOWN = 40;

  private static final List<String> COLUMNS = List.of("aat_id", "facet", "terms");

  public AatTerms {
    concepts = List.copyOf(concepts);
  }

  /**
   * @param id a number of nine figures that begins with 300
   * @param facet as the table names it; may be empty
   * @param terms at least one
   */
  public record AatConcept(String id, String facet, List<String> terms) {
    public AatConcept {
      terms = List.copyOf(terms);
    }

    public String uri() {
      return ADDRESS + id;
    }

    public String preferred() {
      return terms.get(0);
    }
  }

  /**
   * The number in an address of the thesaurus, whatever its scheme, and whether it is the concept's
   * own or that of the page about it; empty for any other address.
   */
  public static Optional<String> idOf(String uri) {
    for (String scheme : List.of("http://", "https://")) {
      for (String path : List.of("vocab.getty.edu/aat/", "vocab.getty.edu/page/aat/")) {
        if (uri.startsWith(scheme + path)) {
          String id = uri.substring(scheme.length() + path.length());
          id = id.endsWith("/") ? id.substring(0, id.length() - 1) : id;
          return isId(id) ? Optional.of(id) : Optional.empty();
        }
      }
    }
    return Optional.empty();
  }

  public static boolean isId(String text) {
    return text.length() == 9
        && text.startsWith("300")
        && text.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  /**
   * @param file as the user named it
   * @throws UnreadableException at the first line that is not as it should be
   */
  public static AatTerms read(String file, InputStream in) throws IOException {
    InputStream checked =
        new Utf8Stream(new Limited(in, file, "a table of terms", LARGEST), file, "a table");
    BufferedReader reader =
        new BufferedReader(new InputStreamReader(checked, StandardCharsets.UTF_8));
    return new Table(file).read(reader);
  }

  private static final class Table {
    private final String file;
    private final List<AatConcept> concepts = new ArrayList<>();
    private final Map<String, Integer> lines = new HashMap<>();
    private int line;
    private boolean headed;

    private Table(String file) {
      this.file = file;
    }

    private AatTerms read(BufferedReader in) throws IOException {
      for (String text = in.readLine(); text != null; text = in.readLine()) {
        line++;
        String row = line == 1 && text.startsWith("\uFEFF") ? text.substring(1) : text;
        if (row.length() > LONGEST) {
          throw fault(1, "the line is longer than " + LONGEST + " characters", "split the table");
        }
        if (!row.isBlank() && !row.startsWith("#")) {
          if (headed) {
            row(row);
          } else {
            head(row);
          }
        }
      }
      if (!headed) {
        throw fault(1, "the table is empty", "its first line names its columns: " + names());
      }
      return new AatTerms(concepts);
    }

    private void head(String row) {
      String[] cells = row.split("\t", -1);
      int column = 1;
      for (int i = 0; i < COLUMNS.size(); i++) {
        String cell = i < cells.length ? cells[i].strip() : "";
        if (!cell.equals(COLUMNS.get(i)) && !cell.startsWith(COLUMNS.get(i) + " ")) {
          throw fault(
              column,
              "the first line has " + shown(cell) + " where \"" + COLUMNS.get(i) + "\" is to stand",
              "name the columns " + names() + ", with tabs between");
        }
        column += columns(cells[i]) + 1;
      }
      headed = true;
    }

    private void row(String row) {
      String[] cells = row.split("\t", -1);
      if (cells.length != COLUMNS.size()) {
        throw fault(
            1,
            "the line has " + cells.length + " columns instead of " + COLUMNS.size(),
            "put one tab between " + names() + ", and none elsewhere");
      }
      String id = cells[0].strip();
      if (!isId(id)) {
        throw fault(
            1,
            shown(id) + " is no number of the thesaurus",
            "it has nine figures and begins with 300");
      }
      Integer first = lines.putIfAbsent(id, line);
      if (first != null) {
        throw fault(1, id + " stands in line " + first + " already", "make one line of the two");
      }
      int column = columns(cells[0]) + columns(cells[1]) + 3;
      List<String> terms = new ArrayList<>();
      for (String term : cells[2].split("\\|", -1)) {
        if (term.isBlank()) {
          throw fault(column, "a term is missing", "put a term before and after each bar");
        }
        terms.add(term.strip());
        column += columns(term) + 1;
      }
      concepts.add(new AatConcept(id, cells[1].strip(), terms));
    }

    /** In quotation marks; cut, and without controls, since the file may be anything. */
    private static String shown(String cell) {
      String text = cell.replaceAll("\\p{Cc}", "\ufffd");
      int end = Math.min(SHOWN, text.codePointCount(0, text.length()));
      String start = text.substring(0, text.offsetByCodePoints(0, end));
      return '"' + start + (start.equals(text) ? "" : "…") + '"';
    }

    private static String names() {
      return String.join(", ", COLUMNS);
    }

    private static int columns(String text) {
      return text.codePointCount(0, text.length());
    }

    private UnreadableException fault(int column, String what, String remedy) {
      return new UnreadableException(
          new FilePlace(file, Math.max(1, line), column, 0), what, remedy);
    }
  }
}
