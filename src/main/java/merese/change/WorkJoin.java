package merese.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import merese.change.Effect.Sort;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Edition.OwnTitle;
import merese.model.Name;
import merese.model.Work;
import merese.model.WorkLink;

/**
 * Several works as one: what the kept one says stays, what it lacks is added from the others. All
 * editions stay what they are.
 */
final class WorkJoin {
  private final Work kept;
  private final List<Work> others;
  private final String language;
  private final List<Effect> effects = new ArrayList<>();

  /**
   * @param language the library's own, which a work without one is in
   */
  WorkJoin(Work kept, List<Work> others, String language) {
    this.kept = kept;
    this.others = others;
    this.language = language;
  }

  List<Effect> effects() {
    return effects;
  }

  Work joined() {
    others.forEach(this::compare);
    return new Work(
        kept.id(),
        kept.kind(),
        kept.title(),
        subtitle(),
        titles(),
        contributors(),
        kept.language(),
        kept.mine(),
        editions(),
        links());
  }

  private Stream<Work> all() {
    return Stream.concat(Stream.of(kept), others.stream());
  }

  private void say(Sort sort, String what) {
    effects.add(new Effect(sort, what));
  }

  private void compare(Work other) {
    if (other.kind() != kept.kind()) {
      stays("kind", kept.kind().words(), other, other.kind().words());
    }
    String own = kept.language().orElse(language);
    String theirs = other.language().orElse(language);
    if (!own.equals(theirs)) {
      stays("language", own, other, theirs);
    }
    if (other.mine() != kept.mine()) {
      stays("a piece of your own", yes(kept.mine()), other, yes(other.mine()));
    }
  }

  private void stays(String what, String here, Work other, String there) {
    say(Sort.STAYS, what + ": " + here + " (" + other.id() + ": " + there + ")");
  }

  private static String yes(boolean is) {
    return is ? "yes" : "no";
  }

  private Optional<String> subtitle() {
    for (Work other : others) {
      if (kept.subtitle().isEmpty()
          && other.subtitle().isPresent()
          && alike(kept.title(), other.title())) {
        say(Sort.ADDED, "subtitle: " + other.subtitle().get());
        return other.subtitle();
      }
    }
    return kept.subtitle();
  }

  /** The others' titles are other titles of the one work. */
  private List<String> titles() {
    List<String> titles = new ArrayList<>(kept.alternateTitles());
    for (Work other : others) {
      if (!isTitledAlike(other)) {
        addTitle(titles, new OwnTitle(other.title(), other.subtitle()).whole());
      }
      other.alternateTitles().forEach(title -> addTitle(titles, title));
    }
    return titles;
  }

  /** An edition of a work whose title is given up keeps it as its own. */
  private List<Edition> editions() {
    List<Edition> editions = new ArrayList<>(kept.editions());
    for (Work other : others) {
      for (Edition edition : other.editions()) {
        boolean titled = edition.imprint().title().isPresent();
        editions.add(titled || isTitledAlike(other) ? edition : underItsOwnTitle(edition, other));
      }
    }
    return editions;
  }

  private Edition underItsOwnTitle(Edition edition, Work work) {
    OwnTitle title = new OwnTitle(work.title(), work.subtitle());
    say(Sort.ADDED, "own title of " + edition.key() + ": " + title.whole());
    return edition.withImprint(edition.imprint().withTitle(Optional.of(title)));
  }

  private boolean isTitledAlike(Work other) {
    boolean sameSubtitle =
        other.subtitle().isEmpty()
            || kept.subtitle().isEmpty()
            || alike(other.subtitle().get(), kept.subtitle().get());
    return alike(other.title(), kept.title()) && sameSubtitle;
  }

  private void addTitle(List<String> titles, String title) {
    if (!alike(title, kept.title()) && titles.stream().noneMatch(t -> alike(t, title))) {
      titles.add(title);
      say(Sort.ADDED, "other title: " + title);
    }
  }

  private static boolean alike(String a, String b) {
    return a.strip().toLowerCase(Locale.ROOT).equals(b.strip().toLowerCase(Locale.ROOT));
  }

  private List<Contributor> contributors() {
    List<Contributor> contributors = new ArrayList<>(kept.contributors());
    for (Work other : others) {
      for (Contributor contributor : other.contributors()) {
        Optional<Contributor> same =
            contributors.stream().filter(c -> mayBeOne(c, contributor)).findFirst();
        if (same.isEmpty()) {
          contributors.add(contributor);
          say(Sort.ADDED, words(contributor));
        } else if (!same.get().equals(contributor)) {
          stays(
              contributor.role().code(),
              same.get().name().full(),
              other,
              contributor.name().full());
        }
      }
    }
    return contributors;
  }

