package merese.store;

import java.util.ArrayList;
import java.util.List;

/**
 * Carries a change into the tree that was read from a file. The change is what differs between the
 * old value and the new one as the program would write them; everything else stays as it was read:
 * unknown keys, the order of keys, what the program leaves out, the spelling of numbers.
 */
final class JsonPatch {
  private final Donors donors;

  private JsonPatch(Donors donors) {
    this.donors = donors;
  }

  /**
   * The tree to write; {@code read} itself where nothing changed.
   *
   * @param read the tree as it was read
   * @param before what the program makes of the value that was read from it
   * @param after what the program makes of the value to save
   * @param donors where parts of the value to save come from
   */
  static Json apply(Json read, Json before, Json after, Donors donors) {
    return new JsonPatch(donors).patched("", read, before, after);
  }

  /**
   * @param list the key of the list, for an item of one
   */
  private Json patched(String list, Json read, Json before, Json after) {
    if (before.sameAs(after)) {
      return read;
    }
    if (read instanceof Json.Arr r && before instanceof Json.Arr b && after instanceof Json.Arr a) {
      return r.items().size() == b.items().size() ? array(list, r, b, a) : donated(list, after);
    }
    if (read instanceof Json.Obj r) {
      Json b = asObject(before);
      Json a = asObject(after);
      if (b instanceof Json.Obj was && a instanceof Json.Obj now) {
        return object(r, was, now);
      }
    }
    return donated(list, after);
  }

  /** What is new here, with what it had where it comes from. */
  private Json donated(String list, Json now) {
    if (donors.areNone()) {
      return now;
    }
    if (now instanceof Json.Arr array) {
      List<Json> items = new ArrayList<>();
      for (Json item : array.items()) {
        Donors.Part part = donors.take(list, item);
        items.add(
            part == null ? donated(list, item) : patched(list, part.read(), part.before(), item));
      }
      return new Json.Arr(items);
    }
    if (now instanceof Json.Obj object) {
      List<Json.Member> members = new ArrayList<>();
      for (Json.Member member : object.members()) {
        members.add(member.with(donated(member.key(), member.value())));
      }
      return new Json.Obj(members);
    }
    return now;
  }

  /** A label that is only a text is the same as an object with that text. */
  static Json asObject(Json value) {
    return value instanceof Json.Text
        ? new Json.Obj(List.of(new Json.Member(LabelCodec.TEXT, value)))
        : value;
  }

  private Json object(Json.Obj read, Json.Obj before, Json.Obj after) {
    List<Json.Member> result = new ArrayList<>();
    for (Json.Member member : read.members()) {
      Json was = before.get(member.key());
      Json now = after.get(member.key());
      if (now != null) {
        result.add(
            member.with(was == null ? now : patched(member.key(), member.value(), was, now)));
      } else if (was == null) {
        result.add(member);
      }
    }
    int place = 0;
    for (Json.Member member : after.members()) {
      int there = indexOf(result, member.key());
      if (there >= 0) {
        place = there + 1;
        continue;
      }
      Json was = before.get(member.key());
      if (was == null || !was.sameAs(member.value())) {
        result.add(place++, member.with(donated(member.key(), member.value())));
      }
    }
    return new Json.Obj(result);
  }

  private static int indexOf(List<Json.Member> members, String key) {
    for (int i = 0; i < members.size(); i++) {
      if (members.get(i).key().equals(key)) {
        return i;
      }
    }
    return -1;
  }

  private Json array(String list, Json.Arr read, Json.Arr before, Json.Arr after) {
    int[] partners = JsonPairing.of(before.items(), after.items());
    List<Json> result = new ArrayList<>();
    for (int i = 0; i < partners.length; i++) {
      Json now = after.items().get(i);
      int old = partners[i];
      if (old >= 0) {
        result.add(patched(list, read.items().get(old), before.items().get(old), now));
      } else {
        Json.Arr alone = (Json.Arr) donated(list, new Json.Arr(List.of(now)));
        result.add(alone.items().get(0));
      }
    }
    return new Json.Arr(result);
  }
}
