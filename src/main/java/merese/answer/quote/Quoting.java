package merese.answer.quote;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.Classifier.Classified;
import merese.answer.ConceptCoverage;
import merese.answer.Coverage.Group;
import merese.answer.NamedSource;
import merese.answer.SourceLines;
import merese.answer.Topic;
import merese.answer.quote.Quotations.Grouped;
import merese.answer.quote.Quotations.Quotation;
import merese.answer.quote.Quotations.Section;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.Note;
import merese.model.QuotedText;
import merese.shelf.Shelf;
import merese.shelf.SourcedNote;

/**
 * Quotes what notes have word for word. On a feature: the exact before the narrower, and in each by
 * year and author of the source, then in physical order; a picture adds nothing to words. What is
 * of another group is apart.
 */
public final class Quoting {
  private static final Group[] GROUPS = {
    Group.COUNTED,
    Group.HOW_IT_IS_MADE,
    Group.SAYS_NOT_SHOWN,
    Group.MEANING_NOT_STATED,
    Group.OWN_WORK
  };
  private static final String LEGEND =
      "Quotations are as they were noted. What stands in square brackets is not the source's; two"
          + " page numbers there are where a page ends.";

  private final Shelf shelf;
  private final QuoteQuestion question;
  private final QuotationMaker maker;
  private final List<NamedSource> named = new ArrayList<>();

  private Quoting(Shelf shelf, QuoteQuestion question, Citations citations, Output output) {
    this.shelf = shelf;
    this.question = question;
    this.maker = new QuotationMaker(shelf, new SourceLines(), citations, output);
    for (String key : question.sources()) {
      named.add(NamedSource.find(shelf, key));
    }
  }

  /**
   * Answers a question.
   *
   * @throws merese.answer.TermException for a term of several meanings or of none
   * @throws merese.answer.UnknownSourceException for a key that no source has
   */
  public static Quotations answer(
      Shelf shelf, QuoteQuestion question, Citations citations, Output output) {
    List<String> remarks = citations.remarks();
    return shelf.ask(asked -> new Quoting(asked, question, citations, output).answer(remarks));
  }

  private Quotations answer(List<String> remarks) {
    List<Section> sections = new ArrayList<>();
    if (question.terms().isEmpty()) {
      for (NamedSource source : named) {
        sections.add(section(source));
      }
    } else {
      for (Topic topic : Topic.of(shelf, question.terms(), question.facet())) {
        sections.add(section(topic));
      }
    }
    Quotations answer = new Quotations(sections, remarks, List.of(LEGEND));
    return answer.isEmpty() ? new Quotations(sections, List.of(), List.of()) : answer;
  }

  private Section section(Topic topic) {
    ConceptCoverage coverage = ConceptCoverage.of(shelf, topic.concept());
    List<Grouped> groups = new ArrayList<>();
    Set<String> sources = new HashSet<>();
    int count = 0;
    int without = 0;
    for (Map.Entry<Group, List<SourcedNote>> each : byGroup(coverage).entrySet()) {
      List<SourcedNote> quoted = new ArrayList<>();
      for (SourcedNote note : each.getValue()) {
        if (isWanted(note.note())) {
          quoted.add(note);
          if (!note.source().mine()) {
            sources.add(note.source().key());
          }
        } else {
          without++;
        }
      }
      quoted.sort(
          Comparator.comparing((SourcedNote n) -> !isExact(n.note(), topic.concept()))
              .thenComparing(maker.order()));
      List<Quotation> quotations = new ArrayList<>();
      for (SourcedNote note : quoted) {
        quotations.add(maker.on(note, topic.concept(), coverage.wanted()));
      }
      if (!quotations.isEmpty()) {
        groups.add(new Grouped(each.getKey(), quotations));
        count += quotations.size();
      }
    }
    return new Section(
        Optional.of(topic.heading()),
        Optional.empty(),
        question.words(),
        count,
        sources.size(),
        without,
        groups);
  }

  private Map<Group, List<SourcedNote>> byGroup(ConceptCoverage coverage) {
    Map<Group, List<SourcedNote>> notes = new EnumMap<>(Group.class);
    for (Group group : GROUPS) {
      Set<SourcedNote> of = new LinkedHashSet<>();
      for (Classified classified : coverage.in(group)) {
        if (isFrom(classified.sourced())) {
          of.add(classified.sourced());
        }
      }
      notes.put(group, List.copyOf(of));
    }
    return notes;
  }

  private static boolean isExact(Note note, String concept) {
    return note.namings().stream().anyMatch(n -> n.means(concept));
  }

  private boolean isFrom(SourcedNote note) {
    return named.isEmpty() || named.stream().anyMatch(source -> isFrom(note, source));
  }

  private static boolean isFrom(SourcedNote note, NamedSource source) {
    return note.source().equals(source.source())
        && source.part().map(p -> note.note().part().equals(Optional.of(p.id()))).orElse(true);
  }

  private boolean isWanted(Note note) {
    if (note.quotation().isEmpty()) {
      return false;
    }
    return question.words().isEmpty()
        || SaidWords.areIn(QuotedText.of(note.quotation().get()).words(), question.words().get());
  }

  private Section section(NamedSource source) {
    Map<SourcedNote, Boolean> notes = new LinkedHashMap<>();
    for (SourcedNote note : shelf.notesOf(source.source())) {
      if (isFrom(note, source)) {
        notes.put(note, isWanted(note.note()));
      }
    }
    List<Quotation> quotations =
        notes.keySet().stream()
            .filter(notes::get)
            .sorted(maker.order())
            .map(maker::ofSource)
            .toList();
    Group group = source.source().mine() ? Group.OWN_WORK : Group.COUNTED;
    return new Section(
        Optional.empty(),
        Optional.of(maker.line(source.source())),
        question.words(),
        quotations.size(),
        quotations.isEmpty() ? 0 : 1,
        notes.size() - quotations.size(),
        quotations.isEmpty() ? List.of() : List.of(new Grouped(group, quotations)));
  }
}
