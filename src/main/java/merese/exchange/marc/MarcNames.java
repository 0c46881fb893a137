package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import merese.exchange.marc.MarcField.Subfield;
import merese.model.Name;

/**
 * Names as headings: "Quenby, Mabel,$d1890-1960". Dates ($d), fuller forms ($q) and titles of
 * honour ($c) are left out; "Jr." is kept. A particle is told by its small letters.
 */
final class MarcNames {
  /** Particles that may stand at the end of the given names (common practice, no source). */
  private static final Set<String> PARTICLES =
      Set.of(
          "af", "av", "d'", "d’", "da", "dal", "de", "degli", "dei", "del", "della", "den", "der",
          "des", "di", "do", "dos", "du", "la", "le", "'t", "ten", "ter", "van", "vom", "von", "zu",
          "zum", "zur", "und");

  private static final Set<String> SUFFIXES =
      Set.of("jr", "jr.", "sr", "sr.", "jun.", "sen.", "ii", "iii", "iv");

  /** Years of birth and death that stand in $a rather than in $d. */
  private static final Pattern DATES =
      Pattern.compile("(?:b\\.|d\\.|fl\\.|ca\\.|active|born|died)?\\s*\\d{3,4}\\b.*");

  private MarcNames() {}

  /** The name of a heading of a person, a body or a meeting; empty where it has none. */
  static Optional<Name> of(MarcField field) {
    return field.is("100", "700") && field.one() != '3' ? person(field) : body(field);
  }

  private static Optional<Name> body(MarcField field) {
    List<String> parts = new ArrayList<>();
    for (Subfield subfield : field.subfields()) {
      boolean subordinate = subfield.code() == (field.is("111", "711") ? 'e' : 'b');
      if (subfield.code() == 'a' || subordinate) {
        String part = MarcText.bare(MarcText.tidy(subfield.text()), true);
        if (part.endsWith(" (Firm)")) {
          part = part.substring(0, part.length() - " (Firm)".length());
        }
        if (!part.isEmpty()) {
          parts.add(part);
        }
      }
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Name.Body(String.join(". ", parts)));
  }

  private static Optional<Name> person(MarcField field) {
    String heading = MarcText.bare(field.first('a').orElse(""), true);
    if (heading.isEmpty()) {
      return Optional.empty();
    }
    Optional<String> suffix = field.all('c').stream().map(MarcNames::suffix).findFirst();
    suffix = suffix.filter(s -> !s.isEmpty());
    if (field.one() == '0') {
      return Optional.of(forename(field, heading, suffix));
    }
    List<String> parts = new ArrayList<>();
    for (String part : heading.split(",", -1)) {
      String bare = part.strip();
      if (!bare.isEmpty() && (parts.isEmpty() || !isDates(bare))) {
        parts.add(bare);
      }
    }
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    for (int i = parts.size() - 1; i > 1; i--) {
      if (suffix.isEmpty() && !suffix(parts.get(i)).isEmpty()) {
        suffix = Optional.of(suffix(parts.get(i)));
      }
    }
    return Optional.of(split(parts.get(0), parts.size() > 1 ? parts.get(1) : "", suffix));
  }

  /** "John Paul$bII", "Leonardo,$cda Vinci". */
  private static Name forename(MarcField field, String name, Optional<String> suffix) {
    StringBuilder all = new StringBuilder(name);
    field.first('b').ifPresent(b -> all.append(' ').append(MarcText.bare(b, true)));
    for (String words : field.all('c')) {
      String bare = MarcText.bare(words, true);
      int space = bare.indexOf(' ');
      if (space > 0 && PARTICLES.contains(bare.substring(0, space))) {
        all.append(' ').append(bare);
      }
    }
    return new Name.Person(all.toString(), Optional.empty(), Optional.empty(), suffix);
  }

  private static Name split(String family, String given, Optional<String> suffix) {
    String particle = leadingParticle(family);
    String last = family.substring(particle.length()).strip();
    String first = given;
    if (particle.isEmpty()) {
      particle = trailingParticle(given);
      first = given.substring(0, given.length() - particle.length()).strip();
    }
    return new Name.Person(last, of(first), of(particle.strip()), suffix);
  }

  private static Optional<String> of(String text) {
    return Optional.of(text).filter(t -> !t.isEmpty());
  }

  /** The words in small letters before a family name; "" where nothing would be left of it. */
  private static String leadingParticle(String family) {
    int end = 0;
    int at = 0;
    while (at < family.length() && Character.isLowerCase(family.codePointAt(at))) {
      int space = family.indexOf(' ', at);
      if (space < 0) {
        return family.substring(0, end);
      }
      end = space;
      at = space + 1;
    }
    return at < family.length() ? family.substring(0, end) : "";
  }

  private static String trailingParticle(String given) {
    int start = given.length();
    while (start > 0) {
      int space = given.lastIndexOf(' ', start - 2);
      if (space < 0 || !PARTICLES.contains(given.substring(space + 1, start).strip())) {
        break;
      }
      start = space + 1;
    }
    return given.substring(start);
  }

  private static String suffix(String words) {
    String bare = MarcText.bare(words, true);
    return SUFFIXES.contains(bare.toLowerCase(Locale.ROOT)) ? bare : "";
  }

  private static boolean isDates(String part) {
    return DATES.matcher(part).matches();
  }

  /**
   * The heading of a name, without what the person did.
   *
   * @param main whether it is the main entry (1XX) or an added one (7XX)
   */
  static MarcField field(Name name, boolean main) {
    String hundreds = main ? "1" : "7";
    if (name instanceof Name.Body body) {
      return MarcField.data(hundreds + "10", "2 ", List.of(new Subfield('a', body.name())));
    }
    Name.Person person = (Name.Person) name;
    String family = person.particle().map(p -> p + " ").orElse("") + person.family();
    List<Subfield> subfields = new ArrayList<>();
    String heading = person.given().map(g -> family + ", " + g).orElse(family);
    boolean comma = person.given().isEmpty() && family.indexOf(',') >= 0;
    subfields.add(new Subfield('a', heading + (person.suffix().isPresent() ? "," : "")));
    person.suffix().ifPresent(s -> subfields.add(new Subfield('c', s)));
    return MarcField.data(hundreds + "00", comma ? "0 " : "1 ", subfields);
  }
}
