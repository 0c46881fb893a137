package merese.change.notes;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import merese.change.ChangeRefusedException;
import merese.change.notes.Looking.Logged;
import merese.change.notes.Looking.Looked;
import merese.change.notes.NoteTaking.Taken;
import merese.exchange.picture.PictureCopy;
import merese.model.Check;
import merese.model.Edition;
import merese.model.Locator;
import merese.model.LocatorException;
import merese.model.LocatorKind;
import merese.model.LocatorLevel;
import merese.model.LocatorNumber;
import merese.model.Naming;
import merese.model.Note;
import merese.model.Place;
import merese.shelf.SourceAddress;
import merese.shelf.WritingShelf;
import merese.store.History;
import merese.vocabulary.Thesaurus;

/**
 * Somebody sits over one source and notes page after page: which page lies open, what is noted of
 * it, what of this sitting can be taken back, and what was looked through in the end. Every note is
 * written at once, so a sitting that is broken off has lost nothing.
 */
public final class Sitting {
  private static final int MOST_DIGITS = 9;

  private final WritingShelf shelf;
  private final SourceAddress source;
  private final Clock clock;
  private final NoteTaking noteTaking;
  private final List<Step> steps = new ArrayList<>();

  /** The pages that were looked at; one stands there as often as it was. */
  private final List<Locator> pages = new ArrayList<>();

  /** The place that lies open, as it was typed. */
  private Optional<Locator> place = Optional.empty();

  /**
   * A note of this sitting with what it did.
   *
   * @param pages those that it counts as looked at
   * @param before the place that lay open before it
   * @param after the place that lay open then
   */
  private record Step(
      Taken taken, List<Locator> pages, Optional<Locator> before, Optional<Locator> after) {}

  public Sitting(WritingShelf shelf, SourceAddress source, Clock clock) {
    this.shelf = shelf;
    this.source = source;
    this.clock = clock;
    this.noteTaking = new NoteTaking(shelf, clock);
  }

  /**
   * Goes on where somebody was who noted without this object, as from one page of a browser to the
   * next.
   *
   * @param open the page that lies open
   * @param seen the pages that were looked at
   */
  public void resume(Optional<Locator> open, Optional<Locator> seen) {
    place = open.map(Locator::page);
    seen.ifPresent(all -> pages.addAll(all.members()));
  }

  /** Another that has the same page open and has seen the same pages. */
  public Sitting copy() {
    Sitting other = new Sitting(shelf, source, clock);
    other.place = place;
    other.pages.addAll(pages);
    return other;
  }

  /** What a sitting took back. */
  public record TakenBack(Taken taken, boolean already) {}

  /**
   * A note with those of its places that are on a page.
   *
   * @param places at least one
   */
  public record NotedThere(Note note, List<Place> places) {
    public NotedThere {
      places = List.copyOf(places);
    }
  }

  public SourceAddress source() {
    return source;
  }

  /** The first page that lies open; empty until one is named. */
  public Optional<Locator> page() {
    return place.map(Locator::page);
  }

  /**
   * What was opened, as it was typed: a page, several, or a place on one. What is noted is there.
   */
  public Optional<Locator> place() {
    return place;
  }

  /** The source as it is on the disk now. */
  public Edition edition() {
    return NoteTaking.edition(shelf.read(source).value(), source);
  }

  WritingShelf shelf() {
    return shelf;
  }

  /** How many notes there are of the source. */
  public int notes() {
    return edition().notes().size();
  }

  /** How many notes of this sitting stand. */
  public int taken() {
    return steps.size();
  }

  /**
   * Opens the place that somebody typed. It counts as looked at once a note is taken there or the
   * next is turned to, so that a slip of the finger does not.
   *
   * @throws LocatorException where it is none
   */
  public Locator open(String typed) {
    place = Optional.of(place(typed));
    return place.get();
  }

  /**
   * Turns so many pages on, or back.
   *
   * @throws ChangeRefusedException where no page lies open, or none can be counted to
   */
  public Locator turn(int by) {
    Locator from = required();
    Optional<Locator> to = from.stepped(by);
    if (to.isEmpty()) {
      throw new ChangeRefusedException(
          "there is no page "
              + (by < 0 ? "before " : "after ")
              + from.printed()
              + " that can be counted; type which one it is");
    }
    pages.addAll(pages(from));
    pages.add(to.get());
    place = to;
    return to.get();
  }

