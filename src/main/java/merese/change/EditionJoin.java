package merese.change;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import merese.change.Effect.Sort;
import merese.exchange.identifier.Identifiers;
import merese.model.Check;
import merese.model.Copy;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Edition.Part;
import merese.model.Identifier;
import merese.model.Note;
import merese.model.Place;
import merese.model.ReceivedRecord;

/**
 * Two editions that are the same thing as one, under the key of the first. Every note, copy, check,
 * part and received record of both is there afterwards; ids that both have are made unlike.
 */
final class EditionJoin {
  private final Edition kept;
  private final Edition other;
  private final List<Effect> effects = new ArrayList<>();
  private final FieldJoin fields;

  EditionJoin(Edition kept, Edition other) {
    this.kept = kept;
    this.other = other;
    this.fields = new FieldJoin(other.key(), effects);
  }

  List<Effect> effects() {
    return effects;
  }

  Edition joined() {
    Map<String, String> parts = partIds();
    Map<String, String> copies =
        renamed("copy", ids(kept.copies(), Copy::id), ids(other.copies(), Copy::id));
    Map<String, String> notes =
        renamed("note", ids(kept.notes(), Note::id), ids(other.notes(), Note::id));
    Map<String, String> pieces = renamed("piece", pieces(kept), pieces(other));
    return new Edition(
        kept.key(),
        imprint(),
        fields.lineage(kept, other),
        fields.container(kept.container(), other.container()),
        fields.occasion(kept.occasion(), other.occasion()),
        fields.archive(kept.archive(), other.archive()),
        fields.online(kept.online(), other.online()),
        fields.filled("scope", kept.scope(), other.scope(), merese.model.Scope::words),
        parts(parts),
        joined(kept.copies(), other.copies(), c -> withId(c, copies.get(c.id()))),
        joined(kept.notes(), other.notes(), n -> moved(n, notes.get(n.id()), parts, pieces)),
        joined(kept.checks(), other.checks(), c -> moved(c, copies)),
        received());
  }

  private static <T> List<T> joined(List<T> kept, List<T> other, Function<T, T> moved) {
    List<T> both = new ArrayList<>(kept);
    other.forEach(item -> both.add(moved.apply(item)));
    return both;
  }

  private static <T> List<String> ids(List<T> items, Function<T, String> id) {
    return items.stream().map(id).toList();
  }

  private static List<String> pieces(Edition edition) {
    return edition.notes().stream()
        .flatMap(note -> note.places().stream())
        .flatMap(place -> place.piece().stream())
        .distinct()
        .toList();
  }

  /** What each of the moving ids is to be; one that is free stays. */
  private Map<String, String> renamed(String noun, List<String> taken, List<String> moving) {
    Map<String, String> names = new HashMap<>();
    Set<String> used = new HashSet<>(taken);
    used.addAll(moving);
    for (String id : moving) {
      String name = id;
      for (int number = 2; taken.contains(id) && used.contains(name); number++) {
        name = id + "-" + number;
      }
      used.add(name);
      names.put(id, name);
      if (!name.equals(id)) {
        effects.add(
            new Effect(Sort.RENAMED, noun + " " + id + " of " + other.key() + " becomes " + name));
      }
    }
    return names;
  }

  /** A part that both have, but for its id, is one. */
  private Map<String, String> partIds() {
    Map<String, String> same = new HashMap<>();
    List<String> moving = new ArrayList<>();
    for (Part part : other.parts()) {
      Optional<Part> here = kept.parts().stream().filter(p -> isSame(p, part)).findFirst();
      here.ifPresentOrElse(p -> same.put(part.id(), p.id()), () -> moving.add(part.id()));
    }
    Map<String, String> names = renamed("part", ids(kept.parts(), Part::id), moving);
    names.putAll(same);
    return names;
  }

  private static boolean isSame(Part one, Part other) {
    return one.title().equals(other.title())
        && one.authors().equals(other.authors())
        && one.extent().equals(other.extent());
  }

  private List<Part> parts(Map<String, String> names) {
    List<Part> both = new ArrayList<>(kept.parts());
    for (Part part : other.parts()) {
      if (kept.parts().stream().noneMatch(p -> isSame(p, part))) {
        both.add(new Part(names.get(part.id()), part.title(), part.authors(), part.extent()));
      }
    }
    return both;
  }

  private static Copy withId(Copy copy, String id) {
    return new Copy(
        id, copy.holder(), copy.shelfMark(), copy.lentTo(), copy.missing(), copy.remark());
  }

  private static Note moved(
      Note note, String id, Map<String, String> parts, Map<String, String> pieces) {
    List<Place> places = new ArrayList<>();
    for (Place place : note.places()) {
      places.add(
          new Place(
              place.locator(),
              place.stance(),
              place.medium(),
              place.shows(),
              place.naming(),
              place.picture(),
              place.piece().map(pieces::get),
              place.corrects(),
              place.photo()));
    }
    return new Note(
        id,
        note.namings(),
        places,
        note.claims(),
        note.quotation(),
        note.reading(),
        note.part().map(part -> parts.getOrDefault(part, part)),
        note.object(),
        note.rights(),
        note.checked());
  }

  private static Check moved(Check check, Map<String, String> copies) {
    return new Check(
        check.concept(),
        check.extent(),
        check.method(),
        check.result(),
        check.scope(),
        check.on(),
        check.by(),
        check.copy().map(copy -> copies.getOrDefault(copy, copy)));
  }

  private List<ReceivedRecord> received() {
    List<ReceivedRecord> both = new ArrayList<>(kept.received());
    other.received().stream().filter(r -> !kept.received().contains(r)).forEach(both::add);
    return both;
  }

  /** A year as printed goes with its year, and the number of an edition with its words. */
  private Imprint imprint() {
    Imprint here = kept.imprint();
    Imprint there = other.imprint();
    boolean sameEdition = agree(here.number(), there.number());
    boolean sameYear = agree(here.year(), there.year());
    return new Imprint(
        here.title(),
        fields.filledIf(sameEdition, "edition", here.statement(), there.statement()),
        fields.filled("number of the edition", here.number(), there.number()),
        fields.filled("year", here.year(), there.year()),
        fields.filledIf(sameYear, "year as printed", here.yearPrinted(), there.yearPrinted()),
        fields.filled("place", here.places(), there.places()),
        fields.filled("publisher", here.publisher(), there.publisher(), p -> p),
        fields.filled("volumes", here.volumes(), there.volumes()),
        fields.filled("series", here.series(), there.series(), s -> s),
        identifiers(here.identifiers(), there.identifiers()),
        fields.filled("noted as", here.notedAs(), there.notedAs(), n -> n));
  }

  private static boolean agree(OptionalInt here, OptionalInt there) {
    return here.isEmpty() || there.isEmpty() || here.equals(there);
  }

  private List<Identifier> identifiers(List<Identifier> here, List<Identifier> there) {
    List<Identifier> both = new ArrayList<>(here);
    for (Identifier identifier : there) {
      if (both.stream().noneMatch(i -> Identifiers.isSame(i, identifier))) {
        both.add(identifier);
        effects.add(new Effect(Sort.ADDED, identifier.scheme().name() + ": " + identifier.value()));
      }
    }
    return both;
  }
}
