package merese.exchange.skos;

import java.util.List;
import merese.model.Homonym;
import merese.model.ReceivedRecord;

/**
 * A vocabulary as a whole.
 *
 * @param top addresses of the top concepts that it names
 * @param register words that must ask which concept is meant, as an export of ours notes them
 * @param rest as that of a concept
 */
public record SkosScheme(
    String uri,
    List<SkosText> labels,
    List<String> top,
    List<Homonym> register,
    List<ReceivedRecord.Field> rest) {

  public SkosScheme {
    labels = List.copyOf(labels);
    top = List.copyOf(top);
    register = List.copyOf(register);
    rest = List.copyOf(rest);
  }
}
