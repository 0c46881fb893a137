package merese.answer;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.Coverage.SourceLine;
import merese.model.Locator;

/**
 * Sources cited in full, with the pages and plates that count.
 *
 * @param chapters one a feature, or one meaning of a word; a single one without a heading where
 *     every source stands once
 * @param consulted sources that were looked through without result, where they were asked for
 * @param pieces the user's own pieces that a script shows, in the mark-up asked for
 * @param remarks what a reader of the list should know, such as that a style has no notes
 * @param cautions what nobody should forget who shows or believes what is in the books
 */
public record ReadingList(
    List<Chapter> chapters,
    List<Item> consulted,
    List<String> pieces,
    List<String> remarks,
    List<String> cautions) {

  /** Said at the end of every list (common practice, no source). */
  public static final String CAUTION =
      "Attributions and dates are the sources' opinions, not an appraisal; pictures in books are"
          + " usually in copyright: check before showing them, and ask a specialist about local"
          + " law.";

  /**
   * The sources of one feature.
   *
   * @param heading the feature; empty where there is one chapter for all
   * @param concept the id of its concept
   * @param why what there is to say where no source is listed
   */
  public record Chapter(
      Optional<String> heading, Optional<String> concept, List<Item> items, Optional<String> why) {}

  /**
   * A source as cited.
   *
   * @param places in physical order (R5)
   * @param citation with the places, in the mark-up asked for
   */
  public record Item(SourceLine source, List<Locator> places, String citation) {}

  /** The same list without some sources, by their keys. */
  public ReadingList without(Set<String> keys) {
    List<Chapter> left = new ArrayList<>();
    for (Chapter chapter : chapters) {
      List<Item> items = kept(chapter.items(), keys);
      boolean emptied = items.isEmpty() && !chapter.items().isEmpty();
      left.add(
          new Chapter(
              chapter.heading(),
              chapter.concept(),
              items,
              emptied ? Optional.of("What covers it is left out here.") : chapter.why()));
    }
    return new ReadingList(left, kept(consulted, keys), pieces, remarks, cautions);
  }

  private static List<Item> kept(List<Item> items, Set<String> without) {
    return items.stream().filter(item -> !without.contains(item.source().key())).toList();
  }

  /** The keys of the sources, each once, in their order; not those consulted without result. */
  public List<String> keys() {
    Set<String> keys = new LinkedHashSet<>();
    for (Chapter chapter : chapters) {
      chapter.items().forEach(item -> keys.add(item.source().key()));
    }
    return List.copyOf(keys);
  }

  public boolean isEmpty() {
    return chapters.stream().allMatch(c -> c.items().isEmpty());
  }
}
