package merese.change.records;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import merese.change.records.KnownSources.Known;
import merese.model.Edition;
import merese.model.Edition.Archive;
import merese.model.Edition.Container;
import merese.model.Edition.Imprint;
import merese.model.Edition.Lineage.Form;
import merese.model.Edition.Occasion;
import merese.model.SourceKind;
import merese.model.Work;
import merese.shelf.Fingerprint;

/**
 * Sources of a library that may be the same thing twice, by what both say: a DOI, an ISBN, or all
 * of title, maker, edition and year, with nothing that tells them apart.
 */
public final class Doubles {
  /**
   * Two sources that may be one.
   *
   * @param key of the later one
   * @param file of its work
   * @param other the key of the one that was there before
   * @param sameWork whether they are editions of one work already
   * @param why what both have, in words
   */
  public record Pair(String key, Path file, String other, boolean sameWork, String why) {}

  /** What tells sources of one title and year apart. */
  private record Details(
      SourceKind kind,
      Optional<Form> form,
      Optional<Container> container,
      Optional<Occasion> occasion,
      Optional<Archive> archive,
      Optional<String> publisher,
      Set<String> places) {
    static Details of(Work work, Edition edition) {
      Imprint imprint = edition.imprint();
      return new Details(
          work.kind(),
          edition.lineage().map(Edition.Lineage::form),
          edition.container(),
          edition.occasion(),
          edition.archive(),
          imprint.publisher(),
          Set.copyOf(imprint.places()));
    }
  }

  private final KnownSources known = new KnownSources();
  private final List<String> keys = new ArrayList<>();
  private final Map<String, Details> details = new HashMap<>();

  /** A work of the library, with all its editions. */
  public void add(Work work, Path file) {
    known.add(work, Optional.of(file), Optional.empty());
    for (Edition edition : work.editions()) {
      if (details.put(edition.key(), Details.of(work, edition)) == null) {
        keys.add(edition.key());
      }
    }
  }

  /** All pairs, each once, in the order in which the later ones were added. */
  public List<Pair> found() {
    List<Pair> pairs = new ArrayList<>();
    Map<String, Integer> order = new HashMap<>();
    for (String key : keys) {
      Known source = known.source(key);
      for (Known other : known.near(source.fingerprint(), Optional.empty())) {
        if (order.containsKey(other.key())) {
          why(source, other)
              .ifPresent(
                  why ->
                      pairs.add(
                          new Pair(
                              key,
                              source.file().orElseThrow(),
                              other.key(),
                              source.work().equals(other.work()),
                              why)));
        }
      }
      order.put(key, order.size());
    }
    return pairs;
  }

  /**
   * Why a source that is about to be added may be one that is there: it has its DOI or ISBN, or its
   * title and maker, whatever the year.
   *
   * @param made with one edition, as the other
   * @return in words; empty where nothing says so
   */
  public static Optional<String> why(Work made, Work there) {
    Fingerprint print = Fingerprint.of(made);
    Fingerprint with = Fingerprint.of(there);
    Edition one = made.editions().get(0);
    Edition other = there.editions().get(0);
    boolean alike = print.contained() == with.contained();
    if (alike && print.sharesDoiWith(with)) {
      return Optional.of("the same DOI");
    } else if (alike && !print.contained() && print.sharesIsbnWith(with)) {
      return Optional.of("the same ISBN");
    } else if (alike
        && print.hasTitleOf(with)
        && print.hasMakerOf(with)
        && mayBeSame(one.container(), other.container())
        && mayBeSame(one.occasion(), other.occasion())
        && mayBeSame(one.archive(), other.archive())) {
      return Optional.of(print.maker().isEmpty() ? "the same title" : "the same title and maker");
    }
    return Optional.empty();
  }

  private Optional<String> why(Known source, Known other) {
    Fingerprint print = source.fingerprint();
    Fingerprint with = other.fingerprint();
    boolean sameWork = source.work().equals(other.work());
    if (print.contained() == with.contained() && print.sharesDoiWith(with) && !sameWork) {
      return Optional.of("the same DOI");
    }
    boolean books = !print.contained() && !with.contained();
    if (books && !sameWork && print.sharesIsbnWith(with)) {
      return Optional.of("the same ISBN");
    }
    boolean alike =
        print.contained() == with.contained()
            && print.hasTitleOf(with)
            && print.hasMakerOf(with)
            && !(print.maker().isEmpty() && print.title().indexOf(' ') < 0)
            && print.year().isPresent()
            && print.year().equals(with.year())
            && print.edition() == with.edition()
            && nothingTellsApart(details.get(source.key()), details.get(other.key()), sameWork);
    return alike
        ? Optional.of(
            print.maker().isEmpty()
                ? "the same title, edition and year"
                : "the same title, maker, edition and year")
        : Optional.empty();
  }

  private static boolean nothingTellsApart(Details one, Details other, boolean sameWork) {
    return one.kind() == other.kind()
        && one.form().equals(other.form())
        && mayBeSame(one.container(), other.container())
        && mayBeSame(one.occasion(), other.occasion())
        && mayBeSame(one.archive(), other.archive())
        && (!sameWork
            || one.publisher().equals(other.publisher()) && one.places().equals(other.places()));
  }

  private static <T> boolean mayBeSame(Optional<T> one, Optional<T> other) {
    return one.isEmpty() || other.isEmpty() || one.equals(other);
  }
}