  /** How many pages a "+", a "-", a "+5" or a "-2" turns; empty for anything else. */
  public static OptionalInt turns(String typed) {
    boolean sign = !typed.isEmpty() && (typed.charAt(0) == '+' || typed.charAt(0) == '-');
    if (!sign || typed.length() > 6) {
      return OptionalInt.empty();
    } else if (typed.length() == 1) {
      return OptionalInt.of(typed.equals("+") ? 1 : -1);
    } else if (!isNumber(typed.substring(1))) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(Integer.parseInt(typed.substring(typed.charAt(0) == '+' ? 1 : 0)));
  }

  private Locator required() {
    return place.orElseThrow(
        () -> new ChangeRefusedException("no page lies open; type which one, as in p. 41"));
  }

  /**
   * What a place that was typed means with this page open. Nothing is what lies open; a number is a
   * page numbered alike; on a plate, a figure is one of that plate, while figures of a page are
   * numbered through the book; what has no sense alone, such as "n. 3", is on the page.
   *
   * @throws LocatorException where it is no place
   */
  public Locator place(String typed) {
    String text = typed.strip();
    if (text.isEmpty()) {
      return required();
    }
    if (isNumber(text)) {
      return numbered(text);
    }
    Optional<Locator> alone = parsed(text);
    Optional<Locator> page = page();
    if (page.isPresent() && (alone.isEmpty() || isOfOpenPage(alone.get()))) {
      Optional<Locator> inside = parsed(page.get().printed() + ", " + text);
      if (inside.isPresent() && inside.get().isWithin(page.get())) {
        return inside.get();
      }
    }
    return alone.isPresent() ? alone.get() : Locator.parse(text);
  }

  /** Whether a text is the name of a place, and so no term. */
  public boolean isPlace(String typed) {
    try {
      place(typed);
      return true;
    } catch (LocatorException e) {
      return false;
    }
  }

  private static Optional<Locator> parsed(String text) {
    try {
      return Optional.of(Locator.parse(text));
    } catch (LocatorException e) {
      return Optional.empty();
    }
  }

