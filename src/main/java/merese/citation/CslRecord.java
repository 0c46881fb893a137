package merese.citation;

import de.undercouch.citeproc.helper.json.MapJsonBuilderFactory;
import java.util.Map;

/**
 * The CSL item of a source, for no style in particular: what a style is given to cite it, with each
 * text just as it stands in the library.
 */
public final class CslRecord {
  private CslRecord() {}

  /**
   * The variables of the CSL 1.0.2 schema by name; a value is a {@code String}, an {@code Integer},
   * a {@code Boolean}, or a {@code List} or {@code Map} of these. A numbered edition is its number
   * in digits.
   */
  @SuppressWarnings("unchecked")
  public static Map<String, Object> of(Source source) {
    return (Map<String, Object>)
        CslItem.neutral(source).toJson(new MapJsonBuilderFactory().createJsonBuilder());
  }
}
