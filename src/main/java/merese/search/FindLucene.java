package merese.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import merese.search.FindQuery.All;
import merese.search.FindQuery.Any;
import merese.search.FindQuery.Condition;
import merese.search.FindQuery.Node;
import merese.search.FindQuery.Not;
import merese.search.FindQuery.Phrase;
import merese.search.FindQuery.Required;
import merese.search.FindQuery.Words;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.ConstantScoreQuery;
import org.apache.lucene.search.PhraseQuery;
import org.apache.lucene.search.PrefixQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermInSetQuery;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.search.TermRangeQuery;
import org.apache.lucene.util.BytesRef;

/**
 * Makes Lucene's queries of a question.
 *
 * <p>What is said of a source (its author, title, publisher, year, kind and key) is asked of the
 * sources first, and their editions then stand for it: so the notes need not carry it. Only bare
 * words that are sought look into the labels of a note's concepts; phrases and excluded words look
 * into what stands in the document.
 */
final class FindLucene {
  /** How much a phrase adds to its words where it stands; a phrase once in a term of a note. */
  private static final float PHRASE = 1.5f;

  private static final int LONGEST_BONUS = 8;

  private final FindQuery asked;
  private final FindConcepts concepts;
  private final Function<Query, Set<String>> editions;

  /**
   * @param editions gives the editions whose own document meets a query
   */
  FindLucene(FindQuery asked, FindConcepts concepts, Function<Query, Set<String>> editions) {
    this.asked = asked;
    this.concepts = concepts;
    this.editions = editions;
  }

  /** What has everything. */
  Query strict() {
    return butPages(bonus(must(asked.root())));
  }

  /** Pages are found apart from all else. */
  private static Query butPages(Query query) {
    return new BooleanQuery.Builder()
        .add(query, Occur.MUST)
        .add(term(Fields.FOUND, HitKind.PAGE.code()), Occur.MUST_NOT)
        .build();
  }

  /** What has something of a plain list of words; empty where the question is none. */
  Optional<Query> loose() {
    if (!(asked.root() instanceof All all) || !all.loose()) {
      return Optional.empty();
    }
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    int optional = 0;
    for (Node node : all.nodes()) {
      if (isBare(node)) {
        Words words = (Words) node;
        for (String word : words.folded()) {
          query.add(word(words.field(), word), Occur.SHOULD);
          optional++;
        }
        if (!words.begun().isEmpty()) {
          query.add(begun(words), Occur.SHOULD);
          optional++;
        }
      } else if (node instanceof Not not) {
        query.add(standing(not.node()), Occur.MUST_NOT);
      } else {
        query.add(must(node), Occur.MUST);
      }
    }
    if (optional < 2) {
      return Optional.empty();
    }
    query.setMinimumNumberShouldMatch(1);
    return Optional.of(butPages(bonus(query.build())));
  }

  private static boolean isBare(Node node) {
    return node instanceof Words words && words.field().isEmpty();
  }

  /** Adds to the rank where the bare words stand side by side as they were typed. */
  private Query bonus(Query query) {
    List<String> run = new ArrayList<>();
    List<Node> nodes = asked.root() instanceof All all ? all.nodes() : List.of(asked.root());
    for (Node node : nodes) {
      if (isBare(node)) {
        run.addAll(((Words) node).folded());
      }
    }
    if (run.size() < 2 || run.size() > LONGEST_BONUS) {
      return query;
    }
    return new BooleanQuery.Builder()
        .add(query, Occur.MUST)
        .add(
            new BoostQuery(new ConstantScoreQuery(phrase(Optional.empty(), run)), PHRASE),
            Occur.SHOULD)
        .build();
  }

  Query must(Node node) {
    if (node instanceof Words words) {
      List<Query> all = new ArrayList<>();
      words.folded().forEach(w -> all.add(word(words.field(), w)));
      if (!words.begun().isEmpty()) {
        all.add(begun(words));
      }
      return all.size() == 1 ? all.get(0) : each(all, Occur.MUST);
    } else if (node instanceof Phrase phrase) {
      BooleanQuery.Builder query = new BooleanQuery.Builder();
      query.add(limited(phrase.field(), phrase(phrase.field(), phrase.folded())), Occur.FILTER);
      new LinkedHashSet<>(phrase.folded())
          .forEach(w -> query.add(term(Fields.ALL, w), Occur.SHOULD));
      return query.build();
    } else if (node instanceof Condition condition) {
      return new BooleanQuery.Builder().add(condition(condition), Occur.FILTER).build();
    } else if (node instanceof Required required) {
      return must(required.node());
    } else if (node instanceof Any any) {
      return each(any.nodes().stream().map(this::must).toList(), Occur.SHOULD);
    } else if (node instanceof Not not) {
      return new BooleanQuery.Builder()
          .add(new PrefixQuery(new Term(Fields.FOUND, "")), Occur.FILTER)
          .add(standing(not.node()), Occur.MUST_NOT)
          .build();
    }
    BooleanQuery.Builder query = new BooleanQuery.Builder();
    boolean sought = false;
    for (Node each : ((All) node).nodes()) {
      boolean not = each instanceof Not;
      sought |= !not;
      query.add(
          not ? standing(((Not) each).node()) : must(each), not ? Occur.MUST_NOT : Occur.MUST);
    }
    if (!sought) {
      query.add(new PrefixQuery(new Term(Fields.FOUND, "")), Occur.FILTER);
    }
    return query.build();
  }

