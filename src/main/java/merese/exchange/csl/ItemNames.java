package merese.exchange.csl;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.exchange.csl.Json.Items;
import merese.exchange.csl.Json.Members;
import merese.model.Contributor;
import merese.model.Contributor.Role;
import merese.model.Name;

/** The names of an item; those of a role that the library does not have stay with the record. */
final class ItemNames {
  private static final Map<String, Role> ROLES = roles();

  private ItemNames() {}

  private static Map<String, Role> roles() {
    Map<String, Role> roles = new LinkedHashMap<>();
    roles.put("author", Role.AUTHOR);
    roles.put("editor", Role.EDITOR);
    roles.put("translator", Role.TRANSLATOR);
    roles.put("illustrator", Role.ILLUSTRATOR);
    roles.put("interviewer", Role.INTERVIEWER);
    roles.put("organizer", Role.ORGANISER);
    return Collections.unmodifiableMap(roles);
  }

  static List<Contributor> of(Members item) {
    List<Contributor> all = new ArrayList<>();
    ROLES.forEach((variable, role) -> add(item, variable, role, all));
    return all;
  }

  /** What a name was looked for in and is not. */
  static List<String> remarks(Members item) {
    List<String> remarks = new ArrayList<>();
    for (String variable : ROLES.keySet()) {
      Optional<Json> value = item.get(variable);
      if (value.isPresent() && !areNames(value.get())) {
        remarks.add("\"" + variable + "\" is no list of names in their parts; kept as it stands");
      }
    }
    return remarks;
  }

  private static boolean areNames(Json value) {
    if (!(value instanceof Items list)) {
      return false;
    }
    for (Json name : list.items()) {
      if (!(name instanceof Members)) {
        return false;
      }
    }
    return true;
  }

  private static void add(Members item, String variable, Role role, List<Contributor> to) {
    if (item.get(variable).orElse(Json.nothing()) instanceof Items names) {
      for (Json name : names.items()) {
        if (name instanceof Members parts) {
          name(parts).ifPresent(n -> to.add(new Contributor(role, n)));
        }
      }
    }
  }

  /** A name without a family name is one of a single word, such as that of a monk. */
  private static Optional<Name> name(Members name) {
    Optional<String> literal = PlainWords.of(name.get("literal"));
    if (literal.isPresent()) {
      return literal.map(Name.Body::new);
    }
    Optional<String> given = PlainWords.of(name.get("given"));
    Optional<String> family = PlainWords.of(name.get("family"));
    if (family.isEmpty()) {
      return given.map(g -> new Name.Person(g, Optional.empty(), Optional.empty(), suffix(name)));
    }
    List<String> particles = new ArrayList<>();
    PlainWords.of(name.get("dropping-particle")).ifPresent(particles::add);
    PlainWords.of(name.get("non-dropping-particle")).ifPresent(particles::add);
    Optional<String> particle =
        particles.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", particles));
    return Optional.of(new Name.Person(family.get(), given, particle, suffix(name)));
  }

  private static Optional<String> suffix(Members name) {
    return PlainWords.of(name.get("suffix"));
  }
}
