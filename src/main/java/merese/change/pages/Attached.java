package merese.change.pages;

import java.util.List;
import java.util.OptionalInt;

/**
 * Page texts that are attached to an edition, with what lets a person see whether the map is right.
 *
 * @param source the key of the edition
 * @param reference author and year of it; "" where no edition has the key
 * @param name of the file in the library, without its ending
 * @param file the name of the file that the text is from
 * @param from what kind of file it was, in words
 * @param withoutText the file pages that have no text
 * @param map as it is kept; "" for none
 * @param stretches how the map reads, part by part
 * @param unnamed how many file pages the map does not name
 * @param samples the first words of a few pages
 * @param remarks what else there is to know, each a sentence
 * @param outcome what has become of it
 * @param change what the history calls the change; empty where nothing was written
 */
public record Attached(
    String source,
    String reference,
    String name,
    String file,
    String from,
    int pages,
    List<Integer> withoutText,
    String map,
    List<Stretch> stretches,
    int unnamed,
    List<Sample> samples,
    List<String> remarks,
    Outcome outcome,
    OptionalInt change) {

  /** What was done, or would be. */
  public enum Outcome {
    NEW,
    REPLACED,
    MAPPED,
    AS_IT_WAS,
    REMOVED
  }

  /**
   * Neighbouring file pages, as the map reads the first and the last of them.
   *
   * @param first as it is cited: "pl. I", or "unnumbered"
   */
  public record Stretch(int from, int to, String first, String last) {}

  /**
   * How a page begins.
   *
   * @param cited as the map has it: "p. 12", "file page 9, unnumbered"
   */
  public record Sample(int filePage, String cited, String words) {}

  /** Copies the lists. */
  public Attached {
    withoutText = List.copyOf(withoutText);
    stretches = List.copyOf(stretches);
    samples = List.copyOf(samples);
    remarks = List.copyOf(remarks);
  }
}
