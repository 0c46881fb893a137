package merese.exchange.bibtex;

import static java.util.Map.entry;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import merese.exchange.Aspect;
import merese.model.ReceivedRecord;

/**
 * Which parts of a description a field of a received record is read as; for most fields of the many
 * that there are none, and they have no home in a library.
 */
final class FieldAspects {
  private static final Map<String, Set<Aspect>> OF_ALL =
      Map.ofEntries(
          entry("author", EnumSet.of(Aspect.PEOPLE)), entry("editor", EnumSet.of(Aspect.PEOPLE)));

  private FieldAspects() {}

  static Set<Aspect> of(ReceivedRecord record, String field) {
    return OF_ALL.getOrDefault(field, Set.of());
  }
}
