package merese.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.search.FindQuery.All;
import merese.search.FindQuery.Any;
import merese.search.FindQuery.Condition;
import merese.search.FindQuery.Node;
import merese.search.FindQuery.Not;
import merese.search.FindQuery.Phrase;
import merese.search.FindQuery.Required;
import merese.search.FindQuery.Words;
import merese.vocabulary.MisreadWords;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.MatchNoDocsQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;

/**
 * Makes of a question the query for pages. A page has to have all of it: with some of the words
 * there would be every page. Words count by how they stand there: as typed, or only loosely, where
 * letters were taken for others. What can be said of notes alone no page has.
 */
final class PageQuery {
  static final int EXACT = 10;
  static final int LOOSE = 1;
  static final int SIDE_BY_SIDE = 5;
  private static final int LONGEST_BONUS = 8;

  private final FindLucene sources;
  private final FindConcepts concepts;

  PageQuery(FindLucene sources, FindConcepts concepts) {
    this.sources = sources;
    this.concepts = concepts;
  }

  /** Whether a question looks for anything that stands on a page. */
  static boolean looksForWords(FindQuery asked) {
    return !asked.sought().isEmpty() || hasConcept(asked.root());
  }

  private static boolean hasConcept(Node node) {
    if (node instanceof All all) {
      return all.nodes().stream().anyMatch(PageQuery::hasConcept);
    } else if (node instanceof Any any) {
      return any.nodes().stream().anyMatch(PageQuery::hasConcept);
    } else if (node instanceof Required required) {
      return hasConcept(required.node());
    }
    return node instanceof Condition condition && condition.field() == FindField.CONCEPT;
  }

  /** What finds the pages, and scores all but words side by side. */
  Query of(Node root) {
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    query.add(must(root), Occur.MUST);
    query.add(term(Fields.FOUND, HitKind.PAGE.code()), Occur.FILTER);
    return query.build();
  }

  /** What finds all words of a question side by side, which is worth more; empty for one word. */
  Optional<Query> sideBySide(Node root) {
    List<String> run = new ArrayList<>();
    for (Node node : root instanceof All all ? all.nodes() : List.of(root)) {
      if (node instanceof Words words && words.field().isEmpty()) {
        run.addAll(words.folded());
      }
    }
    return run.size() > 1 && run.size() <= LONGEST_BONUS
        ? Optional.of(phrase(Fields.PAGE, run))
        : Optional.empty();
  }

  private Query must(Node node) {
    if (node instanceof Words words) {
      if (words.field().isPresent()) {
        return words.field().get().ofSources() ? sources.must(words) : new MatchNoDocsQuery();
      }
      List<Query> all = new ArrayList<>();
      words.folded().forEach(w -> all.add(standing(List.of(w))));
      if (!words.begun().isEmpty()) {
        List<Query> begun = new ArrayList<>();
        words.begun().forEach(b -> begun.add(new PrefixQuery(new Term(Fields.PAGE, b))));
        all.add(scored(EXACT, each(begun, Occur.SHOULD)));
      }
      Query onThePage = all.size() == 1 ? all.get(0) : each(all, Occur.MUST);
      return words.begun().isEmpty() ? orOverTheEnd(onThePage, words.folded()) : onThePage;
    } else if (node instanceof Phrase phrase) {
      if (phrase.field().isPresent()) {
        return phrase.field().get().ofSources() ? sources.must(phrase) : new MatchNoDocsQuery();
      }
      return orOverTheEnd(standing(phrase.folded()), phrase.folded());
    } else if (node instanceof Condition condition) {
      return new ConstantScoreQuery(condition(condition));
    } else if (node instanceof Required required) {
      return must(required.node());
    } else if (node instanceof Any any) {
      return each(any.nodes().stream().map(this::must).toList(), Occur.SHOULD);
    } else if (node instanceof Not not) {
      return butNot(List.of(not));
    }
    List<Not> excluded = new ArrayList<>();
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    List<Query> words = new ArrayList<>();
    List<String> run = new ArrayList<>();
    for (Node each : ((All) node).nodes()) {
      if (each instanceof Not not) {
        excluded.add(not);
      } else if (each instanceof Words plain
          && plain.field().isEmpty()
          && plain.begun().isEmpty()) {
        words.add(must(plain));
        run.addAll(plain.folded());
      } else {
        query.add(must(each), Occur.MUST);
      }
    }
    if (!words.isEmpty()) {
      query.add(orOverTheEnd(each(words, Occur.MUST), run), Occur.MUST);
    }
    if (!excluded.isEmpty()) {
      query.add(butNot(excluded), Occur.FILTER);
    }
    return query.build();
  }

  private Query butNot(List<Not> excluded) {
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    query.add(term(Fields.FOUND, HitKind.PAGE.code()), Occur.FILTER);
    excluded.forEach(not -> query.add(must(not.node()), Occur.MUST_NOT));
    return query.build();
  }

  private Query condition(Condition condition) {
    return switch (condition.field()) {
      case CONCEPT -> {
        List<Query> names = new ArrayList<>();
        concepts.of(condition).forEach(id -> names.add(term(Fields.PAGE_NAMES, id)));
        yield each(names, Occur.SHOULD);
      }
      case PICTURE -> new MatchNoDocsQuery();
      default -> sources.condition(condition);
    };
  }

  /** Words side by side; what has them exactly has them loosely too. */
  static Query standing(List<String> words) {
    List<String> loose = new ArrayList<>();
    words.forEach(w -> loose.add(MisreadWords.loose(w)));
    return each(
        List.of(
            scored(EXACT * words.size(), phrase(Fields.PAGE, words)),
            scored(LOOSE * words.size(), phrase(Fields.PAGE_LOOSE, loose))),
        Occur.SHOULD);
  }

  /** The words side by side with the end of the page between; what is on a page goes before it. */
  private static Query orOverTheEnd(Query onThePage, List<String> words) {
    if (!OverPageEnd.canBe(words)) {
      return onThePage;
    }
    Query over = term(Fields.PAGE_END, OverPageEnd.term(words));
    return each(List.of(onThePage, scored(EXACT, over)), Occur.SHOULD);
  }

  private static Query phrase(String field, List<String> words) {
    return words.size() == 1
        ? term(field, words.get(0))
        : new PhraseQuery(field, words.toArray(String[]::new));
  }

  private static Query scored(float score, Query query) {
    return new BoostQuery(new ConstantScoreQuery(query), score);
  }

  private static Query term(String field, String value) {
    return new TermQuery(new Term(field, Fields.bounded(value)));
  }

  private static Query each(List<Query> queries, Occur occur) {
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    queries.forEach(q -> query.add(q, occur));
    return query.build();
  }
}
