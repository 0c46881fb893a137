package merese.answer.pull;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import merese.answer.Coverage.SourceLine;
import merese.answer.ReadingList;
import merese.answer.SourceLines;
import merese.answer.pull.Pull.Instead;
import merese.answer.pull.Pull.Item;
import merese.answer.pull.Pull.Opening;
import merese.model.LocatorKind;
import merese.model.OwnObject;
import merese.shelf.Shelf;
import merese.shelf.Source;

/** Puts what is taken into the two orders, and into words. */
final class PullMaker {
  private static final Comparator<String> NATURAL = new NaturalOrder();

  private static final Comparator<Item> BY_SHELF =
      Comparator.comparing((Item item) -> item.stand().holder().isPresent())
          .thenComparing(item -> item.stand().online())
          .thenComparing(item -> item.stand().holder().orElse(""), NATURAL)
          .thenComparing(item -> item.stand().mark().isEmpty())
          .thenComparing(item -> item.stand().mark().orElse(""), NATURAL)
          .thenComparing(item -> item.source().isEmpty())
          .thenComparing(Item::name, NATURAL)
          .thenComparing(Item::title, NATURAL);

  private static final Comparator<Opening> BY_PAGE =
      Comparator.comparing((Opening opening) -> opening.locator().isEmpty())
          .thenComparing(
              (a, b) ->
                  a.locator().isEmpty() || b.locator().isEmpty()
                      ? 0
                      : a.locator().get().compareTo(b.locator().get()))
          .thenComparing(opening -> opening.needs().get(0));

  private final SourceLines lines;
  private final Collection<Taken> taken;
  private final Map<Need.Turn, Integer> numbers = new HashMap<>();
  private final SpokenSource spoken;

  PullMaker(Shelf shelf, Collection<Taken> taken) {
    this.lines = new SourceLines();
    this.taken = taken;
    TreeSet<Need.Turn> turns = new TreeSet<>();
    List<Source> sources = new ArrayList<>();
    for (Taken each : taken) {
      each.source().ifPresent(sources::add);
      for (Need need : each.needs()) {
        turns.addAll(need.turns);
      }
    }
    for (Need.Turn turn : turns) {
      numbers.put(turn, numbers.size() + 1);
    }
    this.spoken = new SpokenSource(sources);
  }

  Pull pull(boolean fromScript, List<String> asked, List<String> uncovered, List<String> remarks) {
    List<Item> inOrder = new ArrayList<>();
    List<Item> byShelf = new ArrayList<>();
    List<Item> notAtHand = new ArrayList<>();
    for (Taken each : taken) {
      Item item = item(each);
      inOrder.add(item);
      if (each.shelving().obtainable()) {
        List<Opening> openings = new ArrayList<>(item.openings());
        openings.sort(BY_PAGE);
        byShelf.add(item.withOpenings(openings));
      } else {
        notAtHand.add(item);
      }
    }
    inOrder.sort(Comparator.comparing(item -> item.openings().get(0).needs().get(0)));
    notAtHand.sort(Comparator.comparing(item -> item.openings().get(0).needs().get(0)));
    byShelf.sort(BY_SHELF);
    return new Pull(
        fromScript,
        List.copyOf(asked),
        inOrder,
        byShelf,
        notAtHand,
        List.copyOf(uncovered),
        List.copyOf(remarks),
        ReadingList.CAUTION);
  }

  private Item item(Taken each) {
    Optional<SourceLine> line = each.source().map(lines::of);
    Optional<OwnObject> piece = each.piece();
    List<Opening> openings = new ArrayList<>();
    for (Need need : each.needs()) {
      openings.add(opening(each, need));
    }
    openings.sort(Comparator.comparing(opening -> opening.needs().get(0)));
    return new Item(
        line,
        piece.map(OwnObject::ref),
        line.isPresent() ? line.get().reference() : piece.orElseThrow().ref(),
        line.isPresent() ? line.get().title() : piece.orElseThrow().title(),
        each.shelving().stand(),
        each.shelving().flag(),
        each.shelving().remark(),
        openings);
  }

  private Opening opening(Taken each, Need need) {
    return new Opening(
        numbers(need),
        List.copyOf(need.concepts.values()),
        need.locator,
        need.locator.map(Places::slip).map(List::of).orElse(List.of()),
        List.copyOf(need.texts),
        need.pictured,
        need.pointAt.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", need.pointAt)),
        List.copyOf(need.printed),
        need.others,
        need.turn,
        say(each, need),
        need.insteadOf.isEmpty()
            ? Optional.empty()
            : Optional.of(String.join("; ", need.insteadOf)),
        need.instead.map(
            other ->
                new Instead(
                    other.samePicture(),
                    lines.of(other.source()),
                    other.need().locator,
                    numbers(other.need()))));
  }

  private List<Integer> numbers(Need need) {
    return need.turns.stream().map(numbers::get).toList();
  }

  private String say(Taken each, Need need) {
    if (each.source().isEmpty()) {
      return "my own piece: " + each.piece().orElseThrow().title();
    }
    String book = spoken.of(each.source().get());
    if (need.locator.isEmpty()) {
      return book;
    }
    String at = need.locator.get().labelKind() == LocatorKind.TIMESTAMP ? "at " : "";
    String place = Spoken.locator(need.locator.get());
    return (place.startsWith("from ") ? place : at + place) + ", in " + book;
  }
}
