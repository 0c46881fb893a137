package merese.shelf;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import merese.model.Concept;
import merese.search.IndexDamagedException;
import merese.vocabulary.Concepts;

/**
 * The concepts of a {@link PackedThesaurus}, each unpacked when it is asked for and kept; what is
 * broader, narrower or mistaken for another is told without. Whatever is named and not defined is
 * there too, after all others, and means only itself.
 */
final class PackedConcepts implements Concepts {
  private final byte[] bytes;
  private final Set<String> undefined;
  private final int size;
  private final int slots;
  private final int startsAt;

  /**
   * Of each name what has been read. Threads that come at the same time read it twice, which is all
   * the same.
   */
  private final String[] ids;

  private final Concept[] concepts;
  private Map<String, Concept> all;

  /**
   * @param undefined in their order
   */
  PackedConcepts(byte[] bytes, Set<String> undefined) {
    this.bytes = bytes;
    this.undefined = undefined;
    if (bytes.length < PackedThesaurus.HEAD) {
      throw damaged();
    }
    ByteBuffer head = ByteBuffer.wrap(bytes);
    size = head.getInt();
    int names = head.getInt();
    slots = head.getInt();
    boolean sound = size >= 0 && names >= size && slots > names && Integer.bitCount(slots) == 1;
    long entries = PackedThesaurus.HEAD + Integer.BYTES * ((long) slots + names + 1);
    if (!sound || entries > bytes.length) {
      throw damaged();
    }
    startsAt = PackedThesaurus.HEAD + Integer.BYTES * slots;
    ids = new String[names];
    concepts = new Concept[size];
  }

  private static IndexDamagedException damaged() {
    return new IndexDamagedException("the index holds no vocabulary that can be read", null);
  }

  /** What is packed behind the last entry. */
  Unpacker afterEntries() {
    return entry(ids.length);
  }

  private Unpacker entry(int number) {
    return new Unpacker(bytes, intAt(startsAt + Integer.BYTES * number));
  }

  private int intAt(int at) {
    return bytes[at] << 24
        | (bytes[at + 1] & 0xFF) << 16
        | (bytes[at + 2] & 0xFF) << 8
        | bytes[at + 3] & 0xFF;
  }

  /** The number of a name; -1 where there is none. */
  private int number(String id) {
    int slot = PackedThesaurus.slot(id, slots);
    for (int left = slots; left > 0; left--) {
      int number = intAt(PackedThesaurus.HEAD + Integer.BYTES * slot) - 1;
      if (number < 0) {
        return -1;
      }
      if (id(number).equals(id)) {
        return number;
      }
      slot = slot + 1 & slots - 1;
    }
    return -1;
  }

  private String id(int number) {
    if (number < 0 || number >= ids.length) {
      throw damaged();
    }
    String id = ids[number];
    if (id == null) {
      id = entry(number).text();
      ids[number] = id;
    }
    return id;
  }

  /** The number of a concept that is packed; -1 where there is none. */
  private int defined(String id) {
    int number = number(id);
    return number < size ? number : -1;
  }

  @Override
  public boolean has(String id) {
    return defined(id) >= 0 || undefined.contains(id);
  }

  @Override
  public Concept find(String id) {
    int number = defined(id);
    if (number >= 0) {
      return concept(number);
    }
    return undefined.contains(id) ? VocabularyRecords.standIn(id) : null;
  }

  private Concept concept(int number) {
    Concept concept = concepts[number];
    if (concept == null) {
      Unpacker from = entry(number);
      from.text();
      from.passNumbers();
      from.passNumbers();
      from.passNumbers();
      from.flag();
      concept = PackedVocabulary.concept(from, from.text());
      concepts[number] = concept;
    }
    return concept;
  }

  @Override
  public Map<String, Concept> all() {
    Map<String, Concept> read;
    synchronized (this) {
      if (all == null) {
        all = new LinkedHashMap<>(size * 2);
        for (int i = 0; i < size; i++) {
          all.put(id(i), concept(i));
        }
        for (String id : undefined) {
          all.putIfAbsent(id, VocabularyRecords.standIn(id));
        }
      }
      read = all;
    }
    return Collections.unmodifiableMap(read);
  }

  @Override
  public List<String> broader(String id) {
    int number = number(id);
    return number < 0 ? List.of() : ids(afterId(number));
  }

  @Override
  public List<String> narrower(String id) {
    int number = number(id);
    if (number < 0) {
      return List.of();
    }
    Unpacker from = afterId(number);
    from.passNumbers();
    return ids(from);
  }

  @Override
  public List<String> mistakenFor(String id) {
    int number = number(id);
    if (number < 0) {
      return List.of();
    }
    Unpacker from = afterId(number);
    from.passNumbers();
    from.passNumbers();
    return ids(from);
  }

  @Override
  public boolean namesLookAlikes(String id) {
    int number = number(id);
    if (number < 0) {
      return false;
    }
    Unpacker from = afterId(number);
    from.passNumbers();
    from.passNumbers();
    from.passNumbers();
    return from.flag();
  }

  private Unpacker afterId(int number) {
    Unpacker from = entry(number);
    from.passText();
    return from;
  }

  private List<String> ids(Unpacker from) {
    int left = from.number();
    if (left == 0) {
      return List.of();
    }
    List<String> found = new ArrayList<>();
    for (; left > 0; left--) {
      found.add(id(from.number()));
    }
    return Collections.unmodifiableList(found);
  }
}