  private static String words(Contributor contributor) {
    return contributor.role().code() + ": " + contributor.name().full();
  }

  /** Whether two names are, or may be, one: "M. Quenby" is taken for "Mabel Quenby". */
  private static boolean mayBeOne(Contributor one, Contributor other) {
    if (one.role() != other.role()) {
      return false;
    }
    if (one.name() instanceof Name.Person a && other.name() instanceof Name.Person b) {
      return alike(a.shortForm(), b.shortForm())
          && mayBeOne(a.given().orElse(""), b.given().orElse(""))
          && (a.suffix().isEmpty() || b.suffix().isEmpty() || a.suffix().equals(b.suffix()));
    }
    return one.name().getClass() == other.name().getClass()
        && alike(one.name().full(), other.name().full());
  }

  /** Whether the one is the other with names left out or cut to initials. */
  private static boolean mayBeOne(String given, String other) {
    String[] one = given.toLowerCase(Locale.ROOT).strip().split("[ .]+");
    String[] two = other.toLowerCase(Locale.ROOT).strip().split("[ .]+");
    for (int i = 0; i < Math.min(one.length, two.length); i++) {
      boolean initial = one[i].length() <= 1 || two[i].length() <= 1;
      boolean same =
          initial ? one[i].startsWith(two[i]) || two[i].startsWith(one[i]) : one[i].equals(two[i]);
      if (!same) {
        return false;
      }
    }
    return true;
  }

  private List<WorkLink> links() {
    List<String> within = all().map(Work::id).toList();
    List<WorkLink> links = new ArrayList<>();
    all()
        .forEach(
            work -> {
              for (WorkLink link : work.links()) {
                if (within.contains(link.to())) {
                  say(Sort.DROPPED, "link within one work: " + words(work.id(), link));
                } else if (!links.contains(link)) {
                  links.add(link);
                  if (!work.id().equals(kept.id())) {
                    say(Sort.ADDED, "link: " + words(kept.id(), link));
                  }
                }
              }
            });
    return links;
  }

  static String words(String from, WorkLink link) {
    String kind =
        switch (link.kind()) {
          case REPEATS -> " repeats ";
          case CITES -> " cites ";
          case REUSES_PICTURE -> " reuses a picture of ";
          case TRANSLATES -> " translates ";
          case SAME_WORK_ABROAD -> " is, published abroad, ";
        };
    return from + kind + link.to();
  }

  /** Another work's links, led to the kept one where they lead to one that goes. */
  static Work ledOver(Work work, List<String> gone, String kept, List<Effect> effects) {
    List<WorkLink> links = new ArrayList<>();
    for (WorkLink link : work.links()) {
      WorkLink now = link;
      if (gone.contains(link.to())) {
        now = new WorkLink(link.kind(), kept, link.picture(), link.evidence());
        effects.add(new Effect(Sort.FOLLOWS, "link: " + words(work.id(), now)));
      }
      if (!links.contains(now)) {
        links.add(now);
      }
    }
    return new Work(
        work.id(),
        work.kind(),
        work.title(),
        work.subtitle(),
        work.alternateTitles(),
        work.contributors(),
        work.language(),
        work.mine(),
        work.editions(),
        links);
  }

  static String descent(Edition.Lineage.Form form, String parent) {
    return (form == Edition.Lineage.Form.REVISED ? "revision" : form.code()) + " of " + parent;
  }

  /**
   * Another work's editions, descending from the kept edition where they did from one that goes.
   */
  static Work descending(Work work, List<String> gone, String kept, List<Effect> effects) {
    List<Edition> editions = new ArrayList<>();
    for (Edition edition : work.editions()) {
      Optional<Edition.Lineage> lineage = edition.lineage();
      boolean follows = lineage.flatMap(Edition.Lineage::parent).filter(gone::contains).isPresent();
      if (follows) {
        Edition.Lineage was = lineage.get();
        effects.add(new Effect(Sort.FOLLOWS, edition.key() + ": " + descent(was.form(), kept)));
        editions.add(
            edition.withLineage(
                new Edition.Lineage(
                    was.form(),
                    Optional.of(kept),
                    was.originalYear(),
                    was.newMatter(),
                    was.plates())));
      } else {
        editions.add(edition);
      }
    }
    return work.withEditions(editions);
  }
}
