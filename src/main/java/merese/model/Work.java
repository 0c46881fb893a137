package merese.model;

import java.util.List;
import java.util.Optional;

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

  /** The same work with this edition alone. */
  public Work withOnly(Edition edition) {
    return withEditions(List.of(edition));
  }

  public Work withEditions(List<Edition> those) {
    return new Work(
        id, kind, title, subtitle, alternateTitles, contributors, language, mine, those, links);
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
