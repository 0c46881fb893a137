package merese.answer.pull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import merese.answer.Coverage.ConceptLine;
import merese.answer.pull.Pull.Others;
import merese.model.Locator;
import merese.shelf.Source;

/** An opening while it is being found: where, what for, and when it comes. */
final class Need {
  /** When something is needed; what is taken instead comes directly after. */
  record Turn(int at, boolean instead) implements Comparable<Turn> {
    @Override
    public int compareTo(Turn other) {
      int order = Integer.compare(at, other.at);
      return order != 0 ? order : Boolean.compare(instead, other.instead);
    }
  }

  final TreeSet<Turn> turns = new TreeSet<>();
  final Map<String, ConceptLine> concepts = new LinkedHashMap<>();
  final Optional<Locator> locator;
  final TreeSet<Locator> texts = new TreeSet<>();
  final Set<String> printed = new LinkedHashSet<>();
  final List<String> pointAt = new ArrayList<>();
  final Set<String> insteadOf = new LinkedHashSet<>();
  boolean pictured;
  Optional<Others> others = Optional.empty();
  Optional<String> turn = Optional.empty();
  Optional<Instead> instead = Optional.empty();

  Need(Optional<Locator> locator) {
    this.locator = locator;
  }

  /** What is taken in its place. */
  record Instead(boolean samePicture, Source source, Need need) {}

  void addConcepts(Iterable<ConceptLine> lines) {
    for (ConceptLine line : lines) {
      concepts.putIfAbsent(line.id(), line);
    }
  }

  /** Whether another one opens the same book at the same place. */
  boolean isAt(Optional<Locator> other) {
    if (locator.isEmpty() || other.isEmpty()) {
      return locator.isEmpty() && other.isEmpty();
    }
    return Places.holds(locator.get(), other.get()) && Places.holds(other.get(), locator.get());
  }

  boolean showsAllOf(Need other) {
    return locator.isPresent()
        && other.locator.isPresent()
        && Places.holds(locator.get(), other.locator.get())
        && concepts.keySet().containsAll(other.concepts.keySet());
  }
}
