package merese.exchange.marc;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The elements that are open outside a record, and the namespaces that they declare. */
final class XmlScopes {
  static final String MARC = "http://www.loc.gov/MARC21/slim";

  /** MARCXML's, and that of ISO 25577 (MarcXchange), which has the same elements. */
  private static final Set<String> NAMESPACES =
      Set.of(MARC, MARC + "/", "info:lc/xmlns/marcxchange-v1", "info:lc/xmlns/marcxchange-v2");

  private static final int DEEPEST = 64;
  private static final Pattern PREFIX = Pattern.compile("[A-Za-z_][A-Za-z0-9_.\\-]*");
  private static final Pattern DECLARATION =
      Pattern.compile("\\sxmlns(?::([\\w.\\-]+))?\\s*=\\s*(?:\"([^\"]*)\"|'([^']*)')");

  private final Deque<Scope> open = new ArrayDeque<>();
  private final Set<String> prefixes = new TreeSet<>();

  private record Scope(String name, Map<String, String> namespaces) {}

  /**
   * A start tag.
   *
   * @param name with its prefix
   * @param text the whole tag
   */
  record Tag(String name, String text) {
    String prefix() {
      int colon = name.indexOf(':');
      return colon < 0 ? "" : name.substring(0, colon);
    }

    String local() {
      return name.substring(name.indexOf(':') + 1);
    }

    private Map<String, String> namespaces() {
      Map<String, String> found = new HashMap<>();
      if (text.contains("xmlns")) {
        Matcher declaration = DECLARATION.matcher(text);
        while (declaration.find()) {
          String prefix = Optional.ofNullable(declaration.group(1)).orElse("");
          String uri = Optional.ofNullable(declaration.group(2)).orElse(declaration.group(3));
          found.put(prefix, uri.strip());
        }
      }
      return found;
    }
  }

  void open(Tag tag) {
    if (open.size() < DEEPEST) {
      open.push(new Scope(tag.name(), tag.namespaces()));
    }
  }

  /** Closes the innermost element of a name, and those in it; nothing where there is none. */
  void close(String name) {
    if (open.stream().anyMatch(s -> s.name.equals(name))) {
      while (!open.pop().name.equals(name)) {}
    }
  }

  /** The namespace of an element; empty for none. */
  private Optional<String> namespace(Tag tag) {
    String prefix = tag.prefix();
    String own = tag.namespaces().get(prefix);
    Iterator<Scope> outwards = open.iterator();
    while (own == null && outwards.hasNext()) {
      own = outwards.next().namespaces.get(prefix);
    }
    return Optional.ofNullable(own).filter(uri -> !uri.isEmpty());
  }

  boolean isMarc(Tag tag) {
    return namespace(tag).filter(NAMESPACES::contains).isPresent();
  }

  /** A record of MARC, or one that says no namespace. */
  boolean isRecord(Tag tag) {
    if (!tag.local().equals("record")) {
      return false;
    }
    Optional<String> namespace = namespace(tag);
    boolean marc = namespace.isEmpty() || NAMESPACES.contains(namespace.get());
    if (marc && PREFIX.matcher(tag.prefix()).matches()) {
      prefixes.add(tag.prefix());
    }
    return marc;
  }

  /** An element that belongs in a record. */
  boolean isOfRecord(Tag tag) {
    return switch (tag.local()) {
      case "collection", "record" -> false;
      case "leader", "controlfield", "datafield", "subfield" -> {
        Optional<String> namespace = namespace(tag);
        yield namespace.isEmpty() || NAMESPACES.contains(namespace.get());
      }
      default -> isMarc(tag);
    };
  }

  /** The prefixes that records have had. */
  Set<String> prefixes() {
    return prefixes;
  }
}