  /** As {@link #must}, but by words that stand in the document. */
  private Query standing(Node node) {
    if (node instanceof Words words && words.field().isEmpty()) {
      List<Query> all = new ArrayList<>();
      words.folded().forEach(w -> all.add(inEach(f -> term(f, w))));
      if (!words.begun().isEmpty()) {
        all.add(inEach(f -> beginning(f, words.begun())));
      }
      return all.size() == 1 ? all.get(0) : each(all, Occur.MUST);
    } else if (node instanceof All all) {
      return each(all.nodes().stream().map(this::standing).toList(), Occur.MUST);
    } else if (node instanceof Any any) {
      return each(any.nodes().stream().map(this::standing).toList(), Occur.SHOULD);
    } else if (node instanceof Required required) {
      return standing(required.node());
    }
    return must(node);
  }

  private Query word(Optional<FindField> field, String word) {
    if (field.isEmpty()) {
      return term(Fields.ALL, word);
    }
    return ranked(limited(field, term(field.get().indexField(), word)), word);
  }

  private Query begun(Words words) {
    return words.field().isEmpty()
        ? beginning(Fields.ALL, words.begun())
        : limited(words.field(), beginning(words.field().get().indexField(), words.begun()));
  }

  /** A field limits; the rank is that of the word wherever it stands. */
  private static Query ranked(Query limit, String word) {
    return new BooleanQuery.Builder()
        .add(limit, Occur.FILTER)
        .add(term(Fields.ALL, word), Occur.SHOULD)
        .build();
  }

  private Query limited(Optional<FindField> field, Query query) {
    return field.isPresent() && field.get().ofSources() ? ofSources(query) : query;
  }

  private Query phrase(Optional<FindField> field, List<String> words) {
    String[] folded = words.toArray(String[]::new);
    return field.isPresent()
        ? new PhraseQuery(field.get().indexField(), folded)
        : inEach(f -> new PhraseQuery(f, folded));
  }

  private static Query inEach(Function<String, Query> query) {
    Set<String> fields = new LinkedHashSet<>();
    for (Part part : Part.values()) {
      if (part.stands()) {
        fields.add(part.field());
      }
    }
    return each(fields.stream().map(query).toList(), Occur.SHOULD);
  }

  private static Query beginning(String field, List<String> begun) {
    return each(
        begun.stream().<Query>map(b -> new PrefixQuery(new Term(field, b))).toList(), Occur.SHOULD);
  }

  Query condition(Condition condition) {
    String value = condition.value();
    return switch (condition.field()) {
      case YEAR -> {
        int dots = value.indexOf("..");
        yield ofSources(
            TermRangeQuery.newStringRange(
                Fields.YEAR,
                open(value.substring(0, dots)),
                open(value.substring(dots + 2)),
                true,
                true));
      }
      case KIND -> ofSources(term(Fields.KIND, value));
      case SOURCE -> source(condition);
      case PICTURE -> term(Fields.PICTURED, value);
      case IS -> term(Fields.FOUND, value);
      case CONCEPT -> {
        Set<String> ids = concepts.of(condition);
        List<Query> meanings = new ArrayList<>();
        for (String id : ids) {
          meanings.add(term(Fields.MEANING, id));
        }
        meanings.add(in(Fields.ABOUT, concepts.withNarrower(ids)));
        yield each(meanings, Occur.SHOULD);
      }
      default -> throw new IllegalArgumentException(condition.field() + " is a text");
    };
  }

  private static String open(String year) {
    return year.isEmpty() ? null : year;
  }

  private Query source(Condition condition) {
    String key = condition.value();
    Query query =
        key.endsWith("*")
            ? new PrefixQuery(new Term(Fields.EDITION, key.substring(0, key.length() - 1)))
            : term(Fields.EDITION, key);
    Set<String> found = editions.apply(query);
    if (found.isEmpty()) {
      throw new FindQueryException(
          asked.text(),
          condition.start(),
          "no source has the key \"" + FindConditions.shown(key) + "\"",
          NearNames.remedy(key, editions.apply(new PrefixQuery(new Term(Fields.EDITION, "")))));
    }
    return in(Fields.EDITION, found);
  }

  private Query ofSources(Query query) {
    return in(Fields.EDITION, editions.apply(query));
  }

  private static Query in(String field, Collection<String> values) {
    return new TermInSetQuery(field, values.stream().map(BytesRef::new).toList());
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
