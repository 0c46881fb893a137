package merese.exchange.identifier;

import java.util.Optional;
import merese.model.Identifier;
import merese.model.Identifier.Scheme;

/**
 * Reads ISBNs, ISSNs and DOIs as they are printed.
 *
 * <p>Guarantees: a number that passes its check comes in its usual form (an ISBN hyphenated by its
 * range, an ISSN with its hyphen, a DOI bare); one that fails comes as wrong in print and just as
 * it stands. What is in brackets after an ISBN or ISSN ("pbk.") becomes its qualifier. Reading the
 * value of what was read gives the same again. What is handed in must not be blank.
 */
public final class Identifiers {
  private Identifiers() {}

  /** An ISBN by ISO 2108, of ten digits or thirteen. */
  public static Identifier isbn(String printed) {
    Labelled number = Labelled.isbn(printed);
    return identifier(Scheme.ISBN, number, Isbn.of(number.number()).map(Isbn::hyphenated));
  }

  /** An ISSN by ISO 3297. */
  public static Identifier issn(String printed) {
    Labelled number = Labelled.issn(printed);
    return identifier(Scheme.ISSN, number, Issn.usualForm(number.number()));
  }

  /**
   * A DOI by ISO 26324: without "doi:" or the address of a resolver; percent signs are decoded in
   * an address only. A full stop at the end, after a letter, digit or bracket, is the sentence's.
   */
  public static Identifier doi(String printed) {
    Labelled number = new Labelled(printed.strip(), Optional.empty());
    return identifier(Scheme.DOI, number, Doi.bare(printed));
  }

  private static Identifier identifier(Scheme scheme, Labelled number, Optional<String> usual) {
    return new Identifier(
        scheme, usual.orElse(number.number()), number.qualifier(), usual.isEmpty());
  }

  /**
   * What is wrong with it, as a sentence without its full stop: "ISBN 0-306-40615-3 fails its check
   * digit"; empty where it passes.
   */
  public static Optional<String> fault(Identifier identifier) {
    String value = identifier.value();
    return switch (identifier.scheme()) {
      case ISBN -> Isbn.of(value).isPresent() ? Optional.empty() : Optional.of(IsbnFault.of(value));
      case ISSN -> Issn.fault(value);
      case DOI -> Doi.fault(value);
    };
  }

  /**
   * The check digit that would be right after the other digits of an ISBN or ISSN that fails its
   * check: for whoever looks at the source again, since any other digit may be the wrong one. Empty
   * where it is not the check digit that fails.
   */
  public static Optional<String> rightDigit(Identifier identifier) {
    Optional<String> digits = Digits.compact(identifier.value()).filter(d -> !d.isEmpty());
    if (identifier.scheme() == Scheme.DOI || digits.isEmpty() || fault(identifier).isEmpty()) {
      return Optional.empty();
    }
    String others = digits.get().substring(0, digits.get().length() - 1);
    for (char digit : "0123456789X".toCharArray()) {
      if (fault(Identifier.of(identifier.scheme(), others + digit)).isEmpty()) {
        return Optional.of(String.valueOf(digit));
      }
    }
    return Optional.empty();
  }

  /**
   * Whether two name the same publication, whatever their qualifiers: an ISBN of ten digits is its
   * ISBN of thirteen, an SBN of nine is the ISBN that has a nought before it, and a DOI has no
   * case. What fails its check is the same only as what has the same digits.
   */
  public static boolean isSame(Identifier one, Identifier other) {
    return one.scheme() == other.scheme() && compared(one).equals(compared(other));
  }

  /** A text that is equal for two of one scheme that are {@linkplain #isSame the same}. */
  public static String compared(Identifier identifier) {
    String value = identifier.value();
    return switch (identifier.scheme()) {
      case ISBN ->
          Isbn.of(value)
              .or(() -> Isbn.ofSbn(value))
              .map(Isbn::thirteen)
              .orElse(compact(identifier));
      case ISSN -> compact(identifier);
      case DOI -> Doi.folded(Doi.bare(value).orElse(value));
    };
  }

  /** An ISBN or ISSN without its hyphens, as catalogue records have it; a DOI as it is. */
  public static String compact(Identifier identifier) {
    return identifier.scheme() == Scheme.DOI
        ? identifier.value()
        : Digits.compact(identifier.value()).orElse(identifier.value());
  }
}
