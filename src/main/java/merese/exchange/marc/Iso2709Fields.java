package merese.exchange.marc;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import merese.exchange.marc.MarcField.Subfield;

/**
 * Reads the bytes of one ISO 2709 record.
 *
 * <p>Where the directory does not agree with the terminators that the fields end with, these are
 * believed if they are as many as the directory has entries and those stand in the order of the
 * fields; a remark says so. Else the record is bad.
 */
final class Iso2709Fields {
  private static final int ENTRY = 12;
  private static final int END_OF_FIELD = Iso2709Pieces.END_OF_FIELD;
  private static final int START_OF_SUBFIELD = 0x1f;

  private final MarcCharacters characters;
  private final List<String> remarks;
  private final byte[] bytes;
  private final List<MarcField> fields = new ArrayList<>();

  private Iso2709Fields(MarcCharacters characters, byte[] bytes, List<String> remarks) {
    this.characters = characters;
    this.bytes = bytes;
    this.remarks = remarks;
  }

  /** An entry of the directory; where the field starts and how long it is, -1 for no number. */
  private record Entry(String tag, int start, int length) {}

  /** From the first byte of a field to its terminator. */
  private record Span(int from, int to) {}

  static MarcRecord read(MarcCharacters characters, byte[] bytes, List<String> remarks)
      throws BadRecord {
    Iso2709Fields reader = new Iso2709Fields(characters, bytes, remarks);
    reader.read();
    return new MarcRecord(reader.fields);
  }

  private void read() throws BadRecord {
    int base = base();
    boolean closed = bytes[bytes.length - 1] == Iso2709Pieces.END_OF_RECORD;
    int end = closed ? bytes.length - 1 : bytes.length;
    List<Entry> directory = directory(base);
    if (!closed && bytes[end - 1] != END_OF_FIELD) {
      throw new BadRecord("it breaks off in the middle of a field", "get the whole file");
    }
    List<Span> spans = spans(directory, base, end);
    if (!closed) {
      remarks.add("the record has no terminator");
    }
    String leader = new String(bytes, 0, Iso2709Pieces.LEADER, StandardCharsets.ISO_8859_1);
    lengths(leader, base);
    fields.add(MarcField.control(MarcField.LEADER, leader));
    characters.settle(bytes, leader.charAt(9), remarks);
    for (int i = 0; i < directory.size(); i++) {
      field(directory.get(i).tag, spans.get(i).from, spans.get(i).to);
    }
    characters.close(remarks);
  }

  /** Where the fields start: after the terminator of the directory. */
  private int base() throws BadRecord {
    int at = Iso2709Pieces.LEADER;
    while (at < bytes.length && bytes[at] != END_OF_FIELD) {
      at++;
    }
    boolean whole = at < bytes.length && at > Iso2709Pieces.LEADER;
    if (!whole || (at - Iso2709Pieces.LEADER) % ENTRY != 0) {
      boolean long_ = bytes.length > Iso2709Pieces.LIMIT - 2 * Iso2709Pieces.LEADER;
      throw new BadRecord(
          long_
              ? "there is no MARC record in " + bytes.length + " bytes"
              : "these bytes are no MARC record: no leader of 24 bytes and directory of 12 a field",
          "read it in the format that it is in, or mend it");
    }
    return at + 1;
  }

  private List<Entry> directory(int base) throws BadRecord {
    List<Entry> entries = new ArrayList<>();
    for (int at = Iso2709Pieces.LEADER; at + ENTRY < base; at += ENTRY) {
      for (int i = at; i < at + 3; i++) {
        if (bytes[i] <= ' ' || bytes[i] > '~') {
          throw new BadRecord(
              "entry " + (entries.size() + 1) + " of its directory has no tag", "mend it");
        }
      }
      String tag = new String(bytes, at, 3, StandardCharsets.US_ASCII);
      entries.add(new Entry(tag, number(at + 7, 5), number(at + 3, 4)));
    }
    return entries;
  }

  private int number(int from, int digits) {
    int number = 0;
    for (int i = from; i < from + digits; i++) {
      if (bytes[i] < '0' || bytes[i] > '9') {
        return -1;
      }
      number = 10 * number + bytes[i] - '0';
    }
    return number;
  }

