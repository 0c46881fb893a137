package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.model.Name;

/**
 * Names as BibTeX takes them apart ({@link BibtexNameSplit}), and in biblatex's extended format
 * ({@code family=Harman, given=Hans}: The biblatex package, section 3.7). What stands wholly in
 * braces is a body. "and others" names nobody.
 */
final class NameReader {
  /** More names in one field are not understood. */
  static final int MOST = 1000;

  private static final int MOST_COMMAS = 2;
  private static final Set<String> PARTS = Set.of("family", "given", "prefix", "suffix");

  /**
   * @param remarks sentences without their full stops
   */
  record Names(List<Name> names, List<String> remarks) {}

  private NameReader() {}

  static Names read(String latex) {
    List<Name> names = new ArrayList<>();
    List<String> remarks = new ArrayList<>();
    List<String> items = TextList.ofAnd(latex);
    if (items.size() > MOST) {
      remarks.add("Of " + items.size() + " names only the first " + MOST + " were understood");
    }
    for (String item : items.subList(0, Math.min(items.size(), MOST))) {
      if (!item.equalsIgnoreCase("others")) {
        if (!isExtended(item) && TextList.of(item, ",").size() > MOST_COMMAS + 1) {
          remarks.add(
              "A name has more than " + MOST_COMMAS + " commas: " + LatexReader.plain(item));
        }
        name(item).ifPresent(names::add);
      }
    }
    return new Names(names, remarks);
  }

  /** Empty where no letter is left of it. */
  static Optional<Name> name(String latex) {
    if (TextList.isBraced(latex) && !latex.startsWith("{\\")) {
      return body(latex);
    }
    if (isExtended(latex)) {
      return extended(latex);
    }
    BibtexNameSplit split = BibtexNameSplit.of(latex);
    if (TextList.isBraced(split.last())
        && !split.last().startsWith("{\\")
        && (split.first() + split.von() + split.jr()).isEmpty()) {
      return body(split.last());
    }
    return person(split.last(), split.first(), split.von(), split.jr())
        .or(() -> body(latex.replace(',', ' ')));
  }

  private static Optional<Name> body(String latex) {
    return some(latex).map(Name.Body::new);
  }

  private static Optional<Name> person(String family, String given, String prefix, String suffix) {
    return some(family).map(name -> new Name.Person(name, some(given), some(prefix), some(suffix)));
  }

  private static Optional<String> some(String latex) {
    return Optional.of(LatexReader.plain(latex)).filter(text -> !text.isBlank());
  }

  static boolean isExtended(String latex) {
    for (String part : TextList.of(latex, ",")) {
      int equals = part.indexOf('=');
      if (equals > 0 && PARTS.contains(key(part, equals))) {
        return true;
      }
    }
    return false;
  }

  private static Optional<Name> extended(String latex) {
    Map<String, String> parts = new HashMap<>();
    for (String part : TextList.of(latex, ",")) {
      int equals = part.indexOf('=');
      if (equals > 0) {
        String value = part.substring(equals + 1).strip();
        parts.put(
            key(part, equals), value.endsWith("\"") && part.startsWith("\"") ? chop(value) : value);
      }
    }
    String family = parts.getOrDefault("family", "");
    String given = parts.getOrDefault("given", "");
    return family.isBlank()
        ? body(given)
        : person(family, given, parts.getOrDefault("prefix", ""), parts.getOrDefault("suffix", ""));
  }

  private static String key(String part, int equals) {
    return part.substring(0, equals).replace("\"", "").strip().toLowerCase(Locale.ROOT);
  }

  private static String chop(String text) {
    return text.substring(0, text.length() - 1);
  }
}
