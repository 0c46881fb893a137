package merese.desk.list;

import gg.jte.Content;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import merese.answer.CitedSource;
import merese.answer.Citing;
import merese.answer.Coverage.SourceLine;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.FittedList;
import merese.answer.ReadingList;
import merese.answer.ReadingList.Chapter;
import merese.answer.ReadingList.Item;
import merese.answer.ReadingListQuestion;
import merese.answer.ReadingListQuestion.Arrangement;
import merese.answer.ReadingLists;
import merese.answer.Script;
import merese.citation.Citations;
import merese.citation.Output;
import merese.desk.web.FormException;
import merese.model.Locator;
import merese.shelf.Shelf;

/**
 * A reading list as its page shows it.
 *
 * @param list without what is left out; its citations are in HTML
 * @param fitted the list within a number of bytes, where that was asked for
 * @param sources all of them, also those left out, each once
 * @param remarks what the reading of the script has to say
 */
public record ListAnswer(
    ReadingList list, Optional<String> fitted, List<Chosen> sources, List<String> remarks) {

  /**
   * A source that may be left out, with the notes that cite it.
   *
   * @param entry its line in a bibliography, without places
   */
  public record Chosen(SourceLine source, boolean leftOut, List<Footnote> notes, Content entry) {}

  /**
   * A note that cites the places of one feature.
   *
   * @param heading the feature; empty where there is one list for all
   * @param full a first mention
   * @param brief a later mention
   */
  public record Footnote(
      Optional<String> heading, List<Locator> places, Content full, Content brief) {}

  /** A citation, or words with the same marks, to be shown. */
  public static Content marked(String html) {
    return new Marked(html);
  }

  static Arrangement arrangement(Question asked) {
    boolean once = asked.has("script") || asked.has("fit");
    return switch (asked.get("by")) {
      case "feature" -> asked.has("fit") ? Arrangement.BY_SOURCE : Arrangement.BY_FEATURE;
      case "source" -> Arrangement.BY_SOURCE;
      case "" -> once ? Arrangement.BY_SOURCE : Arrangement.BY_FEATURE;
      default ->
          throw new FormException("\"" + asked.get("by") + "\" is neither feature nor source");
    };
  }

  static OptionalInt limit(Question asked) {
    if (!asked.has("fit")) {
      return OptionalInt.empty();
    }
    try {
      int limit = Integer.parseInt(asked.get("fit"));
      if (limit > 0) {
        return OptionalInt.of(limit);
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw new FormException(
        "\"" + asked.get("fit") + "\" is no number of bytes; write it as 5000, or leave it empty");
  }

  static Narrowing narrowing(Question asked) {
    return new Narrowing(
        asked.has("pictured"), asked.has("owned"), Set.of(), Optional.empty(), Optional.empty());
  }

  static Citations citations(Shelf shelf, Question asked) {
    return Citations.inStyle(Styles.asked(shelf, asked), shelf.settings().language());
  }

  /** The list that is asked for, with nothing left out yet. */
  static ReadingList whole(Shelf shelf, Question asked, Output output) {
    return whole(shelf, asked, citations(shelf, asked), output);
  }

  private static ReadingList whole(
      Shelf shelf, Question asked, Citations citations, Output output) {
    ReadingListQuestion question =
        new ReadingListQuestion(
            Features.questions(shelf, asked, narrowing(asked)),
            arrangement(asked),
            asked.has("consulted") && !asked.has("fit"),
            Features.script(shelf, asked));
    return ReadingLists.answer(shelf, question, citations, output);
  }

  /** The list within the number of bytes that is asked for; empty where none is. */
  static Optional<String> fitted(Shelf shelf, Question asked) {
    OptionalInt limit = limit(asked);
    if (limit.isEmpty()) {
      return Optional.empty();
    }
    ReadingList list = whole(shelf, asked, Output.TEXT).without(out(asked));
    Optional<String> text = FittedList.of(list, limit.getAsInt());
    if (text.isEmpty()) {
      throw new FormException("not even one source fits in " + limit.getAsInt() + " bytes");
    }
    return text;
  }

  static Set<String> out(Question asked) {
    return Set.copyOf(asked.all("out"));
  }

  static ListAnswer of(Shelf shelf, Question asked) {
    Citations citations = citations(shelf, asked);
    ReadingList whole = whole(shelf, asked, citations, Output.HTML);
    Set<String> out = out(asked);
    return new ListAnswer(
        whole.without(out),
        whole.isEmpty() ? Optional.empty() : fitted(shelf, asked),
        chosen(shelf, whole, out, citations),
        Features.script(shelf, asked).map(Script::remarks).orElse(List.of()));
  }

  private static List<Chosen> chosen(
      Shelf shelf, ReadingList list, Set<String> out, Citations citations) {
    Map<String, SourceLine> lines = new LinkedHashMap<>();
    Map<String, List<Footnote>> notes = new LinkedHashMap<>();
    Map<String, Content> entries = new LinkedHashMap<>();
    List<Chapter> chapters = new ArrayList<>(list.chapters());
    chapters.add(
        new Chapter(
            Optional.of("Consulted without result"),
            Optional.empty(),
            list.consulted(),
            Optional.empty()));
    for (Chapter chapter : chapters) {
      for (Item item : chapter.items()) {
        String key = item.source().key();
        CitedSource cited = Citing.answer(shelf, key, item.places(), citations, Output.HTML);
        lines.putIfAbsent(key, item.source());
        entries.putIfAbsent(key, marked(cited.entry()));
        notes
            .computeIfAbsent(key, k -> new ArrayList<>())
            .add(
                new Footnote(
                    chapter.heading(),
                    item.places(),
                    marked(cited.note()),
                    marked(cited.shortNote())));
      }
    }
    List<Chosen> chosen = new ArrayList<>();
    lines.forEach(
        (key, line) ->
            chosen.add(new Chosen(line, out.contains(key), notes.get(key), entries.get(key))));
    return chosen;
  }
}
