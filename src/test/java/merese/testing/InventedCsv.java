package merese.testing;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;

/** Invented sources as a table with commas, every cell in quotation marks (RFC 4180). */
public final class InventedCsv {
  private static final List<String> COLUMNS =
      List.of(
          "key",
          "type",
          "author",
          "title",
          "year",
          "place",
          "publisher",
          "journal",
          "volume",
          "pages",
          "isbn",
          "doi",
          "language",
          "summary");

  private InventedCsv() {}

  /** Sources from a number to before another. */
  public static void write(int from, int to, Writer out) throws IOException {
    row(COLUMNS, out);
    for (int number = from; number < to; number++) {
      row(cells(InventedSource.of(number)), out);
    }
    out.flush();
  }

  private static List<String> cells(InventedSource source) {
    List<String> people = new ArrayList<>();
    for (InventedSource.Person person : source.people()) {
      people.add(person.inverted());
    }
    boolean inside = source.journal().isPresent();
    return List.of(
        source.key(),
        type(source),
        String.join("; ", people),
        source.wholeTitle(),
        Integer.toString(source.year()),
        inside ? "" : source.town(),
        inside ? "" : source.publisher(),
        inside ? InventedWords.journal(source.journal().getAsInt()) : "",
        inside ? Integer.toString(source.volume()) : "",
        inside ? source.pageRange() : "",
        source.isbn().orElse(""),
        source.doi().orElse(""),
        source.language(),
        source.summary() + (source.number() % 10 == 0 ? "\nA second line, \"so to speak\"." : ""));
  }

  private static String type(InventedSource source) {
    return switch (source.kind()) {
      case ARTICLE -> "article";
      case THESIS -> "thesis";
      case BOOK, COLLECTION, CHAPTER -> "book";
    };
  }

  private static void row(List<String> cells, Writer out) throws IOException {
    for (int i = 0; i < cells.size(); i++) {
      out.write((i == 0 ? "\"" : ",\"") + cells.get(i).replace("\"", "\"\"") + "\"");
    }
    out.write("\r\n");
  }
}
