package merese.exchange.csv;

import java.util.List;
import merese.model.Name;

/** Names as they are typed: "Family, Given"; several with semicolons; a body in braces. */
public final class NameList {
  private NameList() {}

  /** All names in a text, by the rules of a cell of a table; none where there is none. */
  public static List<Name> read(String typed) {
    return NameCell.read(typed);
  }
}
