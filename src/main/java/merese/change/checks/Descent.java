package merese.change.checks;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import merese.model.Edition;
import merese.model.Edition.Lineage;
import merese.model.Work;
import merese.store.Stored;

/** Which edition comes from which: none from itself, and none before its parent. */
final class Descent {
  private record Known(Path file, OptionalInt year, Optional<String> parent, boolean later) {}

  private final Map<String, Known> editions = new HashMap<>();

  void add(Stored<Work> file) {
    for (Edition edition : file.value().editions()) {
      Optional<Lineage> lineage = edition.lineage();
      boolean later = lineage.filter(l -> l.form() != Lineage.Form.TWIN).isPresent();
      editions.put(
          edition.key(),
          new Known(
              file.file(), edition.imprint().year(), lineage.flatMap(Lineage::parent), later));
    }
  }

  void look(Function<Path, Stored<Work>> works, Findings findings) {
    editions.forEach(
        (key, known) -> {
          Known parent = known.parent().map(editions::get).orElse(null);
          if (parent == null) {
            return;
          }
          if (isItsOwnAncestor(key)) {
            Stored<Work> file = works.apply(known.file());
            findings.error(
                file,
                Position.inEdition(file.content(), key, "lineage", known.parent().get()),
                key,
                "it descends from itself, by its \"parent\" " + known.parent().get(),
                "name as \"parent\" the edition that it repeats or revises");
          } else if (known.later()
              && known.year().isPresent()
              && parent.year().isPresent()
              && known.year().getAsInt() < parent.year().getAsInt()) {
            Stored<Work> file = works.apply(known.file());
            findings.warn(
                file,
                Position.inEdition(file.content(), key, "lineage", known.parent().get()),
                key,
                "it is of "
                    + known.year().getAsInt()
                    + ", before its parent "
                    + known.parent().get()
                    + " of "
                    + parent.year().getAsInt(),
                "correct a year, or \"parent\"");
          }
        });
  }

  private boolean isItsOwnAncestor(String key) {
    Set<String> seen = new HashSet<>();
    String at = key;
    while (seen.add(at)) {
      Known known = editions.get(at);
      if (known == null || known.parent().isEmpty()) {
        return false;
      }
      at = known.parent().get();
      if (at.equals(key)) {
        return true;
      }
    }
    return false;
  }
}
