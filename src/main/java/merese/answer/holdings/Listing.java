package merese.answer.holdings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import merese.answer.SourceLines;
import merese.answer.holdings.Holdings.CopyLine;
import merese.answer.holdings.Holdings.Division;
import merese.answer.holdings.Holdings.Line;
import merese.answer.holdings.Holdings.Section;
import merese.answer.pull.NaturalOrder;
import merese.model.Copy;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.vocabulary.Filing;
import merese.vocabulary.Folding;

/** Lists the sources of a library. */
public final class Listing {
  /** How many lines a page has. */
  public static final int PAGE = 200;

  private static final String NOT_HERE = "Not on the shelf";
  private static final String NO_MARK = "On the shelf, without a mark";
  private static final String WITH_OTHERS = "With others";
  private static final String NO_COPY = "No copy is known";
  private static final List<String> LAST = List.of(NO_MARK, NOT_HERE, WITH_OTHERS, NO_COPY);

  private final HoldingsQuestion question;
  private final SourceLines lines;
  private final List<Source> sources;

  /** What a line is made of, with its heading. */
  private record Row(String label, Source source, Optional<Copy> copy) {}

  private Listing(Shelf shelf, HoldingsQuestion question) {
    this.question = question;
    this.sources = shelf.sources();
    this.lines = new SourceLines();
  }

  public static Holdings answer(Shelf shelf, HoldingsQuestion question) {
    return new Listing(shelf, question).answer();
  }

  private Holdings answer() {
    List<Source> found = found();
    List<Row> rows =
        switch (question.by()) {
          case AUTHOR -> rows(found, Source.BY_AUTHOR, initials());
          case YEAR -> rows(found, Source.BY_YEAR, Listing::decade);
          case KIND ->
              rows(
                  found,
                  Comparator.comparing(Source::kind).thenComparing(Source.BY_AUTHOR),
                  source -> source.kind().words());
          case MARK -> byMark(found);
        };
    int pages = Math.max(1, (rows.size() + PAGE - 1) / PAGE);
    int page = Math.max(1, Math.min(question.page(), pages));
    return new Holdings(
        question.by(),
        question.find(),
        found.size(),
        sources.size(),
        page,
        pages,
        divisions(rows),
        sections(rows, page));
  }

  private List<Source> found() {
    List<String> wanted = Folding.words(question.find());
    List<Source> found = new ArrayList<>();
    for (Source source : sources) {
      List<String> own =
          Folding.words(source.reference() + " " + source.title() + " " + source.key());
      if (wanted.stream().allMatch(word -> own.stream().anyMatch(w -> w.startsWith(word)))) {
        found.add(source);
      }
    }
    return found;
  }

  private static List<Row> rows(
      List<Source> found, Comparator<Source> order, Function<Source, String> label) {
    return found.stream()
        .sorted(order)
        .map(source -> new Row(label.apply(source), source, Optional.empty()))
        .toList();
  }

  private static String decade(Source source) {
    return source.year().isEmpty() ? "Undated" : source.year().getAsInt() / 10 * 10 + "s";
  }

  /** The letter under which a heading files, whatever accents it has. */
  private static Function<Source, String> initials() {
    Map<String, byte[]> letters = new LinkedHashMap<>();
    for (char letter = 'a'; letter <= 'z'; letter++) {
      letters.put(
          String.valueOf((char) (letter - 'a' + 'A')),
          Filing.WORD_BY_WORD.key(String.valueOf(letter)));
    }
    letters.put("Other scripts", Filing.WORD_BY_WORD.key("α")); // in CLDR Greek follows Latin
    return source -> {
      String initial = "Figures and signs";
      byte[] filing = source.filing();
      for (Map.Entry<String, byte[]> letter : letters.entrySet()) {
        if (Filing.compare(letter.getValue(), filing) <= 0) {
          initial = letter.getKey();
        }
      }
      return initial;
    };
  }

  private static List<Row> byMark(List<Source> found) {
    List<Row> rows = new ArrayList<>();
    for (Source source : found) {
      List<Copy> copies = source.edition().copies();
      copies.forEach(copy -> rows.add(new Row(place(copy), source, Optional.of(copy))));
      if (copies.isEmpty()) {
        rows.add(new Row(NO_COPY, source, Optional.empty()));
      }
    }
    NaturalOrder natural = new NaturalOrder();
    rows.sort(
        Comparator.comparingInt((Row row) -> LAST.indexOf(row.label()))
            .thenComparing(Row::label, natural)
            .thenComparing(Listing::mark, natural)
            .thenComparing(Row::source, Source.BY_AUTHOR));
    return rows;
  }

  private static String mark(Row row) {
    return row.copy().flatMap(Copy::shelfMark).orElse("");
  }

  private static String place(Copy copy) {
    if (!copy.own()) {
      return WITH_OTHERS;
    } else if (copy.missing() || copy.lentTo().isPresent()) {
      return NOT_HERE;
    }
    return copy.shelfMark().map(Listing::shelf).orElse(NO_MARK);
  }

  /** What a mark begins with, up to its first figure: "A" of "A12". */
  private static String shelf(String mark) {
    int end = 0;
    while (end < mark.length() && !Character.isDigit(mark.charAt(end))) {
      end++;
    }
    String begins = mark.substring(0, end).strip();
    return begins.isEmpty() ? "Marks of figures" : begins;
  }

  private static List<Division> divisions(List<Row> rows) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    Map<String, Integer> pages = new LinkedHashMap<>();
    for (int i = 0; i < rows.size(); i++) {
      counts.merge(rows.get(i).label(), 1, Integer::sum);
      pages.putIfAbsent(rows.get(i).label(), i / PAGE + 1);
    }
    List<Division> divisions = new ArrayList<>();
    counts.forEach((label, count) -> divisions.add(new Division(label, count, pages.get(label))));
    return divisions;
  }

  private List<Section> sections(List<Row> rows, int page) {
    int from = (page - 1) * PAGE;
    List<Row> here = rows.subList(from, Math.min(rows.size(), from + PAGE));
    Map<String, List<Line>> byLabel = new LinkedHashMap<>();
    for (Row row : here) {
      byLabel.computeIfAbsent(row.label(), label -> new ArrayList<>()).add(line(row));
    }
    List<Section> sections = new ArrayList<>();
    for (Division division : divisions(rows)) {
      List<Line> those = byLabel.get(division.label());
      if (those != null) {
        sections.add(
            new Section(division.label(), division.count(), division.page() < page, those));
      }
    }
    return sections;
  }

  private Line line(Row row) {
    List<Copy> copies = row.copy().map(List::of).orElseGet(() -> row.source().edition().copies());
    return new Line(
        lines.of(row.source()),
        row.source().mine(),
        copies.stream().map(c -> new CopyLine(c.id(), c.shelfMark(), where(c))).toList());
  }

  private static Optional<String> where(Copy copy) {
    if (copy.missing()) {
      return Optional.of("missing");
    }
    return copy.lentTo()
        .map(name -> "lent to " + name)
        .or(() -> copy.holder().map(name -> "at " + name));
  }
}
