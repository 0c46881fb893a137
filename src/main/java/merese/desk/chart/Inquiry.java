package merese.desk.chart;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import merese.answer.Choice;
import merese.answer.TermException;
import merese.answer.UnknownConceptException;
import merese.desk.look.Noted;
import merese.desk.web.FormException;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Site;
import merese.model.Facet;
import merese.model.Homonym;
import merese.shelf.Shelf;

/**
 * A question about some terms, and how far it has come.
 *
 * @param address of the page
 * @param more what else the address asks, each part with its "&" before it
 * @param labels what stands for a term that is a concept's id
 * @param facets those that a term may be; none where a facet can't be asked about
 * @param choices what has to be settled before there is an answer
 * @param problem what is wrong with the question
 * @param answer empty while nothing is asked, or the question has to be put otherwise
 * @param examples words of this library to begin with
 */
public record Inquiry<A>(
    String address,
    Terms terms,
    String more,
    Map<String, String> labels,
    List<String> facets,
    List<Choice> choices,
    Optional<String> problem,
    Optional<A> answer,
    List<String> examples) {
  private static final int EXAMPLES = 8;

  /** Which terms a page takes. */
  enum Takes {
    CONCEPTS,
    /** A facet stands for all its concepts. */
    FACETS,
    /** A word of several meanings stands for all of them. */
    FACETS_AND_WORDS
  }

  /** Asks the shelf, unless there is something to settle first. */
  static <A> Inquiry<A> of(
      Shelf shelf,
      String address,
      Terms terms,
      String more,
      Takes takes,
      Function<Shelf, A> question) {
    List<Choice> choices = List.of();
    Optional<String> problem = Optional.empty();
    Optional<A> answer = Optional.empty();
    if (!terms.isEmpty()) {
      if (takes != Takes.FACETS_AND_WORDS) {
        choices = Choice.among(shelf, terms.all(), takes == Takes.FACETS);
      }
      if (choices.isEmpty()) {
        try {
          answer = Optional.of(question.apply(shelf));
        } catch (TermException | UnknownConceptException | FormException e) {
          problem = Optional.of(e.getMessage());
        }
      }
    }
    return new Inquiry<>(
        address,
        terms,
        more,
        labels(shelf, terms),
        takes == Takes.CONCEPTS ? List.of() : facets(shelf),
        choices,
        problem,
        answer,
        terms.isEmpty() ? examples(shelf, takes) : List.of());
  }

  private static Map<String, String> labels(Shelf shelf, Terms terms) {
    Map<String, String> labels = new LinkedHashMap<>();
    for (String term : terms.all()) {
      boolean known = shelf.thesaurus().concept(term).isPresent();
      labels.put(term, known ? shelf.thesaurus().label(term) : term);
    }
    return labels;
  }

  private static List<String> facets(Shelf shelf) {
    List<String> names = new ArrayList<>();
    for (Facet facet : shelf.thesaurus().facets()) {
      names.add(facet.headNoun().orElse(facet.id()));
    }
    return names;
  }

  /** What the user has an opinion on; where words are asked about, those of several meanings. */
  private static List<String> examples(Shelf shelf, Takes takes) {
    Set<String> words = new LinkedHashSet<>();
    if (takes == Takes.FACETS_AND_WORDS) {
      shelf.thesaurus().register().stream()
          .map(Homonym::word)
          .filter(word -> Noted.isPrinted(shelf, word))
          .forEach(words::add);
    }
    words.addAll(Noted.labels(shelf));
    words.addAll(Noted.labels(shelf, EXAMPLES));
    words.removeIf(word -> takes != Takes.FACETS_AND_WORDS && isUnsettled(shelf, word));
    List<String> first = new ArrayList<>(words);
    return first.subList(0, Math.min(first.size(), EXAMPLES));
  }

  private static boolean isUnsettled(Shelf shelf, String word) {
    return !Choice.among(shelf, List.of(word), false).isEmpty();
  }

  /** Shows it; a question that is wrong comes back with what was typed. */
  void show(Site site, Context request, Tab tab, String template, Object model) {
    String title = terms.isEmpty() ? tab.label() : tab.label() + ": " + named();
    if (problem.isPresent()) {
      site.refuse(request, tab, title, template, model);
    } else {
      site.show(request, tab, title, template, model);
    }
  }

  /** The terms as one reads them. */
  public String named() {
    return String.join("; ", labels.values());
  }

  /** The address of the same question, where a term means one thing. */
  public String settled(Choice choice, String id) {
    return address + "?" + terms.with(choice.term(), id).query() + more;
  }

  /** The same question put to another page. */
  public String at(String other) {
    return other + "?" + terms.query();
  }

  /** What has to be in the address for a record. */
  static void mustAsk(Terms terms) {
    if (terms.isEmpty()) {
      throw new FormException("nothing is asked: name a term, as in ?term=…");
    }
  }
}
