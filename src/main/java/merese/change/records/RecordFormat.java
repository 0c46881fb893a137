package merese.change.records;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import merese.exchange.RecordReader;
import merese.exchange.bibtex.BibtexReader;
import merese.exchange.csl.CslJsonReader;
import merese.exchange.csv.CsvReader;
import merese.exchange.marc.MarcReader;
import merese.exchange.marc.MarcXmlReader;

/** The formats that can be brought in, and how each is told from the others by its first bytes. */
public enum RecordFormat {
  BIBTEX("bibtex", "BibTeX or BibLaTeX", BibtexReader::new),
  CSL_JSON("csl-json", "CSL-JSON", CslJsonReader::new),
  MARC("marc", "MARC 21 (ISO 2709)", MarcReader::new),
  MARCXML("marcxml", "MARCXML", MarcXmlReader::new),
  CSV("csv", "a table (CSV)", CsvReader::new),
  SKOS("skos", "a SKOS vocabulary", null),
  AAT("aat", "terms of the AAT", null);

  /** Enough to see past comments and a long header; in bytes. */
  public static final int HEAD = 1 << 16;

  private final String code;
  private final String words;
  private final Supplier<RecordReader> reader;

  RecordFormat(String code, String words, Supplier<RecordReader> reader) {
    this.code = code;
    this.words = words;
    this.reader = reader;
  }

  /** What {@code --as} calls it. */
  public String code() {
    return code;
  }

  public String words() {
    return words;
  }

  /** Whether its records describe sources; the others hold concepts. */
  public boolean holdsSources() {
    return reader != null;
  }

  public RecordReader reader() {
    return reader.get();
  }

  /** The format of a code; BibTeX and BibLaTeX are told apart by the reader. */
  public static Optional<RecordFormat> named(String code) {
    String wanted = code.equals("biblatex") ? BIBTEX.code : code;
    for (RecordFormat format : values()) {
      if (format.code.equals(wanted)) {
        return Optional.of(format);
      }
    }
    return Optional.empty();
  }

  public static List<String> codes() {
    List<String> codes = new ArrayList<>();
    for (RecordFormat format : values()) {
      codes.add(format.code);
    }
    return codes;
  }

  /**
   * Tells the format.
   *
   * @param head the first bytes of the file, {@value #HEAD} at most
   * @return empty for what is none of them
   */
  public static Optional<RecordFormat> of(byte[] head) {
    if (isMarc(head)) {
      return Optional.of(MARC);
    }
    String text = new String(head, StandardCharsets.ISO_8859_1);
    if (text.startsWith("\u00EF\u00BB\u00BF")) {
      text = text.substring(3);
    }
    text = text.replace("\0", ""); // UTF-16 of what is ASCII
    if (text.startsWith("\u00FF\u00FE") || text.startsWith("\u00FE\u00FF")) {
      text = text.substring(2);
    }
    String small = text.strip().toLowerCase(Locale.ROOT);
    if (small.isEmpty()) {
      return Optional.empty();
    }
    return switch (small.charAt(0)) {
      case '<' -> Optional.ofNullable(small.startsWith("<http") ? SKOS : xml(small));
      case '{', '[' -> Optional.of(isLinkedData(small) ? SKOS : CSL_JSON);
      default -> Optional.ofNullable(lines(small));
    };
  }

  /** A leader of ISO 2709 as MARC 21 has it: length, "22" for indicators and codes, "450". */
  private static boolean isMarc(byte[] head) {
    if (head.length < 24) {
      return false;
    }
    for (int i : new int[] {0, 1, 2, 3, 4, 12, 13, 14, 15, 16}) {
      if (head[i] < '0' || head[i] > '9') {
        return false;
      }
    }
    return head[10] == '2' && head[11] == '2' && head[20] == '4' && head[21] == '5';
  }

  private static RecordFormat xml(String text) {
    if (text.contains("<rdf:rdf") || text.contains("/02/22-rdf-syntax-ns#")) {
      return SKOS;
    }
    return text.contains("marc21/slim") || text.contains("<leader") || text.contains(":leader")
        ? MARCXML
        : null;
  }

  private static boolean isLinkedData(String text) {
    return text.contains("\"@context\"") || text.contains("\"@graph\"") || text.contains("\"@id\"");
  }

  private static RecordFormat lines(String text) {
    RecordFormat found = null;
    String first = "";
    for (String line : text.lines().map(String::strip).toList()) {
      if (line.startsWith("@prefix") || line.startsWith("@base") || line.startsWith("prefix ")) {
        return SKOS;
      } else if (isEntry(line)) {
        return BIBTEX;
      }
      first = first.isEmpty() ? line : first;
    }
    if (first.startsWith("aat_id\t")) {
      found = AAT;
    } else if (first.indexOf(',') > 0 || first.indexOf('\t') > 0 || first.indexOf(';') > 0) {
      found = CSV;
    }
    return found;
  }

  /** "@book{", with spaces where BibTeX allows them. */
  private static boolean isEntry(String line) {
    if (!line.startsWith("@")) {
      return false;
    }
    int end = 1;
    while (end < line.length() && line.charAt(end) >= 'a' && line.charAt(end) <= 'z') {
      end++;
    }
    int open = end;
    while (open < line.length() && line.charAt(open) == ' ') {
      open++;
    }
    return end > 1
        && (open == line.length() || line.charAt(open) == '{' || line.charAt(open) == '(');
  }
}
