package merese.answer.rights;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import merese.answer.rights.Rights.Credit;
import merese.answer.rights.Rights.Layer;
import merese.answer.rights.Rights.Said;
import merese.citation.Citations;
import merese.citation.Output;
import merese.model.Locator;
import merese.shelf.Source;

/** The line to show beside a picture: what its holders ask for, else what is known. */
final class CreditMaker {
  private final Citations citations;

  CreditMaker(Citations citations) {
    this.citations = citations;
  }

  /**
   * @param wordings those that holders ask for
   * @param maker whom the source names as its photographer or illustrator
   */
  Credit of(
      Source source,
      List<Locator> where,
      List<String> wordings,
      Optional<String> maker,
      Layer photograph,
      Layer owner) {
    if (!wordings.isEmpty()) {
      return new Credit(String.join("; ", wordings), false);
    }
    String cited =
        citations.note(
            merese.citation.Source.of(source.work(), source.edition()), where, Output.TEXT);
    StringBuilder words = new StringBuilder(cited);
    if (cited.endsWith(".")) {
      words.setLength(cited.length() - 1);
    }
    holders(photograph)
        .or(() -> maker)
        .ifPresent(names -> words.append("; photograph: ").append(names));
    holders(owner).ifPresent(names -> words.append("; piece: ").append(names));
    return new Credit(words.append('.').toString(), true);
  }

  private static Optional<String> holders(Layer layer) {
    Set<String> names = new LinkedHashSet<>();
    for (Said said : layer.said()) {
      said.holder().ifPresent(names::add);
    }
    if (names.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(String.join(", ", names));
  }
}
