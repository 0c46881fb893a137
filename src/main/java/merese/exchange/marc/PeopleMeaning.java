package merese.exchange.marc;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Name;

/**
 * Who is named in headings (1XX, 7XX), and for what.
 *
 * <p>A main entry that says nothing else is the author. An added entry without a relator is
 * understood where the statement of responsibility says what that person did. Headings with a title
 * (700 $t) name another work, and are not understood.
 */
final class PeopleMeaning {
  private static final String[] HEADINGS = {"100", "110", "111", "700", "710", "711"};

  private PeopleMeaning() {}

  static List<Contributor> of(MarcRecord record) {
    List<Contributor> people = new ArrayList<>();
    for (MarcField field : record.allOf(HEADINGS)) {
      for (Contributor person : of(field, record)) {
        if (!people.contains(person)) {
          people.add(person);
        }
      }
    }
    return List.copyOf(people);
  }

  /** One for each role; none for a heading that is not understood. */
  static List<Contributor> of(MarcField field, MarcRecord record) {
    if (!field.is(HEADINGS) || field.has('t')) {
      return List.of();
    }
    Optional<Name> name = MarcNames.of(field);
    if (name.isEmpty()) {
      return List.of();
    }
    List<Contributor> people = new ArrayList<>();
    for (Role role : roles(field, name.get(), record)) {
      people.add(new Contributor(role, name.get()));
    }
    return people;
  }

  private static List<Role> roles(MarcField field, Name name, MarcRecord record) {
    if (Relators.areGiven(field)) {
      return Relators.of(field);
    }
    if (field.tag().charAt(0) == '1') {
      return List.of(Role.AUTHOR);
    }
    return record
        .first("245")
        .flatMap(title -> title.first('c'))
        .flatMap(statement -> Responsibility.of(statement, name))
        .map(List::of)
        .orElse(List.of());
  }
}