  private static boolean isNumber(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  /** A bare number is counted as the open page is, or a page. */
  private Locator numbered(String digits) {
    Locator alone = Locator.parse("p. " + digits);
    Optional<Locator> page = page();
    List<LocatorLevel> levels = page.isPresent() ? page.get().levels() : List.of();
    if (!levels.isEmpty() && digits.length() < MOST_DIGITS) {
      Optional<LocatorNumber> open = levels.get(levels.size() - 1).number();
      if (open.isPresent()
          && open.get().style() == LocatorNumber.Style.ARABIC
          && open.get().value() < Integer.MAX_VALUE) {
        return page.get()
            .stepped(Integer.parseInt(digits) - (int) open.get().value())
            .orElse(alone);
      }
    }
    return alone;
  }

  private boolean isOfOpenPage(Locator typed) {
    List<LocatorLevel> levels = page().orElseThrow().levels();
    LocatorKind open = levels.get(levels.size() - 1).kind();
    return switch (typed.labelKind()) {
      case COLUMN, NOTE, CAPTION, PARAGRAPH -> true;
      case FIGURE, ITEM, NUMBER ->
          open == LocatorKind.PLATE
              || open == LocatorKind.COLOUR_PLATE
              || open == LocatorKind.FRONTISPIECE;
      default -> false;
    };
  }

  /** What is noted of the pages of a place, in the order of its places. */
  public List<NotedThere> noted(Locator of) {
    List<Locator> on = pages(of);
    List<NotedThere> noted = new ArrayList<>();
    for (Note note : edition().notes()) {
      List<Place> there = new ArrayList<>();
      for (Place place : note.places()) {
        if (on.stream().anyMatch(place.locator()::isPartlyIn)) {
          there.add(place);
        }
      }
      if (!there.isEmpty()) {
        noted.add(new NotedThere(note, there));
      }
    }
    noted.sort(Comparator.comparing((NotedThere n) -> n.places().get(0).locator()));
    return noted;
  }

  /** The pages of a place, each once. */
  private static List<Locator> pages(Locator place) {
    return place.members().stream().map(Locator::page).distinct().toList();
  }

  /**
   * Takes a note. The page of its place lies open then, where it is counted with the one that did:
   * a plate that is noted amid the text does not close the text.
   *
   * @throws ChangeRefusedException as {@link NoteTaking#note} has it
   */
  public Taken note(TypedNote typed, Optional<PictureCopy> photo, boolean again) {
    Taken taken = noteTaking.note(source, typed, photo, again);
    List<Locator> seen = new ArrayList<>();
    for (Place place : taken.notes().get(0).places()) {
      seen.addAll(pages(place.locator()));
    }
    Optional<Locator> before = place;
    Optional<Locator> to = Optional.of(seen.get(0));
    boolean isThere = page().equals(to);
    if (!isThere && (before.isEmpty() || before.get().isOfSameRun(seen.get(0)))) {
      place = to;
    }
    pages.addAll(seen);
    steps.add(new Step(taken, seen, before, place));
    return taken;
  }

  /**
   * Takes back the last note of this sitting, and nobody else's.
   *
   * @return empty where none is left
   * @throws merese.store.LibraryException where that would lose what was done since
   */
  public Optional<TakenBack> undo() {
    if (steps.isEmpty()) {
      return Optional.empty();
    }
    Step last = steps.get(steps.size() - 1);
    OptionalInt change = last.taken().change();
    boolean done =
        change.isPresent() && History.of(shelf.folder()).undo(change.getAsInt()).isPresent();
    steps.remove(steps.size() - 1);
    last.pages().forEach(pages::remove);
    if (place.equals(last.after())) {
      place = last.before();
    }
    shelf.reread(source.file());
    return Optional.of(new TakenBack(last.taken(), !done));
  }

  /**
   * The pages that were turned or noted, and none between them; empty where none was.
   *
   * @throws LocatorException where they are more than one place can name
   */
  public Optional<Locator> lookedThrough() {
    return pages.isEmpty() ? Optional.empty() : Optional.of(Locator.ofPages(pages));
  }

  /**
   * The narrowest concept that takes in all that was noted: more would say of other kinds that
   * nobody found them. Several where there is none, and none where nothing was noted with a
   * meaning.
   */
  public List<String> lookedFor() {
    Set<String> noted = new TreeSet<>();
    for (Step step : steps) {
      for (Naming naming : step.taken().notes().get(0).namings()) {
        naming.concept().ifPresent(noted::add);
      }
    }
    return broadest(shelf.thesaurus(), noted);
  }

  /** The same, each as a word that means it and nothing else. */
  public List<String> lookedForInWords() {
    return inWords(lookedFor());
  }

  /** The same of what somebody noted today in some pages. */
  public List<String> lookedForInWords(Locator in, String by) {
    Set<String> noted = new TreeSet<>();
    Optional<Note.Checked> theirs =
        Optional.of(new Note.Checked(by, Optional.of(LocalDate.now(clock))));
    for (Note note : edition().notes()) {
      boolean there = note.places().stream().anyMatch(p -> p.locator().isWithin(in));
      if (there && note.checked().equals(theirs)) {
        for (Naming naming : note.namings()) {
          naming.concept().ifPresent(noted::add);
        }
      }
    }
    return inWords(broadest(shelf.thesaurus(), noted));
  }

  private List<String> inWords(List<String> concepts) {
    List<String> words = new ArrayList<>();
    for (String concept : concepts) {
      String label = shelf.thesaurus().concept(concept).orElseThrow().preferred().text();
      TermChoice choice = TermChoice.of(shelf, label, Optional.empty());
      words.add(choice.naming().concept().equals(Optional.of(concept)) ? label : concept);
    }
    return words;
  }

  static List<String> broadest(Thesaurus thesaurus, Set<String> noted) {
    Set<String> common = null;
    for (String concept : noted) {
      Set<String> above = new TreeSet<>(thesaurus.broader(concept));
      above.add(concept);
      if (common == null) {
        common = above;
      } else {
        common.retainAll(above);
      }
    }
    if (common == null) {
      return List.of();
    } else if (common.isEmpty()) {
      return noted.stream().filter(c -> isHighest(thesaurus, c, noted)).sorted().toList();
    }
    for (String each : common) {
      if (common.stream().noneMatch(other -> thesaurus.isBroader(each, other))) {
        return List.of(each);
      }
    }
    return List.of();
  }

  private static boolean isHighest(Thesaurus thesaurus, String concept, Set<String> all) {
    return all.stream().noneMatch(other -> thesaurus.isBroader(other, concept));
  }

  /** Writes what was looked through, for what and how, into the check log. */
  public Logged log(
      Optional<Locator> extent,
      List<String> concepts,
      Check.Method method,
      String by,
      Optional<String> copy) {
    Looked looked =
        new Looked(
            List.of(source),
            extent,
            concepts,
            method,
            Optional.empty(),
            Optional.empty(),
            by,
            copy);
    return new Looking(shelf, clock).log(looked);
  }
}
