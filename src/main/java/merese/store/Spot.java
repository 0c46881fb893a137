package merese.store;

import java.util.ArrayList;
import java.util.List;

/**
 * A value with the way to it from the top of its file.
 *
 * @param parent null at the top
 * @param index in the list that stands under {@code key}; below 0 where there is no list
 */
record Spot(Spot parent, String key, int index, Json value) {
  static Spot top(Json value) {
    return new Spot(null, "", -1, value);
  }

  /** Such as {@code editions[1].notes[3]}; "" at the top. */
  String where() {
    String above = parent == null ? "" : parent.where();
    String own = index < 0 ? key : key + '[' + index + ']';
    return above.isEmpty() ? own : above + '.' + own;
  }

  /** What stands under a key; null where nothing does, or where this is no object. */
  Spot at(String below) {
    Json found = value instanceof Json.Obj object ? object.get(below) : null;
    return found == null ? null : new Spot(this, below, -1, found);
  }

  /** What stands in the list under a key; nothing where there is no list. */
  List<Spot> each(String below) {
    List<Spot> result = new ArrayList<>();
    Spot list = at(below);
    if (list != null && list.value instanceof Json.Arr array) {
      for (int i = 0; i < array.items().size(); i++) {
        result.add(new Spot(this, below, i, array.items().get(i)));
      }
    }
    return result;
  }

  /** The text here; null for anything else. */
  String text() {
    return value instanceof Json.Text text ? text.value() : null;
  }
}
