package merese.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
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
import merese.answer.Script.Mark;
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
  private final Map<Source, NavigableSet<Locator>> places = new TreeMap<>(Source.BY_YEAR);

  private ReadingLists(Shelf shelf, Citations citations, Output output) {
    this.citations = citations;
    this.output = output;
    this.lines = new SourceLines();
    shelf.sources().forEach(source -> sources.put(source.key(), source));
  }

  /** Makes the list in a style and a mark-up. */
  public static ReadingList answer(
      Shelf shelf, ReadingListQuestion question, Citations citations, Output output) {
    List<CoverageQuestion> features = new ArrayList<>(question.features());
    if (question.script().isPresent()) {
      for (Mark mark : question.script().get().marks()) {
        if (mark instanceof Mark.OfTerm term && !features.contains(term.question())) {
          features.add(term.question());
        }
      }
    }
    Map<CoverageQuestion, Coverage> answers = new LinkedHashMap<>();
    for (CoverageQuestion feature : features) {
      answers.put(feature, Covers.answer(shelf, feature));
    }
    return new ReadingLists(shelf, citations, output).of(question, answers);
  }

  private ReadingList of(ReadingListQuestion question, Map<CoverageQuestion, Coverage> answers) {
    List<Chapter> chapters = new ArrayList<>();
    answers.forEach(
        (feature, answer) -> {
          for (Section section : answer.sections()) {
            chapters.add(chapter(feature, answer, section));
          }
          if (answer.sections().isEmpty()) {
            Optional<String> heading = Optional.of(answer.asked());
            chapters.add(new Chapter(heading, Optional.empty(), List.of(), unknown(answer)));
          }
        });
    List<Mark> marks = question.script().map(Script::marks).orElse(List.of());
    ScriptOrder order = ScriptOrder.of(marks, answers, sources);
    order
        .named()
        .forEach(
            (source, where) -> {
              if (!where.isEmpty() || !places.containsKey(source)) {
                places.put(source, where);
              }
            });
    return new ReadingList(
        question.arrangement() == Arrangement.BY_SOURCE
            ? List.of(allSources(question, order))
            : inOrder(chapters, order),
        question.consulted() ? consulted(answers.values()) : List.of(),
        pieces(marks),
        citations.remarks(),
        List.of(ReadingList.CAUTION));
  }

  /** Each source once: in the order of the script, then those that only a feature brings. */
  private Chapter allSources(ReadingListQuestion question, ScriptOrder order) {
    List<Source> all = new ArrayList<>(places.keySet());
    all.sort(order);
    List<Item> items = new ArrayList<>();
    all.forEach(source -> items.add(item(source, places.get(source))));
    Optional<String> why =
        !items.isEmpty()
            ? Optional.empty()
            : question.features().isEmpty()
                ? Optional.of("The script names no source.")
                : nothing(question.features().get(0));
    return new Chapter(Optional.empty(), Optional.empty(), items, why);
  }

  /** The chapters with their sources in the order of the script, and what else it names. */
  private List<Chapter> inOrder(List<Chapter> chapters, ScriptOrder order) {
    List<Chapter> ordered = new ArrayList<>();
    Map<Source, NavigableSet<Locator>> left = new TreeMap<>(order);
    left.putAll(order.named());
    for (Chapter chapter : chapters) {
      List<Item> items = new ArrayList<>(chapter.items());
      items.sort(Comparator.comparingInt(i -> order.position(sources.get(i.source().key()))));
      items.forEach(item -> left.remove(sources.get(item.source().key())));
      ordered.add(new Chapter(chapter.heading(), chapter.concept(), items, chapter.why()));
    }
    if (!left.isEmpty()) {
      List<Item> items = new ArrayList<>();
      left.forEach((source, where) -> items.add(item(source, where)));
      Optional<String> heading = Optional.of("Also in the script");
      ordered.add(new Chapter(heading, Optional.empty(), items, Optional.empty()));
    }
    return ordered;
  }

  private List<String> pieces(List<Mark> marks) {
    Set<String> pieces = new LinkedHashSet<>();
    for (Mark mark : marks) {
      if (mark instanceof Mark.OfObject piece) {
        String rest = piece.rest().isEmpty() ? "" : ", " + piece.rest();
        pieces.add(output.literal(piece.object().ref() + ", " + piece.object().title() + rest));
      }
    }
    return List.copyOf(pieces);
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

  private List<Item> consulted(Collection<Coverage> answers) {
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
