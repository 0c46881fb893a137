package merese.answer.editions;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.answer.NamedSource;
import merese.answer.SourceLines;
import merese.answer.editions.EditionGrid.Cell;
import merese.answer.editions.EditionGrid.CiteLine;
import merese.answer.editions.EditionGrid.EditionLine;
import merese.answer.editions.EditionGrid.From;
import merese.answer.editions.EditionGrid.OtherObject;
import merese.answer.editions.EditionGrid.Picture;
import merese.answer.editions.EditionGrid.Side;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.ShortReference;
import merese.model.WorkLink;
import merese.shelf.Shelf;
import merese.shelf.Source;

/**
 * Answers which edition of a work has which plate.
 *
 * <p>A picture is in an edition where a note of that edition or its plate list has it. A facsimile
 * or reprint without a plate list has what its parent has, and says so; of any other edition
 * without one nothing is supposed.
 */
public final class Editions {
  private final Shelf shelf;
  private final EditionsQuestion question;
  private final SourceLines lines;
  private final Map<String, Source> byKey = new LinkedHashMap<>();
  private final Map<String, String> years = new LinkedHashMap<>();

  private Editions(Shelf shelf, EditionsQuestion question) {
    this.shelf = shelf;
    this.question = question;
    this.lines = new SourceLines();
  }

  /**
   * Answers a question.
   *
   * @throws WorkException where the question names no work, several, or an edition of another
   * @throws merese.answer.UnknownSourceException where it names an edition that is not there
   */
  public static EditionGrid answer(Shelf shelf, EditionsQuestion question) {
    return shelf.ask(s -> new Editions(s, question).answer());
  }

  private EditionGrid answer() {
    String id = NamedWork.find(shelf, question.work());
    for (Source source : lines.sorted(editionsOf(id))) {
      byKey.put(source.key(), source);
      years.put(source.key(), year(source.edition()));
    }
    Plates plates = new Plates(shelf, byKey, years);
    List<Picture> pictures = new ArrayList<>();
    for (String picture : plates.pictures()) {
      pictures.add(picture(picture, plates));
    }
    Source first = firstOf(id);
    return new EditionGrid(
        id,
        ShortReference.names(first.work(), first.edition()),
        mainTitle(first),
        otherTitles(first),
        editionLines(plates),
        pictures,
        question.from().map(locator -> from(locator, pictures)));
  }

  /** The editions of a work and of what is a translation or twin of it, as works of their own. */
  private Collection<Source> editionsOf(String work) {
    Map<String, Set<String>> kin = new LinkedHashMap<>();
    Map<String, String> workOf = new LinkedHashMap<>();
    for (Source source : shelf.sources()) {
      workOf.put(source.key(), source.workId());
    }
    for (Source source : shelf.sources()) {
      for (WorkLink link : source.work().links()) {
        if (link.kind() == WorkLink.Kind.TRANSLATES
            || link.kind() == WorkLink.Kind.SAME_WORK_ABROAD) {
          relate(kin, source.workId(), link.to());
        }
      }
      Optional<String> parent = source.edition().lineage().flatMap(Edition.Lineage::parent);
      if (parent.isPresent() && workOf.containsKey(parent.get())) {
        relate(kin, source.workId(), workOf.get(parent.get()));
      }
    }
    Set<String> works = new LinkedHashSet<>();
    List<String> open = new ArrayList<>(List.of(work));
    while (!open.isEmpty()) {
      String next = open.remove(0);
      if (works.add(next)) {
        open.addAll(kin.getOrDefault(next, Set.of()));
      }
    }
    List<Source> found = new ArrayList<>();
    for (Source source : shelf.sources()) {
      if (works.contains(source.workId())) {
        found.add(source);
      }
    }
    return found;
  }

  private static void relate(Map<String, Set<String>> kin, String one, String other) {
    kin.computeIfAbsent(one, k -> new LinkedHashSet<>()).add(other);
    kin.computeIfAbsent(other, k -> new LinkedHashSet<>()).add(one);
  }

  private Source firstOf(String work) {
    for (Source source : byKey.values()) {
      if (source.workId().equals(work)) {
        return source;
      }
    }
    throw new IllegalStateException(work + " has no edition in the index");
  }

  /** The work's title, which an edition with its own hides. */
  private String mainTitle(Source first) {
    for (Source source : byKey.values()) {
      if (source.workId().equals(first.workId()) && !hasOwnTitle(source)) {
        return source.work().title();
      }
    }
    return first.work().title();
  }

  private static boolean hasOwnTitle(Source source) {
    return source.edition().imprint().title().isPresent()
        || !source.title().equals(source.work().title());
  }

  private List<String> otherTitles(Source first) {
    Set<String> titles = new LinkedHashSet<>();
    String main = mainTitle(first);
    for (Source source : byKey.values()) {
      titles.add(source.title());
      titles.addAll(source.work().alternateTitles());
    }
    titles.remove(main);
    return List.copyOf(titles);
  }

