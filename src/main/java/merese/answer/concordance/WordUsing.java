package merese.answer.concordance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.Choice;
import merese.answer.Coverage.Heading;
import merese.answer.SourceLines;
import merese.answer.Topic;
import merese.shelf.Shelf;

/** Answers which word means what for whom. */
public final class WordUsing {
  private WordUsing() {}

  /**
   * Answers for terms or facets. A term of several meanings stands for all of them, since which
   * source means which is what is asked.
   *
   * @throws merese.answer.TermException for a term of no meaning
   */
  public static WordUses answer(Shelf shelf, List<String> terms) {
    return shelf.ask(asked -> of(asked, terms));
  }

  private static WordUses of(Shelf shelf, List<String> terms) {
    List<Choice> choices = Choice.among(shelf, terms, true);
    List<String> settled = new ArrayList<>();
    for (String term : terms) {
      List<String> meanings = new ArrayList<>();
      for (Choice choice : choices) {
        if (choice.term().equals(term)) {
          choice.meanings().forEach(m -> meanings.add(m.id()));
        }
      }
      settled.addAll(meanings.isEmpty() ? List.of(term) : meanings);
    }
    Map<String, Heading> concepts = new LinkedHashMap<>();
    for (Topic topic : Topic.withFacets(shelf, settled, Optional.empty())) {
      concepts.put(topic.concept(), topic.heading());
    }
    List<Use> exact =
        new Uses(shelf, concepts.keySet()).covering.stream().filter(Use::isExact).toList();
    WordsMaker maker = new WordsMaker(shelf, new SourceLines(), new WordKeys(shelf.thesaurus()));
    return new WordUses(terms, choices, List.copyOf(concepts.values()), maker.of(exact));
  }
}
