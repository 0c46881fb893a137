package merese.testing;

import java.io.IOException;
import java.io.Writer;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Invented sources as a BibTeX file: strings, months and concatenations, values in braces and in
 * quotes, cross-references to what comes later, comments, and accents as LaTeX has them in every
 * second entry, as they are in the others.
 */
public final class InventedBibtex {
  private static final int JOURNALS = 150;

  private static final Map<Character, String> ACCENTS =
      Map.of(
          '\u0301', "'", '\u0300', "`", '\u0302', "^", '\u0308', "\"", '\u0303', "~", '\u030c', "v",
          '\u0327', "c", '\u030a', "r", '\u030b', "H", '\u0304', "=");

  private static final Map<Character, String> LETTERS =
      Map.of(
          'ß', "{\\ss}", 'æ', "{\\ae}", 'Æ', "{\\AE}", 'ø', "{\\o}", 'Ø', "{\\O}", 'ł', "{\\l}",
          'Ł', "{\\L}", '&', "\\&");

  private final Writer out;

  private InventedBibtex(Writer out) {
    this.out = out;
  }

  /** Sources from a number to before another. */
  public static void write(int from, int to, Writer out) throws IOException {
    InventedBibtex bibtex = new InventedBibtex(out);
    bibtex.start();
    for (int number = from; number < to; number++) {
      bibtex.entry(InventedSource.of(number), to);
    }
    out.flush();
  }

  private void start() throws IOException {
    out.write("A bibliography of nothing.\n\n@preamble{ \"\\newcommand{\\nop}[1]{}\" }\n");
    for (int rank = 0; rank < JOURNALS; rank++) {
      out.write("@string{j" + rank + " = {" + latex(InventedWords.journal(rank)) + "}}\n");
    }
  }

  private void entry(InventedSource source, int to) throws IOException {
    boolean asLatex = source.number() % 2 == 0;
    List<String> fields = new ArrayList<>();
    String people = people(source);
    boolean edited = source.kind() == InventedSource.Kind.COLLECTION;
    fields.add((edited ? "editor = {" : "author = {") + text(people, asLatex) + "}");
    fields.add("title = {" + text(source.wholeTitle(), asLatex) + "}");
    boolean inside = source.collection().isPresent() && source.collection().getAsInt() < to;
    if (inside) {
      fields.add("crossref = {s" + source.collection().getAsInt() + "}");
    } else {
      fields.add("year = " + source.year());
    }
    switch (source.kind()) {
      case ARTICLE -> {
        fields.add("journal = j" + source.journal().getAsInt() + " # { (n.s.)}");
        fields.add("volume = \"" + source.volume() + "\"");
        fields.add("month = " + (source.number() % 3 == 0 ? "jan" : "oct # {~} # nov"));
      }
      case THESIS -> fields.add("school = {" + text(source.publisher(), asLatex) + "}");
      case CHAPTER -> {
        if (!inside) {
          fields.add("booktitle = {" + text(source.publisher(), asLatex) + "}");
        }
      }
      default -> {
        fields.add("publisher = \"" + text(source.publisher(), asLatex) + "\"");
        fields.add("address = {" + text(source.town(), asLatex) + "}");
      }
    }
    if (edited) {
      fields.add("booktitle = {" + text(source.wholeTitle(), asLatex) + "}");
    }
    if (source.collection().isPresent() || source.journal().isPresent()) {
      fields.add("pages = {" + source.pageRange().replace("-", "--") + "}");
    }
    source.isbn().ifPresent(isbn -> fields.add("isbn = {" + isbn + "}"));
    source.doi().ifPresent(doi -> fields.add("doi = {" + doi + "}"));
    fields.add("language = {" + source.language() + "}");
    fields.add("abstract = {" + text(source.summary(), asLatex) + "}");
    fields.add("shelf = {" + source.number() + "}");
    out.write("@" + type(source) + "{" + source.key() + ",\n  ");
    out.write(String.join(",\n  ", fields));
    out.write("\n}\n" + (source.number() % 50 == 0 ? "@comment{to be checked}\n" : ""));
  }

  private static String type(InventedSource source) {
    return switch (source.kind()) {
      case BOOK, COLLECTION -> "book";
      case ARTICLE -> "Article";
      case CHAPTER -> "incollection";
      case THESIS -> "PHDTHESIS";
    };
  }

  private static String people(InventedSource source) {
    List<String> people = new ArrayList<>();
    for (InventedSource.Person person : source.people()) {
      people.add(person.inverted());
    }
    return String.join(" and ", people);
  }

  private static String text(String text, boolean asLatex) {
    return asLatex ? latex(text) : text.replace("&", "\\&");
  }

  /** Accents as commands: é as \'{e}, ß as {\ss}. */
  static String latex(String text) {
    StringBuilder latex = new StringBuilder();
    String apart = Normalizer.normalize(text, Normalizer.Form.NFD);
    for (int i = 0; i < apart.length(); i++) {
      char c = apart.charAt(i);
      String accent = i + 1 < apart.length() ? ACCENTS.get(apart.charAt(i + 1)) : null;
      if (accent != null) {
        latex.append("{\\").append(accent).append('{').append(c == 'i' ? "\\i" : c).append("}}");
        i++;
      } else {
        String letter = LETTERS.get(c);
        latex.append(letter == null ? String.valueOf(c) : letter);
      }
    }
    return latex.toString();
  }
}
