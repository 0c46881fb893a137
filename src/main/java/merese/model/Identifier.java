package merese.model;

import java.util.Optional;

/**
 * A number that names a publication, as it stands in the source.
 *
 * @param value in its usual form (an ISBN with its hyphens); as printed where it is wrong in print
 * @param qualifier what it is the number of, such as "pbk" or "vol. 2"
 * @param wrongInPrint true where the source itself prints it so and it fails its own check
 */
public record Identifier(
    Scheme scheme, String value, Optional<String> qualifier, boolean wrongInPrint) {
  /** Who gives the numbers, and by which standard. */
  public enum Scheme implements Coded {
    /** ISO 2108, with ten digits or thirteen. */
    ISBN,
    /** ISO 3297; for an article, that of its journal. */
    ISSN,
    /** ISO 26324. */
    DOI
  }

  public Identifier {
    Require.text(value, "an identifier");
  }

  public static Identifier of(Scheme scheme, String value) {
    return new Identifier(scheme, value, Optional.empty(), false);
  }
}
