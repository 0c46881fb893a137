package merese.exchange;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import merese.model.Edition;
import merese.model.Edition.Imprint;
import merese.model.Work;

/**
 * The parts of a description that are compared, filled in and replaced one by one. Every work that
 * is handed in has one edition.
 */
public enum Aspect {
  KIND("kind", Work::kind, w -> w.kind().words(), (w, f) -> WorkParts.kind(w, f.kind())),
  TITLE(
      "title",
      w -> List.of(w.title(), w.subtitle()),
      w -> w.title() + w.subtitle().map(s -> ": " + s).orElse(""),
      (w, f) -> WorkParts.title(w, f.title(), f.subtitle())),
  OTHER_TITLES(
      "other titles",
      Work::alternateTitles,
      w -> String.join("; ", w.alternateTitles()),
      (w, f) -> WorkParts.alternateTitles(w, f.alternateTitles())),
  PEOPLE(
      "people",
      Work::contributors,
      w -> WorkParts.people(w.contributors()),
      (w, f) -> WorkParts.contributors(w, f.contributors())),
  LANGUAGE(
      "language",
      Work::language,
      w -> w.language().orElse(""),
      (w, f) -> WorkParts.language(w, f.language())),
  STATEMENT(
      "edition",
      w -> List.of(imprint(w).statement(), imprint(w).number()),
      w ->
          imprint(w)
              .statement()
              .orElse(imprint(w).number().isPresent() ? "no. " + number(imprint(w).number()) : ""),
      (w, f) -> WorkParts.statement(w, imprint(f))),
  DATE(
      "date",
      w -> List.of(imprint(w).year(), imprint(w).yearPrinted()),
      w -> imprint(w).yearPrinted().orElse(number(imprint(w).year())),
      (w, f) -> WorkParts.date(w, imprint(f))),
  PLACES(
      "places",
      w -> imprint(w).places(),
      w -> String.join("; ", imprint(w).places()),
      (w, f) -> WorkParts.places(w, imprint(f).places())),
  PUBLISHER(
      "publisher",
      w -> imprint(w).publisher(),
      w -> imprint(w).publisher().orElse(""),
      (w, f) -> WorkParts.publisher(w, imprint(f).publisher())),
  VOLUMES(
      "volumes",
      w -> imprint(w).volumes(),
      w -> number(imprint(w).volumes()),
      (w, f) -> WorkParts.volumes(w, imprint(f).volumes())),
  SERIES(
      "series",
      w -> imprint(w).series(),
      w -> imprint(w).series().orElse(""),
      (w, f) -> WorkParts.series(w, imprint(f).series())),
  IDENTIFIERS(
      "identifiers",
      w -> imprint(w).identifiers(),
      w -> WorkParts.identifiers(imprint(w).identifiers()),
      (w, f) -> WorkParts.identifiers(w, imprint(f).identifiers())),
  NOTED_AS(
      "cited with",
      w -> imprint(w).notedAs(),
      w -> imprint(w).notedAs().orElse(""),
      (w, f) -> WorkParts.notedAs(w, imprint(f).notedAs())),
  CONTAINER(
      "in",
      w -> edition(w).container(),
      w -> edition(w).container().map(WorkParts::container).orElse(""),
      (w, f) -> WorkParts.container(w, edition(f).container())),
  LINEAGE(
      "descent",
      w -> edition(w).lineage(),
      w -> edition(w).lineage().map(WorkParts::lineage).orElse(""),
      (w, f) -> WorkParts.lineage(w, edition(f).lineage())),
  OCCASION(
      "sale or exhibition",
      w -> edition(w).occasion(),
      w -> edition(w).occasion().map(WorkParts::occasion).orElse(""),
      (w, f) -> WorkParts.occasion(w, edition(f).occasion())),
  ARCHIVE(
      "kept at",
      w -> edition(w).archive(),
      w -> edition(w).archive().map(WorkParts::archive).orElse(""),
      (w, f) -> WorkParts.archive(w, edition(f).archive())),
  ONLINE(
      "on the web",
      w -> edition(w).online(),
      w -> edition(w).online().map(Edition.Online::url).orElse(""),
      (w, f) -> WorkParts.online(w, edition(f).online()));

  private final String words;
  private final Function<Work, Object> value;
  private final Function<Work, String> printed;
  private final BiFunction<Work, Work, Work> taken;

  Aspect(
      String words,
      Function<Work, Object> value,
      Function<Work, String> printed,
      BiFunction<Work, Work, Work> taken) {
    this.words = words;
    this.value = value;
    this.printed = printed;
    this.taken = taken;
  }

  /** What a list of differences calls it. */
  public String words() {
    return words;
  }

  /** What a description says of it, in one line; "" where it says nothing. */
  public String printed(Work work) {
    return printed.apply(work);
  }

  public boolean isSilent(Work work) {
    return this != KIND && printed(work).isEmpty();
  }

  public boolean isSame(Work one, Work other) {
    return value.apply(one).equals(value.apply(other));
  }

  /** A work with what another says of this, and all else as it is. */
  public Work taken(Work work, Work from) {
    return taken.apply(work, from);
  }

  /** In which two descriptions differ. */
  public static Set<Aspect> differing(Work one, Work other) {
    Set<Aspect> differing = EnumSet.noneOf(Aspect.class);
    for (Aspect aspect : values()) {
      if (!aspect.isSame(one, other)) {
        differing.add(aspect);
      }
    }
    return differing;
  }

  private static Edition edition(Work work) {
    return work.editions().get(0);
  }

  private static Imprint imprint(Work work) {
    return edition(work).imprint();
  }

  private static String number(OptionalInt number) {
    return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
  }
}
