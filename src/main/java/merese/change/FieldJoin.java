package merese.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import merese.change.Effect.Sort;
import merese.model.Edition;
import merese.model.Edition.Archive;
import merese.model.Edition.Container;
import merese.model.Edition.Lineage;
import merese.model.Edition.Occasion;
import merese.model.Edition.Online;
import merese.model.Edition.PlateChange;
import merese.model.Locator;

/** What the kept edition says of one thing; where it says nothing, what the other says. */
final class FieldJoin {
  private final String other;
  private final List<Effect> effects;

  FieldJoin(String other, List<Effect> effects) {
    this.other = other;
    this.effects = effects;
  }

  <T> Optional<T> filled(
      String what, Optional<T> here, Optional<T> there, Function<T, String> words) {
    if (there.isEmpty() || there.equals(here)) {
      return here;
    }
    if (here.isEmpty()) {
      added(what, words.apply(there.get()));
      return there;
    }
    stays(what, words.apply(here.get()), words.apply(there.get()));
    return here;
  }

  /** The same, but the kept edition goes without where the other's would contradict it. */
  Optional<String> filledIf(
      boolean fits, String what, Optional<String> here, Optional<String> there) {
    if (fits || here.isPresent() || there.isEmpty()) {
      return filled(what, here, there, text -> text);
    }
    stays(what, "none", there.get());
    return here;
  }

  OptionalInt filled(String what, OptionalInt here, OptionalInt there) {
    Optional<Integer> value = filled(what, boxed(here), boxed(there), n -> Integer.toString(n));
    return value.isPresent() ? OptionalInt.of(value.get()) : OptionalInt.empty();
  }

  private static Optional<Integer> boxed(OptionalInt value) {
    return value.isPresent() ? Optional.of(value.getAsInt()) : Optional.empty();
  }

  List<String> filled(String what, List<String> here, List<String> there) {
    Optional<List<String>> some = Optional.of(here).filter(list -> !list.isEmpty());
    Optional<List<String>> others = Optional.of(there).filter(list -> !list.isEmpty());
    return filled(what, some, others, list -> String.join(", ", list)).orElse(List.of());
  }

  private void added(String what, String words) {
    effects.add(new Effect(Sort.ADDED, what + ": " + words));
  }

  private void stays(String what, String here, String there) {
    effects.add(new Effect(Sort.STAYS, what + ": " + here + " (" + other + ": " + there + ")"));
  }

  Optional<Lineage> lineage(Edition kept, Edition from) {
    if (kept.lineage().isEmpty() || from.lineage().isEmpty()) {
      return filled("descent", kept.lineage(), from.lineage(), FieldJoin::descent);
    }
    Lineage here = kept.lineage().get();
    Lineage there = from.lineage().get();
    if (here.form() != there.form()) {
      stays("descent", descent(here), descent(there));
      return kept.lineage();
    }
    List<PlateChange> plates = new ArrayList<>(here.plates());
    there.plates().stream().filter(p -> !plates.contains(p)).forEach(plates::add);
    return Optional.of(
        new Lineage(
            here.form(),
            filled(here.form().code() + " of", here.parent(), there.parent(), p -> p),
            filled("year of the original", here.originalYear(), there.originalYear()),
            filled("new matter", here.newMatter(), there.newMatter(), m -> m),
            plates));
  }

  private static String descent(Lineage lineage) {
    return lineage
        .parent()
        .map(parent -> WorkJoin.descent(lineage.form(), parent))
        .orElse(lineage.form().code());
  }

  /** Of two journals, volumes and so on that differ, the kept one stays whole. */
  Optional<Container> container(Optional<Container> kept, Optional<Container> from) {
    if (kept.isEmpty() || from.isEmpty() || !kept.get().title().equals(from.get().title())) {
      return filled("in", kept, from, Container::title);
    }
    Container here = kept.get();
    Container there = from.get();
    return Optional.of(
        new Container(
            here.title(),
            filled("society", here.society(), there.society(), s -> s),
            filled("volume", here.volume(), there.volume(), v -> v),
            filled("part", here.part(), there.part(), p -> p),
            filled("issue", here.issue(), there.issue(), i -> i),
            filled("year on the cover", here.coverYear(), there.coverYear()),
            filled("pages", here.pages(), there.pages(), Locator::printed)));
  }

  Optional<Occasion> occasion(Optional<Occasion> kept, Optional<Occasion> from) {
    if (kept.isEmpty() || from.isEmpty()) {
      return filled("occasion", kept, from, o -> o.house().or(o::dates).or(o::city).orElse("one"));
    }
    Occasion here = kept.get();
    Occasion there = from.get();
    return Optional.of(
        new Occasion(
            filled("house", here.house(), there.house(), h -> h),
            filled("city", here.city(), there.city(), c -> c),
            filled("dates", here.dates(), there.dates(), d -> d),
            filled("code", here.code(), there.code(), c -> c),
            filled("consignor", here.consignor(), there.consignor(), c -> c),
            filled("venues", here.venues(), there.venues())));
  }

  Optional<Archive> archive(Optional<Archive> kept, Optional<Archive> from) {
    if (kept.isEmpty()
        || from.isEmpty()
        || !kept.get().repository().equals(from.get().repository())) {
      return filled("kept at", kept, from, Archive::repository);
    }
    Archive here = kept.get();
    Archive there = from.get();
    return Optional.of(
        new Archive(
            here.repository(),
            filled("shelf mark", here.shelfMark(), there.shelfMark(), s -> s),
            filled("firm", here.firm(), there.firm(), f -> f),
            filled("foliated by", here.foliatedBy(), there.foliatedBy(), f -> f),
            filled("degree", here.degree(), there.degree(), d -> d)));
  }

  Optional<Online> online(Optional<Online> kept, Optional<Online> from) {
    if (kept.isEmpty() || from.isEmpty() || !kept.get().url().equals(from.get().url())) {
      return filled("on the web", kept, from, Online::url);
    }
    Online here = kept.get();
    Online there = from.get();
    return Optional.of(
        new Online(
            here.url(),
            filled("read on", here.accessed(), there.accessed(), a -> a),
            filled("archived at", here.archived(), there.archived(), a -> a)));
  }
}
