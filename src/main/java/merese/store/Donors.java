package merese.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The files that parts of a new value come from. What a user wrote into such a part and the program
 * does not know moves with it, as it would have stayed had the part not moved.
 */
final class Donors {
  static final Donors NONE = new Donors();

  private static final String[] OWN_NAMES = {"key", "id"};

  /** A part as it was read, and what the program makes of it. */
  record Part(Json read, Json before) {}

  private final Map<String, List<Part>> byList = new HashMap<>();
  private final List<Json.Member> own = new ArrayList<>();

  private Donors() {}

  static Donors of(Collection<? extends Stored<?>> files) {
    Donors donors = new Donors();
    for (Stored<?> file : files) {
      donors.add(file);
    }
    return donors;
  }

  private <T> void add(Stored<T> file) {
    if (file.isOnDisk()) {
      Json read = JsonReader.read(Source.of(file.file(), file.bytes()));
      add(read, ObjectBuilder.object(file.value(), file.codec()));
      for (String key : file.ownKeys()) {
        own.add(new Json.Member(key, detached(((Json.Obj) read).get(key))));
      }
    }
  }

  /** The same tree with the users' own keys of the donors that it lacks. */
  Json withOwnKeys(Json tree) {
    if (own.isEmpty() || !(tree instanceof Json.Obj object)) {
      return tree;
    }
    List<Json.Member> members = new ArrayList<>(object.members());
    for (Json.Member member : own) {
      if (members.stream().noneMatch(m -> m.key().equals(member.key()))) {
        members.add(member);
      }
    }
    return members.size() == object.members().size() ? tree : new Json.Obj(members);
  }

  /** Parts that hold nothing but what the program would write need no help. */
  private void add(Json read, Json before) {
    if (read.sameAs(before)) {
      return;
    }
    if (read instanceof Json.Obj r && before instanceof Json.Obj b) {
      for (Json.Member member : b.members()) {
        Json there = r.get(member.key());
        if (there instanceof Json.Arr items && member.value() instanceof Json.Arr made) {
          add(member.key(), items.items(), made.items());
        } else if (there != null) {
          add(there, member.value());
        }
      }
    }
  }

  private void add(String list, List<Json> read, List<Json> before) {
    for (int i = 0; i < read.size() && read.size() == before.size(); i++) {
      if (!read.get(i).sameAs(before.get(i))) {
        Part part = new Part(detached(read.get(i)), before.get(i));
        byList.computeIfAbsent(list, l -> new ArrayList<>()).add(part);
        add(read.get(i), before.get(i));
      }
    }
  }

  boolean areNone() {
    return byList.isEmpty();
  }

  /** The part that a new item of a list was, which is given once; null where it was none. */
  Part take(String list, Json item) {
    List<Part> parts = byList.getOrDefault(list, List.of());
    Part found = null;
    for (Part part : parts) {
      if (part.before.sameAs(item) || haveOneName(part.before, item)) {
        found = part;
        break;
      }
      if (found == null && withoutName(part.before).sameAs(withoutName(item))) {
        found = part;
      }
    }
    if (found != null) {
      parts.remove(found);
    }
    return found;
  }

  /** Only keys are unlike all others of a library; an id is one of its own edition. */
  private static boolean haveOneName(Json a, Json b) {
    return a instanceof Json.Obj one
        && b instanceof Json.Obj other
        && one.get(OWN_NAMES[0]) instanceof Json.Text key
        && key.sameAs(other.get(OWN_NAMES[0]));
  }

  private static Json withoutName(Json value) {
    if (!(value instanceof Json.Obj object)) {
      return value;
    }
    List<Json.Member> rest = new ArrayList<>(object.members());
    for (String name : OWN_NAMES) {
      rest.removeIf(member -> member.key().equals(name));
    }
    return new Json.Obj(rest);
  }

  /** The same as if it had been made here, so that it is not looked for in another file's text. */
  private static Json detached(Json value) {
    if (value instanceof Json.Obj object) {
      List<Json.Member> members = new ArrayList<>();
      for (Json.Member member : object.members()) {
        members.add(new Json.Member(member.key(), detached(member.value())));
      }
      return new Json.Obj(members);
    }
    if (value instanceof Json.Arr array) {
      List<Json> items = new ArrayList<>();
      for (Json item : array.items()) {
        items.add(detached(item));
      }
      return new Json.Arr(items);
    }
    return value instanceof Json.Text text
        ? new Json.Text(text.value())
        : new Json.Word(((Json.Word) value).spelling());
  }
}
