package merese.exchange.skos;

import java.util.List;
import java.util.Optional;
import merese.model.ReceivedRecord;

/**
 * A collection of concepts.
 *
 * @param members addresses of concepts and of other collections; in the file's order
 * @param ordered whether that order means something
 * @param headNoun as an export of ours says it of a facet
 * @param optionalWords likewise
 * @param rest as that of a concept
 */
public record SkosGroup(
    String uri,
    List<SkosText> labels,
    List<String> notations,
    List<String> members,
    boolean ordered,
    Optional<String> headNoun,
    List<String> optionalWords,
    List<ReceivedRecord.Field> rest) {

  public SkosGroup {
    labels = List.copyOf(labels);
    notations = List.copyOf(notations);
    members = List.copyOf(members);
    optionalWords = List.copyOf(optionalWords);
    rest = List.copyOf(rest);
  }
}
