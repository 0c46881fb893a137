package merese.model;

import java.util.Optional;

/** A person's or a body's name, split as BibTeX and CSL split it. */
public sealed interface Name {

  /** The word or words that a short reference uses and that a list files under. */
  String shortForm();

  /** The name in reading order. */
  String full();

  /**
   * A person.
   *
   * @param particle "van", "de la": printed before the family name
   * @param suffix "Jr", "III"
   */
  record Person(
      String family, Optional<String> given, Optional<String> particle, Optional<String> suffix)
      implements Name {
    public Person {
      Require.text(family, "a family name");
    }

    @Override
    public String shortForm() {
      return particle.map(p -> p + " " + family).orElse(family);
    }

    @Override
    public String full() {
      String name = given.map(g -> g + " ").orElse("") + shortForm();
      return suffix.map(s -> name + ", " + s).orElse(name);
    }
  }

  /** A society, firm or institution, never split into parts. */
  record Body(String name) implements Name {
    public Body {
      Require.text(name, "a body's name");
    }

    @Override
    public String shortForm() {
      return name;
    }

    @Override
    public String full() {
      return name;
    }
  }
}
