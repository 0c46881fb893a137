package merese.store;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which value of an old list became which of a new one. First those with the same identity, then
 * those that are equal, then objects that are alike: at least half of their members are the same.
 * What a new thing merely took the place of is not its partner, so that it inherits no unknown key.
 */
final class JsonPairing {
  private static final int NONE = -1;

  /** The keys whose value names a thing within its list. */
  private static final String[] IDENTITIES = {"id", "key", "ref", "word"};

  private final List<Json> before;
  private final List<Json> after;
  private final int[] partners;
  private final boolean[] taken;

  private JsonPairing(List<Json> before, List<Json> after) {
    this.before = before;
    this.after = after;
    this.partners = new int[after.size()];
    this.taken = new boolean[before.size()];
    Arrays.fill(partners, NONE);
  }

  /** For each new value the index of its old one, or -1; no old one is given twice. */
  static int[] of(List<Json> before, List<Json> after) {
    JsonPairing pairing = new JsonPairing(before, after);
    pairing.pairEnds();
    pairing.pairIdentities();
    pairing.pairEqual();
    pairing.pairAlike();
    return pairing.partners;
  }

  private void pair(int old, int now) {
    partners[now] = old;
    taken[old] = true;
  }

  /** Most changes are in one place: what is equal before and after it is paired at once. */
  private void pairEnds() {
    int shorter = Math.min(before.size(), after.size());
    int head = 0;
    while (head < shorter && before.get(head).sameAs(after.get(head))) {
      pair(head, head);
      head++;
    }
    int old = before.size() - 1;
    int now = after.size() - 1;
    while (old >= head && now >= head && before.get(old).sameAs(after.get(now))) {
      pair(old--, now--);
    }
  }

  private void pairIdentities() {
    Map<String, Deque<Integer>> free = new HashMap<>();
    for (int old = 0; old < before.size(); old++) {
      String identity = identity(before.get(old));
      if (!taken[old] && identity != null) {
        free.computeIfAbsent(identity, i -> new ArrayDeque<>()).add(old);
      }
    }
    for (int now = 0; now < after.size() && !free.isEmpty(); now++) {
      Deque<Integer> olds = partners[now] == NONE ? free.get(identity(after.get(now))) : null;
      if (olds != null && !olds.isEmpty()) {
        pair(olds.remove(), now);
      }
    }
  }

  private static String identity(Json value) {
    if (value instanceof Json.Obj object) {
      for (String key : IDENTITIES) {
        if (object.get(key) instanceof Json.Text text) {
          return key + ' ' + text.value();
        }
      }
    }
    return null;
  }

  private void pairEqual() {
    for (int now = 0; now < after.size(); now++) {
      for (int old = 0; old < before.size() && partners[now] == NONE; old++) {
        if (!taken[old] && before.get(old).sameAs(after.get(now))) {
          pair(old, now);
        }
      }
    }
  }

  private void pairAlike() {
    for (int now = 0; now < after.size(); now++) {
      if (partners[now] != NONE) {
        continue;
      }
      int best = NONE;
      double most = 0;
      for (int old = 0; old < before.size(); old++) {
        double alike = taken[old] ? 0 : alike(before.get(old), after.get(now), old == now);
        if (alike > most) {
          best = old;
          most = alike;
        }
      }
      if (best != NONE) {
        pair(best, now);
      }
    }
  }

  /** The share of equal members, 0 where it is too small; the same position breaks a tie. */
  private double alike(Json old, Json now, boolean samePosition) {
    if (!(JsonPatch.asObject(old) instanceof Json.Obj a)
        || !(JsonPatch.asObject(now) instanceof Json.Obj b)) {
      return 0;
    }
    int equal = 0;
    for (Json.Member member : a.members()) {
      Json other = b.get(member.key());
      equal += other != null && other.sameAs(member.value()) ? 1 : 0;
    }
    double share = (double) equal / Math.max(1, Math.min(a.members().size(), b.members().size()));
    boolean onlyOneChanged =
        samePosition && before.size() == after.size() && identity(now) == null && size(a, b) <= 2;
    if (share < 0.5 && !onlyOneChanged) {
      return 0;
    }
    return share + (samePosition ? 0.01 : 0);
  }

  private static int size(Json.Obj a, Json.Obj b) {
    return Math.max(a.members().size(), b.members().size());
  }
}
