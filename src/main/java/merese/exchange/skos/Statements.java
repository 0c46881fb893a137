package merese.exchange.skos;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import merese.exchange.FilePlace;
import merese.exchange.UnreadableException;

/** What a file states, by subject in the order in which subjects are first met. */
final class Statements {
  /** More than this many are refused. */
  static final int MOST = 2_000_000;

  /** A property of a subject with one value. */
  record Said(String property, RdfTerm object) {}

  private final String file;
  private final Map<String, List<Said>> bySubject = new LinkedHashMap<>();
  private final Map<String, String> blanks = new HashMap<>();
  private final Map<String, String> properties = new HashMap<>();
  private int size;

  /** How many statements stood in named graphs. */
  int inNamedGraphs;

  Statements(String file) {
    this.file = file;
  }

  void add(String subject, String property, RdfTerm object) {
    size++;
    if (size > MOST) {
      throw new UnreadableException(
          new FilePlace(file, 0, 0, 0),
          "the file makes more than " + MOST + " statements, which is the limit",
          "split it, or leave out what is not SKOS");
    }
    Said said = new Said(properties.computeIfAbsent(property, p -> p), object);
    List<Said> of = bySubject.computeIfAbsent(subject, s -> new ArrayList<>(8));
    of.add(said);
  }

  /** A name for a blank node that depends on the file alone: "_:1" for the first. */
  String blank(String label) {
    return blanks.computeIfAbsent(label, l -> RdfTerm.BLANK + (blanks.size() + 1));
  }

  Map<String, List<Said>> bySubject() {
    return bySubject;
  }

  /** What a subject is said to have; nothing for one that nothing is said of. */
  List<Said> of(String subject) {
    return bySubject.getOrDefault(subject, List.of());
  }

  int size() {
    return size;
  }
}
