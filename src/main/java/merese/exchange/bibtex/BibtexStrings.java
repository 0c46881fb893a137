package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import merese.exchange.bibtex.EntryParser.Assigned;
import merese.exchange.bibtex.StoredValue.Piece;

/**
 * The strings that a file has defined so far. A name is known from its definition on, in any case;
 * a second definition replaces the first.
 */
final class BibtexStrings {
  /** No value is longer once its strings are put in, in characters. */
  static final int MOST_OF_ONE = 1 << 20;

  /** All strings of a file together are no longer, in characters. */
  static final int MOST_OF_ALL = 1 << 24;

  private final Map<String, List<Piece>> strings = new HashMap<>();
  private long size;

  /**
   * @param offset where the definition stands
   */
  void define(String name, List<Piece> value, int offset) throws BibtexFault {
    List<Piece> expanded = List.copyOf(expanded(value, offset));
    long added = size(expanded) - size(strings.getOrDefault(folded(name), List.of()));
    if (size + added > MOST_OF_ALL) {
      throw new BibtexFault(
          offset,
          "the strings of the file are longer than " + MOST_OF_ALL + " characters",
          "put the text into the entries");
    }
    size += added;
    strings.put(folded(name), expanded);
  }

  /** With the strings put in; names that stay are those of months and what is undefined. */
  List<Piece> expanded(List<Piece> value, int offset) throws BibtexFault {
    if (value.size() == 1 && !value.get(0).isName()) {
      return value;
    }
    List<Piece> expanded = new ArrayList<>();
    long length = 0;
    for (Piece piece : value) {
      List<Piece> found = piece.isName() ? strings.get(folded(piece.text())) : null;
      List<Piece> pieces = found == null ? List.of(piece) : found;
      length += size(pieces);
      if (length > MOST_OF_ONE) {
        throw new BibtexFault(
            offset,
            "a value is longer than " + MOST_OF_ONE + " characters once its strings are put in",
            "shorten it");
      }
      expanded.addAll(pieces);
    }
    return expanded;
  }

  /** Of the names that stay, those that are not a month's, sorted. */
  static Set<String> undefined(List<Assigned> expanded) {
    Set<String> undefined = Set.of();
    for (Assigned assigned : expanded) {
      for (Piece piece : assigned.value()) {
        if (piece.isName() && !StoredValue.isMonth(folded(piece.text()))) {
          undefined = undefined.isEmpty() ? new TreeSet<>() : undefined;
          undefined.add(piece.text());
        }
      }
    }
    return undefined;
  }

  static long size(List<Piece> pieces) {
    long size = 0;
    for (Piece piece : pieces) {
      size += piece.text().length() + 1L;
    }
    return size;
  }

  private static String folded(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** The definitions as they would stand in a file, sorted; names that are not defined left out. */
  String written(boolean asciiOnly) {
    return strings.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(e -> definition(e.getKey(), e.getValue()))
        .filter(line -> !asciiOnly || line.chars().allMatch(c -> c < 128))
        .collect(Collectors.joining());
  }

  private static String definition(String name, List<Piece> value) {
    String pieces =
        value.stream()
            .map(p -> p.isName() ? p.text() : "{" + p.text() + "}")
            .collect(Collectors.joining(" # "));
    return "@string{" + name + " = " + pieces + "}\n";
  }
}
