package merese.exchange.bibtex;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import merese.model.Name;

/**
 * Names as BibTeX reads them: "von Last, Jr, First" for a person, a pair of braces round a body.
 *
 * <p>BibTeX takes each person apart again into the same parts; where a part would be read
 * otherwise, it stands in braces, and at worst the whole name does. Two things cannot be said in
 * BibTeX: a particle with a capital, which becomes part of the last name (it prints the same), and
 * a suffix without a first name, which does so too.
 */
final class BibtexNames {
  /** Biber drops an entry with a name that has more, even where braces hide them. */
  private static final int MOST_COMMAS = 2;

  private final String first;
  private final String von;
  private final String last;
  private final String jr;

  private BibtexNames(String first, String von, String last, String jr) {
    this.first = first;
    this.von = von;
    this.last = last;
    this.jr = jr;
  }

  /** Empty where nothing is left of the names. */
  static Optional<String> list(List<Name> names) {
    return Optional.of(
            names.stream().flatMap(name -> of(name).stream()).collect(Collectors.joining(" and ")))
        .filter(list -> !list.isEmpty());
  }

  static Optional<String> of(Name name) {
    if (name instanceof Name.Person person) {
      return person(
          latex(person.given()),
          latex(person.particle()),
          LatexText.of(person.family()),
          latex(person.suffix()));
    }
    return Optional.of(LatexText.of(name.full())).filter(n -> !n.isEmpty()).map(n -> braced(n));
  }

  private static String latex(Optional<String> words) {
    return words.map(LatexText::of).orElse("");
  }

  private static Optional<String> person(String first, String von, String last, String jr) {
    if (last.isEmpty()) {
      return person(List.of(von, first, jr));
    }
    if (first.isEmpty() && !jr.isEmpty()) {
      return person("", von, braced(last + ", " + jr), "");
    }
    String whole = von.isEmpty() ? last : von + " " + last;
    for (String givenName : List.of(first, braced(first))) {
      for (String suffix : List.of(jr, braced(jr))) {
        List<BibtexNames> ways = new ArrayList<>();
        ways.add(new BibtexNames(givenName, von, last, suffix));
        if (!von.isEmpty() && endsLikeAParticle(von)) {
          ways.add(new BibtexNames(givenName, von, braced(last), suffix));
        }
        ways.add(new BibtexNames(givenName, "", whole, suffix));
        ways.add(new BibtexNames(givenName, "", braced(whole), suffix));
        for (BibtexNames way : ways) {
          if (way.isReadRight()) {
            return Optional.of(way.written());
          }
        }
      }
    }
    String inOrder = first.isEmpty() ? whole : first + " " + whole;
    return Optional.of(braced(jr.isEmpty() ? inOrder : inOrder + ", " + jr));
  }

  /** For a person of whose family name nothing could be kept. */
  private static Optional<String> person(List<String> parts) {
    String whole = parts.stream().filter(p -> !p.isEmpty()).collect(Collectors.joining(" "));
    return whole.isEmpty() ? Optional.empty() : Optional.of(braced(whole));
  }

  private static boolean endsLikeAParticle(String von) {
    return BibtexNameSplit.of(von + " {X}, X").von().equals(von);
  }

  private static String braced(String part) {
    return part.isEmpty() ? "" : "{" + part + "}";
  }

  private boolean isReadRight() {
    String name = written();
    return BibtexNameSplit.of(name).equals(new BibtexNameSplit(first, von, last, jr))
        && List.of(first, von, last, jr).stream().noneMatch(BibtexNameSplit::hasComma)
        && name.chars().filter(c -> c == ',').count() <= MOST_COMMAS
        && !BibtexNameSplit.hasAnd(name)
        && !name.equals("others");
  }

  private String written() {
    StringBuilder out = new StringBuilder(von.isEmpty() ? "" : von + " ").append(last);
    if (!first.isEmpty()) {
      out.append(jr.isEmpty() ? "" : ", " + jr).append(", ").append(first);
    }
    return out.toString();
  }
}
