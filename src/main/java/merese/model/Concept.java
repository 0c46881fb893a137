package merese.model;

import java.util.List;
import java.util.Optional;

/**
 * A meaning: one kind of thing, whatever it is called. Labels and relations are those of SKOS.
 *
 * @param id also its address in the files
 * @param facet the group it is kept in, such as "ring"; the name of its file
 * @param broader ids, several for a concept with several parents
 * @param lookAlikes stated here; the relation itself is symmetric (see the vocabulary)
 * @param lookAlikeRemark a test that names no other concept
 */
public record Concept(
    String id,
    String facet,
    Label preferred,
    List<Label> alternatives,
    List<Label> hidden,
    String definition,
    List<String> broader,
    List<LookAlike> lookAlikes,
    Optional<String> lookAlikeRemark,
    Status status,
    List<Match> matches) {

  public Concept {
    Require.text(id, "a concept's id");
    Require.text(facet, "a concept's facet");
    Require.text(definition, "a concept's definition");
    alternatives = List.copyOf(alternatives);
    hidden = List.copyOf(hidden);
    broader = List.copyOf(broader);
    lookAlikes = List.copyOf(lookAlikes);
    matches = List.copyOf(matches);
  }

  /**
   * A word for a concept.
   *
   * @param text without its scope
   * @param scope what the label is limited to, as in "bell (body)"; not part of the term
   * @param elsewhere true where the word is also used for something else
   */
  public record Label(String text, Optional<String> scope, boolean elsewhere) {
    public Label {
      Require.text(text, "a label");
    }

    public static Label of(String text) {
      return new Label(text, Optional.empty(), false);
    }
  }

  /**
   * A concept that is mistaken for this one.
   *
   * @param test what tells the two apart, where that is known
   */
  public record LookAlike(String concept, Optional<String> test) {
    public LookAlike {
      Require.text(concept, "the concept of a look-alike");
    }
  }

  /** A concept of another vocabulary; {@code uri} as published there. */
  public record Match(Kind kind, String uri) {
    /** The SKOS mapping relations. */
    public enum Kind implements Coded {
      EXACT_MATCH,
      CLOSE_MATCH,
      BROAD_MATCH,
      NARROW_MATCH,
      RELATED_MATCH
    }
  }

  /** How settled a definition is among those who use the word. */
  public enum Status implements Coded {
    COMMON,
    UNCERTAIN
  }
}
