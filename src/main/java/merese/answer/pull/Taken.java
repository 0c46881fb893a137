package merese.answer.pull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.answer.pull.Pull.Stand;
import merese.model.Locator;
import merese.model.OwnObject;
import merese.shelf.Source;

/** A book or a piece, with all that it is needed for. */
final class Taken {
  private final Optional<Source> source;
  private final Optional<OwnObject> piece;
  private final Shelving shelving;
  private final List<Need> needs = new ArrayList<>();

  Taken(Source source, Shelving shelving) {
    this.source = Optional.of(source);
    this.piece = Optional.empty();
    this.shelving = shelving;
  }

  Taken(OwnObject piece) {
    this.source = Optional.empty();
    this.piece = Optional.of(piece);
    this.shelving =
        new Shelving(
            new Stand(piece.place(), Optional.empty(), Optional.empty(), false),
            Optional.empty(),
            Optional.empty(),
            true);
  }

  Optional<Source> source() {
    return source;
  }

  Optional<OwnObject> piece() {
    return piece;
  }

  Shelving shelving() {
    return shelving;
  }

  List<Need> needs() {
    return needs;
  }

  /** The opening that is there already at this place, taking in what is new of it. */
  Need add(Need need) {
    Optional<Need> there = find(need.locator);
    if (there.isEmpty()) {
      needs.add(need);
      return need;
    }
    Need known = there.get();
    known.turns.addAll(need.turns);
    known.addConcepts(need.concepts.values());
    known.texts.addAll(need.texts);
    known.printed.addAll(need.printed);
    known.pictured |= need.pictured;
    need.pointAt.stream().filter(p -> !known.pointAt.contains(p)).forEach(known.pointAt::add);
    return known;
  }

  /** A piece is shown as often as it is needed, unless just the same is shown again. */
  void addPiece(Need need) {
    for (Need known : needs) {
      if (known.pointAt.equals(need.pointAt) && known.turn.equals(need.turn)) {
        known.turns.addAll(need.turns);
        known.addConcepts(need.concepts.values());
        return;
      }
    }
    needs.add(need);
  }

  /** The opening that shows what another one would: at its place, or round it. */
  Optional<Need> findShowing(Need other) {
    Optional<Need> there = find(other.locator);
    return there.isPresent()
        ? there
        : needs.stream().filter(need -> need.showsAllOf(other)).findFirst();
  }

  private Optional<Need> find(Optional<Locator> locator) {
    return needs.stream().filter(need -> need.isAt(locator)).findFirst();
  }
}
