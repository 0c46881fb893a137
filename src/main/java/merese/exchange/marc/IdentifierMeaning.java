package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import merese.exchange.identifier.Identifiers;
import merese.model.Identifier;
import merese.model.Identifier.Scheme;

/**
 * The numbers of a record: ISBN (020), ISSN (022, and 773 $x for an article's journal) and DOI
 * (024). A number in subfield z (and y of 022) is a wrong or cancelled one, so it is taken as it
 * stands.
 */
final class IdentifierMeaning {
  private static final Pattern ISBN =
      Pattern.compile("^(?:ISBN[:\\s]*)?([0-9Xx][0-9Xx\\-–— ]*)(.*)$", Pattern.DOTALL);

  private static final Pattern AS_IT_STANDS =
      Pattern.compile("^([^(]*[^\\s(])(.*)$", Pattern.DOTALL);

  private final List<Identifier> identifiers = new ArrayList<>();
  private final List<String> remarks;

  private IdentifierMeaning(List<String> remarks) {
    this.remarks = remarks;
  }

  /**
   * @param remarks are added to for each number that fails its check
   */
  static List<Identifier> of(MarcRecord record, List<String> remarks) {
    IdentifierMeaning meaning = new IdentifierMeaning(remarks);
    for (MarcField field : record.fields()) {
      switch (field.tag()) {
        case "020" -> meaning.isbns(field);
        case "022" -> meaning.issns(field);
        case "024" -> meaning.dois(field);
        case "773" -> field.all('x').forEach(x -> meaning.issn(x, false));
        default -> {}
      }
    }
    return List.copyOf(meaning.identifiers);
  }

  static boolean isDoi(MarcField field) {
    return field.is("024")
        && field.one() == '7'
        && field.first('2').filter(s -> s.toLowerCase(Locale.ROOT).equals("doi")).isPresent();
  }

  private void isbns(MarcField field) {
    String qualifiers = String.join(" ; ", field.all('q').stream().map(this::qualifier).toList());
    field.all('a').forEach(a -> isbn(a, qualifiers, false));
    field.all('z').forEach(z -> isbn(z, qualifiers, true));
  }

  private void isbn(String text, String qualifiers, boolean wrong) {
    String bare = MarcText.bare(text, true);
    Matcher matcher = (wrong ? AS_IT_STANDS : ISBN).matcher(bare);
    if (!matcher.matches()) {
      return;
    }
    String number = matcher.group(1).strip();
    String rest = matcher.group(2).strip();
    boolean price = rest.startsWith(":");
    int close = rest.indexOf(')');
    String own = price ? "" : qualifier(close > 0 ? rest.substring(0, close + 1) : rest);
    String all =
        own.isEmpty() || qualifiers.isEmpty() ? own + qualifiers : own + " ; " + qualifiers;
    Optional<String> qualifier = Optional.of(all).filter(q -> !q.isEmpty());
    Identifier isbn =
        wrong
            ? new Identifier(Scheme.ISBN, number, qualifier, true)
            : qualified(Identifiers.isbn(number), qualifier);
    add(isbn, !wrong);
  }

  private static Identifier qualified(Identifier isbn, Optional<String> qualifier) {
    return new Identifier(isbn.scheme(), isbn.value(), qualifier, isbn.wrongInPrint());
  }

  private String qualifier(String text) {
    String bare = MarcText.bare(text, true);
    while (bare.startsWith("(")) {
      bare = bare.substring(1).strip();
    }
    while (bare.endsWith(")") && bare.indexOf('(') < 0) {
      bare = bare.substring(0, bare.length() - 1).strip();
    }
    return bare;
  }

  private void issns(MarcField field) {
    field.all('a').forEach(a -> issn(a, false));
    field.all('y').forEach(y -> issn(y, true));
    field.all('z').forEach(z -> issn(z, true));
  }

  private void issn(String text, boolean wrong) {
    String number = MarcText.bare(text, true);
    if (!number.isEmpty()) {
      add(
          wrong
              ? new Identifier(Scheme.ISSN, number, Optional.empty(), true)
              : Identifiers.issn(number),
          !wrong);
    }
  }

  private void dois(MarcField field) {
    if (isDoi(field)) {
      field.all('a').forEach(a -> add(Identifiers.doi(a), true));
      field
          .all('z')
          .forEach(z -> add(new Identifier(Scheme.DOI, z, Optional.empty(), true), false));
    }
  }

  private void add(Identifier identifier, boolean checked) {
    if (identifiers.contains(identifier)) {
      return;
    }
    identifiers.add(identifier);
    if (checked && identifier.wrongInPrint()) {
      Identifiers.fault(identifier)
          .ifPresent(f -> remarks.add(f + "; recorded as it stands, as wrong in print"));
    }
  }
}
