package merese.change;

import java.util.Optional;
import java.util.OptionalInt;
import merese.model.Copy;
import merese.model.Edition.Lineage;

/**
 * What to add.
 *
 * @param of what it is of, a key or the name of a work; empty for a new work
 * @param entry what the source says of itself; empty for a copy of one that is there
 * @param key empty for one made of the maker and the year
 * @param form how an edition stands to that which it is of
 * @param originalYear of the first publication of what is reprinted
 * @param copy of the source, its id to be given
 * @param mine whether it is a work of the user's own
 * @param anyway whether it may be added although it looks like one that is there
 */
public record AddRequest(
    Optional<String> of,
    Optional<SourceEntry> entry,
    Optional<String> key,
    Optional<Lineage.Form> form,
    OptionalInt originalYear,
    Optional<Copy> copy,
    boolean mine,
    boolean anyway) {

  /** The same, although it looks like one that is there. */
  public AddRequest evenSo() {
    return new AddRequest(of, entry, key, form, originalYear, copy, mine, true);
  }
}
