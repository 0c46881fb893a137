package merese.shelf;

import java.util.List;
import java.util.Map;
import merese.model.Note;

/**
 * A note and where it is from. Two are the same where they are from the same place, whatever they
 * say.
 *
 * @param order its position in its edition, from 0
 * @param mayMean for each printed term without a concept, the ids of what it may mean
 */
public record SourcedNote(Source source, int order, Note note, Map<String, List<String>> mayMean) {
  @Override
  public boolean equals(Object other) {
    return other instanceof SourcedNote that && that.order == order && that.source.equals(source);
  }

  @Override
  public int hashCode() {
    return 31 * source.hashCode() + order;
  }
}
