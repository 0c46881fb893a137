package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import merese.answer.Coverage.Checked;
import merese.answer.Coverage.Entry;
import merese.answer.Coverage.Group;
import merese.answer.Coverage.Section;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.ReadingList.Chapter;
import merese.answer.ReadingList.Item;
import merese.answer.ReadingListQuestion.Arrangement;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.Locator;
import merese.shelf.Shelf;
import merese.shelf.Source;

/** Cites what {@link Covers} counts; nothing else gets into a list. */
public final class ReadingLists {
  private final Citations citations;
  private final Output output;
  private final SourceLines lines;
  private final Map<String, Source> sources = new LinkedHashMap<>();
  private final Map<Source, TreeSet<Locator>> places = new TreeMap<>(Source.BY_YEAR);

  private ReadingLists(Shelf shelf, Citations citations, Output output) {
    this.citations = citations;
    this.output = output;
    this.lines = new SourceLines(shelf.sources());
    shelf.sources().forEach(source -> sources.put(source.key(), source));
  }

  /** Makes the list in a style and a mark-up. */
  public static ReadingList answer(
      Shelf shelf, ReadingListQuestion question, Citations citations, Output output) {
    List<Coverage> answers = new ArrayList<>();
    for (CoverageQuestion feature : question.features()) {
      answers.add(Covers.answer(shelf, feature));
    }
    return new ReadingLists(shelf, citations, output).of(question, answers);
  }

  private ReadingList of(ReadingListQuestion question, List<Coverage> answers) {
    List<Chapter> chapters = new ArrayList<>();
    for (int i = 0; i < answers.size(); i++) {
      Coverage answer = answers.get(i);
      for (Section section : answer.sections()) {
        chapters.add(chapter(question.features().get(i), answer, section));
      }
      if (answer.sections().isEmpty()) {
        chapters.add(
            new Chapter(Optional.of(answer.asked()), Optional.empty(), List.of(), unknown(answer)));
      }
    }
    if (question.arrangement() == Arrangement.BY_SOURCE) {
      List<Item> all = new ArrayList<>();
      places.forEach((source, where) -> all.add(item(source, where)));
      Optional<String> why = all.isEmpty() ? nothing(question.features().get(0)) : Optional.empty();
      chapters = List.of(new Chapter(Optional.empty(), Optional.empty(), all, why));
    }
    return new ReadingList(
        chapters,
        question.consulted() ? consulted(answers) : List.of(),
        citations.remarks(),
        List.of(ReadingList.CAUTION));
  }

  private Chapter chapter(CoverageQuestion asked, Coverage answer, Section section) {
    List<Item> items = new ArrayList<>();
    List<Entry> entries = new ArrayList<>(section.group(Group.COUNTED));
    entries.addAll(section.group(Group.SAME_FEATURE));
    for (Entry entry : entries) {
      Source source = sources.get(entry.source().key());
      TreeSet<Locator> where = new TreeSet<>();
      entry
          .passages()
          .forEach(
              passage -> {
                where.addAll(passage.pictured());
                where.addAll(passage.inWords());
              });
      entry.conflicts().forEach(conflict -> conflict.text().ifPresent(where::add));
      places.computeIfAbsent(source, s -> new TreeSet<>()).addAll(where);
      items.add(item(source, where));
    }
    String heading =
        section.letter().isPresent()
            ? answer.asked() + ": " + section.heading().label()
            : section.heading().label();
    return new Chapter(
        Optional.of(heading),
        Optional.of(section.heading().id()),
        items,
        items.isEmpty() ? nothing(asked) : Optional.empty());
  }

  /** What a list without a source says, true of what the question left out as well. */
  private static Optional<String> nothing(CoverageQuestion question) {
    Narrowing narrowing = question.narrowing();
    boolean chosen =
        narrowing.owned()
            || !narrowing.kinds().isEmpty()
            || narrowing.years().isPresent()
            || narrowing.place().isPresent();
    return Optional.of(
        (chosen ? "None of the sources asked for" : "No source in this library")
            + (narrowing.pictured() ? " pictures it." : " covers it."));
  }

  private static Optional<String> unknown(Coverage answer) {
    if (!answer.meaningNotStated().isEmpty()) {
      List<String> printing = new ArrayList<>();
      answer.meaningNotStated().forEach(entry -> printing.add(entry.source().reference()));
      return Optional.of(
          "No note says what it means; it is printed by " + String.join("; ", printing) + ".");
    }
    String near =
        answer.nearTerms().isEmpty()
            ? ""
            : " Near it: " + String.join("; ", answer.nearTerms()) + ".";
    return Optional.of("No word of the vocabulary, and no note prints it." + near);
  }

  private Item item(Source source, Collection<Locator> where) {
    List<Locator> inOrder = List.copyOf(where);
    return new Item(lines.of(source), inOrder, citations.note(cited(source), inOrder, output));
  }

  private List<Item> consulted(List<Coverage> answers) {
    TreeMap<Source, Item> consulted = new TreeMap<>(Source.BY_YEAR);
    for (Coverage answer : answers) {
      for (Checked checked : answer.checked()) {
        Source source = sources.get(checked.source().key());
        if (!places.containsKey(source)) {
          consulted.put(source, item(source, List.of()));
        }
      }
    }
    return List.copyOf(consulted.values());
  }

  private static merese.citation.Source cited(Source source) {
    return merese.citation.Source.of(source.work(), source.edition());
  }
}