  private List<Span> spans(List<Entry> directory, int base, int end) throws BadRecord {
    List<Span> said = said(directory, base, end);
    List<Span> found = found(base, end);
    if (said.size() == directory.size() && areAll(said, found)) {
      return said;
    }
    if (found.size() == directory.size() && areInOrder(directory, found, base)) {
      remarks.add("its directory does not agree with its fields; they were told by their ends");
      return found;
    }
    if (said.size() == directory.size()) {
      remarks.add("a field holds the terminator of fields");
      return said;
    }
    throw new BadRecord(
        "its directory has "
            + directory.size()
            + " fields and does not agree with the "
            + found.size()
            + " that it holds",
        "get the record again from where it came");
  }

  /** The fields where the directory says; fewer where one does not end with a terminator. */
  private List<Span> said(List<Entry> directory, int base, int end) {
    List<Span> spans = new ArrayList<>(directory.size());
    for (Entry entry : directory) {
      int from = base + entry.start;
      int to = from + entry.length - 1;
      boolean sound = entry.start >= 0 && entry.length > 0 && to < end;
      if (!sound || bytes[to] != END_OF_FIELD) {
        return spans;
      }
      spans.add(new Span(from, to));
    }
    return spans;
  }

  /** The fields by their terminators; the last may lack its own. */
  private List<Span> found(int base, int end) {
    List<Span> spans = new ArrayList<>();
    int from = base;
    for (int at = base; at < end; at++) {
      if (bytes[at] == END_OF_FIELD) {
        spans.add(new Span(from, at));
        from = at + 1;
      }
    }
    if (from < end) {
      spans.add(new Span(from, end));
    }
    return spans;
  }

  /** Whether the fields that the directory names are those there are, in whatever order. */
  private static boolean areAll(List<Span> said, List<Span> found) {
    return said.equals(found)
        || (said.size() == found.size() && new HashSet<>(said).equals(new HashSet<>(found)));
  }

  /** Starts that rise, or are right but for one. */
  private static boolean areInOrder(List<Entry> directory, List<Span> found, int base) {
    boolean rising = true;
    int right = 0;
    for (int i = 0; i < directory.size(); i++) {
      int start = directory.get(i).start;
      rising &= start >= 0 && (i == 0 || start >= directory.get(i - 1).start);
      right += start == found.get(i).from - base ? 1 : 0;
    }
    return rising || right >= directory.size() - 1;
  }

  private void lengths(String leader, int base) {
    String said = leader.substring(0, 5);
    if (bytes.length > 99_999) {
      remarks.add("it has " + bytes.length + " bytes; ISO 2709 allows 99,999");
    } else if (number(0, 5) != bytes.length) {
      remarks.add("its leader says \"" + said + "\" bytes, but it has " + bytes.length);
    }
    if (number(12, 5) != base && bytes.length <= 99_999) {
      remarks.add("its leader says that the fields start at \"" + leader.substring(12, 17) + "\"");
    }
  }

  private void field(String tag, int from, int to) throws BadRecord {
    if (tag.startsWith("00")) {
      fields.add(MarcField.control(tag, characters.decoded(bytes, from, to)));
      return;
    }
    int at = from;
    StringBuilder indicators = new StringBuilder();
    while (at < to && indicators.length() < 2 && bytes[at] != START_OF_SUBFIELD) {
      indicators.append((char) (bytes[at++] & 0xff));
    }
    if (indicators.length() < 2) {
      remarks.add("field " + tag + " has no two indicators; read as blank");
      indicators.append("  ");
    }
    if (indicators.indexOf("#") >= 0) {
      remarks.add("field " + tag + " has # for an indicator; read as blank");
    }
    if (at < to && bytes[at] != START_OF_SUBFIELD) {
      throw new BadRecord(
          "field " + tag + " has text before its first subfield", "put a subfield code before it");
    }
    String shown = indicators.substring(0, 2).replace('#', ' ');
    fields.add(MarcField.data(tag, shown, subfields(tag, at, to)));
  }

  private List<Subfield> subfields(String tag, int from, int to) throws BadRecord {
    List<Subfield> subfields = new ArrayList<>();
    int at = from;
    while (at < to) {
      int next = at + 1;
      while (next < to && bytes[next] != START_OF_SUBFIELD) {
        next++;
      }
      String text = characters.decoded(bytes, at + 1, next);
      if (text.isEmpty()) {
        remarks.add("field " + tag + " has a subfield without a code; left out");
      } else if (Character.isSurrogate(text.charAt(0))) {
        throw new BadRecord("field " + tag + " has no letter for a subfield code", "mend it");
      } else {
        subfields.add(new Subfield(text.charAt(0), text.substring(1)));
      }
      at = next;
    }
    return subfields;
  }
}
