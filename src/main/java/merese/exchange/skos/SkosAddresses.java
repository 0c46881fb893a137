package merese.exchange.skos;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;

/**
 * The addresses of a library's own concepts: a base with the concept's id behind it. They are
 * stable as long as the ids are.
 *
 * <p>Without a base of one's own, {@value #DEFAULT} is used. It names no place on the web and no
 * owner, and is the same in every library, so that the concepts of the starter vocabulary have one
 * address wherever they are written from; whoever publishes a vocabulary gives a base under an
 * address of their own.
 *
 * @param base ends in "/", "#" or ":"
 */
public record SkosAddresses(String base) {
  public static final String DEFAULT = "urn:merese:vocabulary:";

  private static final String FACET = "facet/";
  private static final String UNRESERVED = "-._~";
  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  /** Refuses what is no base, in words for the user. */
  public SkosAddresses {
    boolean ends = base.endsWith("/") || base.endsWith("#") || base.endsWith(":");
    if (!ends || !Turtle.isAbsoluteIri(base + "a") || base.indexOf(':') == base.length() - 1) {
      throw new IllegalArgumentException(
          "\""
              + base
              + "\" cannot be the base of addresses; give one that ends in \"/\", \"#\" or \":\","
              + " such as \"https://example.org/glass/\"");
    }
  }

  public static SkosAddresses usual() {
    return new SkosAddresses(DEFAULT);
  }

  public String concept(String id) {
    return base + encoded(id);
  }

  public String facet(String id) {
    return base + FACET + encoded(id);
  }

  /** The address of the vocabulary itself: the base less its last character. */
  public String scheme() {
    return base.substring(0, base.length() - 1);
  }

  /** The id of one of the library's concepts; empty for any other address. */
  public Optional<String> conceptId(String uri) {
    return uri.startsWith(base) && !uri.startsWith(base + FACET)
        ? decoded(uri.substring(base.length()))
        : Optional.empty();
  }

  /** The id of one of the library's facets. */
  public Optional<String> facetId(String uri) {
    return uri.startsWith(base + FACET)
        ? decoded(uri.substring(base.length() + FACET.length()))
        : Optional.empty();
  }

  static String encoded(String id) {
    StringBuilder out = new StringBuilder(id.length());
    for (byte b : id.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xFF);
      boolean plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
      if (plain || UNRESERVED.indexOf(c) >= 0) {
        out.append(c);
      } else {
        out.append('%').append(HEX.toHexDigits(b));
      }
    }
    return out.toString();
  }

  /** Empty for what {@link #encoded} does not make. */
  private static Optional<String> decoded(String encoded) {
    byte[] bytes = new byte[encoded.length()];
    int length = 0;
    for (int i = 0; i < encoded.length(); i++) {
      char c = encoded.charAt(i);
      if (c == '%') {
        if (i + 2 >= encoded.length()
            || !HexFormat.isHexDigit(encoded.charAt(i + 1))
            || !HexFormat.isHexDigit(encoded.charAt(i + 2))) {
          return Optional.empty();
        }
        bytes[length++] = (byte) HexFormat.fromHexDigits(encoded, i + 1, i + 3);
        i += 2;
      } else {
        bytes[length++] = (byte) c;
      }
    }
    String id = new String(bytes, 0, length, StandardCharsets.UTF_8);
    return !id.isBlank() && encoded(id).equals(encoded) ? Optional.of(id) : Optional.empty();
  }
}
