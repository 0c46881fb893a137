package merese.change.records;

import java.util.List;
import merese.change.records.Item.New;
import merese.change.records.Item.There;
import merese.exchange.Refused;

/**
 * What an import does, or would do.
 *
 * @param items in the order of the files
 * @param kept how many records were added or replaced that describe no source
 * @param keptThere how many such records are there already, word for word
 * @param mend the files that hold what could not be read, once the import is done
 */
public record ImportResult(
    List<Item> items, List<Refused> refused, int kept, int keptThere, List<String> mend) {
  public ImportResult {
    items = List.copyOf(items);
    refused = List.copyOf(refused);
    mend = List.copyOf(mend);
  }

  public List<New> added() {
    return items.stream().filter(New.class::isInstance).map(New.class::cast).toList();
  }

  /** Those that are there and would say more, or something else, than before. */
  public List<There> changed() {
    return there().filter(There::changes).toList();
  }

  /** Those that are there with all that the records say. */
  public List<There> unchanged() {
    return there().filter(there -> !there.changes()).toList();
  }

  private java.util.stream.Stream<There> there() {
    return items.stream().filter(There.class::isInstance).map(There.class::cast);
  }

  /** Whether there was no record in the files. */
  public boolean isEmpty() {
    return items.isEmpty() && refused.isEmpty() && kept == 0 && keptThere == 0;
  }

  public boolean changesNothing() {
    return bringsNothing() && refused.isEmpty();
  }

  /**
   * Whether nothing of the files is new to the library, be there what there may that is refused.
   */
  public boolean bringsNothing() {
    return added().isEmpty() && changed().isEmpty() && kept == 0;
  }
}
