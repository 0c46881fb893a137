package merese.answer.rights;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import merese.answer.Coverage.ConceptLine;
import merese.answer.SourceLines;
import merese.answer.rights.PictureList.Shown;
import merese.answer.rights.Rights.Credit;
import merese.answer.rights.Rights.Layer;
import merese.answer.rights.Rights.Printing;
import merese.answer.rights.Rights.Said;
import merese.answer.rights.Rights.Standing;
import merese.citation.Citations;
import merese.model.Locator;
import merese.model.Note;
import merese.model.PictureRights;
import merese.model.PictureRights.Status;
import merese.model.Place;
import merese.shelf.Shelf;
import merese.shelf.Source;
import merese.shelf.SourcedNote;

/** Tells of a picture in one source what is noted of its layers, and what to credit. */
final class PrintingMaker {
  private final Shelf shelf;
  private final SourceLines lines;
  private final CreditMaker credits;
  private final Map<Source, List<SourcedNote>> noting = new HashMap<>();
  private final Map<String, Source> sources = new HashMap<>();

  PrintingMaker(Shelf shelf, SourceLines lines, Citations citations) {
    this.shelf = shelf;
    this.lines = lines;
    this.credits = new CreditMaker(citations);
    shelf.sources().forEach(source -> sources.put(source.key(), source));
  }

  Printing printing(Shown shown) {
    Source source = shown.source();
    List<PictureRights> rights = new ArrayList<>();
    Set<String> noted = new LinkedHashSet<>();
    for (SourcedNote note : notingRightsOf(shown)) {
      rights.add(note.note().rights().orElseThrow());
      note.note().checked().map(PrintingMaker::words).ifPresent(noted::add);
    }
    Layer book = new Layer(Known.ofBook(source), said(rights, PictureRights::book));
    Layer photograph =
        new Layer(
            Known.ofPhotograph(source, shown.isDrawn()), said(rights, PictureRights::photograph));
    Layer owner = new Layer(Known.ofOwner(shown.notes()), said(rights, PictureRights::owner));
    List<String> words = texts(rights, PictureRights::words);
    List<ConceptLine> narrower = new ArrayList<>();
    for (String id : shown.narrower()) {
      narrower.add(new ConceptLine(id, shelf.thesaurus().label(id)));
    }
    return new Printing(
        lines.of(source),
        source.mine(),
        shown.where(),
        narrower,
        shown.isOfProcess(),
        shown.isDrawn(),
        book,
        photograph,
        owner,
        words,
        credits.of(
            source,
            shown.where(),
            texts(rights, PictureRights::credit),
            Known.maker(source, shown.isDrawn()),
            photograph,
            owner),
        List.copyOf(noted),
        standing(List.of(book, photograph, owner), !rights.isEmpty()));
  }

  /**
   * The notes of the source that say something of the rights in the picture, whatever else they are
   * about.
   */
  private List<SourcedNote> notingRightsOf(Shown shown) {
    List<SourcedNote> found = new ArrayList<>();
    for (SourcedNote note : notingRights(shown.source())) {
      for (Place place : note.note().places()) {
        boolean same =
            place.picture().isPresent() && place.picture().equals(shown.picture())
                || PictureList.meet(Set.copyOf(shown.where()), place.locator());
        if (place.medium().isPicture() && same && !found.contains(note)) {
          found.add(note);
        }
      }
    }
    return found;
  }

  private List<SourcedNote> notingRights(Source source) {
    return noting.computeIfAbsent(
        source,
        s ->
            shelf.notesOf(s).stream()
                .filter(note -> note.note().rights().isPresent())
                .sorted((a, b) -> firstPlace(a).compareTo(firstPlace(b)))
                .toList());
  }

  private static Locator firstPlace(SourcedNote note) {
    TreeSet<Locator> places = new TreeSet<>();
    note.note().places().forEach(place -> places.add(place.locator()));
    return places.first();
  }

  private static String words(Note.Checked checked) {
    return checked.by() + checked.on().map(day -> ", " + day).orElse("");
  }

  private static List<String> texts(
      List<PictureRights> rights, Function<PictureRights, Optional<String>> text) {
    return rights.stream().flatMap(each -> text.apply(each).stream()).distinct().toList();
  }

  private static List<Said> said(
      List<PictureRights> rights, Function<PictureRights, Optional<PictureRights.Layer>> layerOf) {
    Set<Said> said = new LinkedHashSet<>();
    for (PictureRights each : rights) {
      Optional<PictureRights.Layer> layer = layerOf.apply(each);
      if (layer.isPresent()) {
        said.add(
            new Said(
                layer.get().holder(),
                layer.get().status(),
                layer.get().terms(),
                layer.get().by(),
                layer.get().on().map(Object::toString)));
      }
    }
    return List.copyOf(said);
  }

  private static Standing standing(List<Layer> layers, boolean noted) {
    boolean settled = true;
    boolean any = false;
    for (Layer layer : layers) {
      settled &= !layer.said().isEmpty();
      for (Said said : layer.said()) {
        if (said.status().equals(Optional.of(Status.REFUSED))) {
          return Standing.REFUSED;
        }
        settled &= said.status().isPresent() && said.status().get().isSettled();
        any = true;
      }
    }
    if (settled) {
      return Standing.MAY_BE_SHOWN_AS_NOTED;
    }
    return any ? Standing.ASK_FIRST : noted ? Standing.NOTED_IN_WORDS : Standing.NOT_NOTED;
  }

  /** The printing but for its place, so that two of which the same is noted are equal. */
  static Printing withoutPlace(Printing printing) {
    return with(
        printing,
        List.of(),
        printing.credit().composed() ? new Credit("", true) : printing.credit());
  }

  /** Printings of one source of which the same is noted, as one. */
  Printing together(List<Printing> same) {
    Printing first = same.get(0);
    if (same.size() == 1) {
      return first;
    }
    TreeSet<Locator> where = new TreeSet<>();
    same.forEach(each -> where.addAll(each.where()));
    Credit credit = first.credit();
    if (credit.composed()) {
      Source source = sources.get(first.source().key());
      credit =
          credits.of(
              source,
              List.copyOf(where),
              List.of(),
              Known.maker(source, first.drawn()),
              first.photograph(),
              first.owner());
    }
    return with(first, List.copyOf(where), credit);
  }

  private static Printing with(Printing printing, List<Locator> where, Credit credit) {
    return new Printing(
        printing.source(),
        printing.mine(),
        where,
        printing.narrower(),
        printing.process(),
        printing.drawn(),
        printing.book(),
        printing.photograph(),
        printing.owner(),
        printing.words(),
        credit,
        printing.noted(),
        printing.standing());
  }
}
