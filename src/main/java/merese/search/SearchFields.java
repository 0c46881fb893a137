package merese.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import merese.search.Searchable.Words;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.Field.Store;
import org.apache.lucene.document.FieldType;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.IndexOptions;

/**
 * Adds to a document what it is found by. Each text is split once; its words go with their
 * positions into the field of their part, for phrases, and weighted into {@link Fields#ALL}, for
 * the ranking. Offsets are not kept: the few texts that are shown are split again.
 */
final class SearchFields {
  private static final FieldType WITH_POSITIONS = type(IndexOptions.DOCS_AND_FREQS_AND_POSITIONS);
  private static final FieldType WEIGHTED = type(IndexOptions.DOCS_AND_FREQS);
  private static final FoldedText TEXT = new FoldedText();

  private SearchFields() {}

  private static FieldType type(IndexOptions options) {
    FieldType type = new FieldType();
    type.setTokenized(true);
    type.setIndexOptions(options);
    type.setOmitNorms(options != IndexOptions.DOCS_AND_FREQS);
    type.freeze();
    return type;
  }

  /**
   * @param edition empty for what is of none
   */
  static void add(Document document, HitKind kind, String edition, Searchable by) {
    Map<String, List<List<String>>> fields = new LinkedHashMap<>();
    Map<String, Integer> all = new LinkedHashMap<>();
    for (Words words : by.words()) {
      List<String> split = TEXT.words(words.text());
      for (String word : split) {
        all.merge(word, words.part().weight(), Integer::sum);
      }
      if (words.part().stands()) {
        fields.computeIfAbsent(words.part().field(), f -> new ArrayList<>()).add(split);
      }
    }
    fields.forEach((field, texts) -> document.add(words(field, texts)));
    document.add(new Field(Fields.ALL, new WeightedWords(all), WEIGHTED));
    document.add(new StringField(Fields.FOUND, kind.code(), Store.NO));
    document.add(new StringField(Fields.EDITION, Fields.bounded(edition), Store.NO));
    for (String concept : by.about()) {
      document.add(new StringField(Fields.ABOUT, Fields.bounded(concept), Store.NO));
    }
    by.year().ifPresent(y -> document.add(new StringField(Fields.YEAR, year(y), Store.NO)));
    by.kind().ifPresent(k -> document.add(new StringField(Fields.KIND, k, Store.NO)));
    by.pictured().ifPresent(p -> document.add(new StringField(Fields.PICTURED, yes(p), Store.NO)));
  }

  /** Folded words with their positions, each text apart from the next. */
  static Field words(String field, List<List<String>> texts) {
    return new Field(field, new FoldedWords(texts), WITH_POSITIONS);
  }

  /** A year as a term whose order is that of the years. */
  static String year(int year) {
    String digits = Integer.toString(year);
    return "0".repeat(Math.max(0, 4 - digits.length())) + digits;
  }

  static String yes(boolean is) {
    return is ? "yes" : "no";
  }
}
