package merese.exchange;

import java.util.List;
import java.util.Optional;
import merese.model.Edition;
import merese.model.ReceivedRecord;
import merese.model.Work;

/**
 * One source as a file describes it, in the library's terms.
 *
 * @param key what the file calls it; empty where it gives no name
 * @param work with one edition, which has the record that this was read from as its only
 *     {@linkplain Edition#received() received} one; both are called {@value #UNNAMED}
 * @param remarks what was noticed and taken as it stands, each a sentence without its full stop:
 *     "ISBN 0-00-000000-1 fails its check digit; recorded as wrong in print"
 */
public record Incoming(FilePlace place, Optional<String> key, Work work, List<String> remarks) {
  /** The id of the work and the key of the edition, until the library gives them theirs. */
  public static final String UNNAMED = "unnamed";

  public Incoming {
    if (work.editions().size() != 1 || work.editions().get(0).received().size() != 1) {
      throw new IllegalArgumentException("one edition with one received record is needed");
    }
    remarks = List.copyOf(remarks);
  }

  public Edition edition() {
    return work.editions().get(0);
  }

  public ReceivedRecord received() {
    return edition().received().get(0);
  }
}
