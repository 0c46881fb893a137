package merese.shelf;

import java.util.List;
import merese.model.Concept;
import merese.model.Mine;
import merese.model.OwnObject;

/**
 * What a question in words found.
 *
 * @param things the best of them
 * @param withAll how many have everything that was asked for
 * @param withSome how many more have some of the words
 * @param pages of books that have everything: words on a page are no note, and counted in none of
 *     the above
 * @param allPages how many such pages there are
 */
public record Finding(
    List<Thing> things, int withAll, int withSome, List<SourcedPage> pages, int allPages) {
  public Finding {
    things = List.copyOf(things);
    pages = List.copyOf(pages);
  }

  /** One thing that was found. */
  public sealed interface Thing {
    /** Whether it has everything that was asked for. */
    boolean all();
  }

  public record OfNote(SourcedNote note, boolean all) implements Thing {}

  public record OfSource(Source source, boolean all) implements Thing {}

  public record OfConcept(Concept concept, boolean all) implements Thing {}

  public record OfPiece(OwnObject piece, boolean all) implements Thing {}

  /**
   * The user's own words.
   *
   * @param entry with just one entry
   */
  public record OfMine(Mine entry, boolean all) implements Thing {}
}
