package merese.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Edition.OwnTitle;

/**
 * A title as a whole, whatever the form it was published in. What can be cited is one of its
 * {@linkplain Edition editions}.
 *
 * @param id the name of the work's file, without its ending
 * @param title the title without its subtitle
 * @param alternateTitles other titles of the same work, such as that of a twin published abroad
 * @param contributors in the order of the title page
 * @param language a BCP 47 tag; empty where it is the library's own
 * @param mine true for an article or film of the user's own, which is listed apart and is never a
 *     witness
 */
public record Work(
    String id,
    SourceKind kind,
    String title,
    Optional<String> subtitle,
    List<String> alternateTitles,
    List<Contributor> contributors,
    Optional<String> language,
    boolean mine,
    List<Edition> editions,
    List<WorkLink> links) {

  public Work {
    Require.text(id, "a work's id");
    Require.text(title, "a work's title");
    alternateTitles = List.copyOf(alternateTitles);
    contributors = List.copyOf(contributors);
    editions = List.copyOf(editions);
    links = List.copyOf(links);
  }

  /** Those who wrote the work, or made it where nobody is named as an author. */
  public List<Contributor> makers() {
    List<Contributor> authors = withRole(Contributor.Role.AUTHOR);
    return authors.isEmpty() ? withRole(Contributor.Role.EDITOR) : authors;
  }

  public List<Contributor> withRole(Contributor.Role role) {
    return contributors.stream().filter(c -> c.role() == role).toList();
  }

  /** The work as this edition alone shows it: under the edition's own title where it has one. */
  public Work withOnly(Edition edition) {
    Optional<OwnTitle> own = edition.imprint().title();
    if (own.isEmpty()) {
      return withEditions(List.of(edition));
    }
    List<String> others = new ArrayList<>(List.of(new OwnTitle(title, subtitle).whole()));
    alternateTitles.stream().filter(t -> !t.equals(own.get().whole())).forEach(others::add);
    return new Work(
        id,
        kind,
        own.get().title(),
        own.get().subtitle(),
        others,
        contributors,
        language,
        mine,
        List.of(edition.withImprint(edition.imprint().withTitle(Optional.empty()))),
        links);
  }

  /**
   * The work with what {@link #withOnly} gave of one edition put back, changed or not. A changed
   * title is the edition's where it has its own, else the work's.
   */
  public Work withBack(Work one) {
    Edition edition = one.editions.get(0);
    boolean own = edition(edition.key()).imprint().title().isPresent();
    if (!own) {
      return one.withEditions(replaced(edition));
    }
    Edition titled =
        edition.withImprint(
            edition.imprint().withTitle(Optional.of(new OwnTitle(one.title, one.subtitle))));
    String main = new OwnTitle(title, subtitle).whole();
    List<String> others = new ArrayList<>(alternateTitles);
    one.alternateTitles.stream()
        .filter(t -> !t.equals(main) && !others.contains(t))
        .forEach(others::add);
    return new Work(
        id,
        one.kind,
        title,
        subtitle,
        others,
        one.contributors,
        one.language,
        mine,
        replaced(titled),
        links);
  }

  /** The edition with a key that this work has. */
  public Edition edition(String key) {
    return editions.stream().filter(e -> e.key().equals(key)).findFirst().orElseThrow();
  }

  /** The same work with an edition in the place of the one that has its key. */
  public Work withEdition(Edition edition) {
    return withEditions(replaced(edition));
  }

  private List<Edition> replaced(Edition edition) {
    return editions.stream().map(e -> e.key().equals(edition.key()) ? edition : e).toList();
  }

  public Work withEditions(List<Edition> those) {
    return new Work(
        id, kind, title, subtitle, alternateTitles, contributors, language, mine, those, links);
  }

  public Work withLinks(List<WorkLink> those) {
    return new Work(
        id, kind, title, subtitle, alternateTitles, contributors, language, mine, editions, those);
  }

  public Work withId(String other) {
    return new Work(
        other,
        kind,
        title,
        subtitle,
        alternateTitles,
        contributors,
        language,
        mine,
        editions,
        links);
  }

  public Work withAlternateTitles(List<String> titles) {
    return new Work(
        id, kind, title, subtitle, titles, contributors, language, mine, editions, links);
  }
}