  /** The year as printed, after what a reprint or the like is. */
  private static String year(Edition edition) {
    String year =
        edition
            .imprint()
            .yearPrinted()
            .filter(words -> !words.isBlank())
            .orElseGet(
                () ->
                    edition.imprint().year().isPresent()
                        ? Integer.toString(edition.imprint().year().getAsInt())
                        : "n.d.");
    if (edition.lineage().isEmpty()) {
      return year;
    }
    return switch (edition.lineage().get().form()) {
      case FACSIMILE -> "facs. " + year;
      case REPRINT -> "repr. " + year;
      case TRANSLATION -> "transl. " + year;
      case REVISED, TWIN -> year;
    };
  }

  private List<EditionLine> editionLines(Plates plates) {
    String main = mainTitle(byKey.values().iterator().next());
    List<EditionLine> found = new ArrayList<>();
    for (Source source : byKey.values()) {
      Edition edition = source.edition();
      Optional<Edition.Lineage> lineage = edition.lineage();
      Optional<String> parent = lineage.flatMap(Edition.Lineage::parent);
      boolean known = parent.isPresent() && byKey.containsKey(parent.get());
      found.add(
          new EditionLine(
              lines.of(source),
              years.get(source.key()),
              edition.imprint().statement(),
              lineage.map(l -> l.form().code()),
              known ? parent.map(p -> lines.reference(byKey.get(p))) : parent,
              parent.isPresent() && !known,
              source.title().equals(main) ? Optional.empty() : Optional.of(source.title()),
              lineage.flatMap(Edition.Lineage::newMatter),
              plates.platesAs(source.key()),
              plates.areRecorded(source.key())));
    }
    return found;
  }

  private Picture picture(String id, Plates plates) {
    List<Cell> cells = new ArrayList<>();
    Map<List<String>, List<String>> yearsByPlace = new LinkedHashMap<>();
    Map<List<String>, List<Locator>> places = new LinkedHashMap<>();
    List<String> without = new ArrayList<>();
    List<CiteLine> cite = new ArrayList<>();
    List<CiteLine> away = new ArrayList<>();
    List<CiteLine> elsewhere = new ArrayList<>();
    for (Source source : byKey.values()) {
      Cell cell = plates.cell(source.key(), id);
      cells.add(cell);
      if (!cell.state().isThere()) {
        without.add(years.get(source.key()));
        continue;
      }
      List<String> printed = cell.locators().stream().map(Locator::toString).toList();
      places.putIfAbsent(printed, cell.locators());
      yearsByPlace.computeIfAbsent(printed, p -> new ArrayList<>()).add(years.get(source.key()));
      CiteLine line = new CiteLine(lines.reference(source), cell.locators(), source.whereabouts());
      if (!source.owned()) {
        elsewhere.add(line);
      } else if (source.whereabouts().isPresent()) {
        away.add(line);
      } else {
        cite.add(line);
      }
    }
    List<Side> sides = new ArrayList<>();
    yearsByPlace.forEach((place, these) -> sides.add(new Side(places.get(place), these)));
    return new Picture(id, cells, sides, without, cite, away, elsewhere);
  }

  private From from(Locator locator, List<Picture> pictures) {
    Optional<String> key = question.edition();
    if (key.isPresent()) {
      String found = NamedSource.find(shelf, key.get()).source().key();
      if (!byKey.containsKey(found)) {
        throw WorkException.otherWork(found, List.copyOf(byKey.keySet()));
      }
      key = Optional.of(found);
    } else if (byKey.containsKey(question.work().strip())) {
      key = Optional.of(question.work().strip());
    }
    Optional<String> edition = key;
    List<String> same = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (Picture picture : pictures) {
      for (Cell cell : picture.cells()) {
        if (edition.isEmpty() || edition.get().equals(cell.edition())) {
          if (anyIsAt(locator, cell.locators()) && !same.contains(picture.id())) {
            same.add(picture.id());
          }
          List<Locator> instead = cell.others().stream().map(OtherObject::locator).toList();
          if (anyIsAt(locator, instead) && !others.contains(picture.id())) {
            others.add(picture.id());
          }
        }
      }
    }
    return new From(locator, edition.map(k -> lines.reference(byKey.get(k))), same, others);
  }

  /** Whether one of some places is, takes in or lies within what was cited. */
  private static boolean anyIsAt(Locator cited, List<Locator> places) {
    for (Locator place : places) {
      if (place.equals(cited) || shareAMember(place, cited)) {
        return true;
      }
    }
    return false;
  }

  private static boolean shareAMember(Locator place, Locator cited) {
    List<Locator> members = cited.members();
    for (Locator member : place.members()) {
      if (members.contains(member)) {
        return true;
      }
    }
    return false;
  }
}
