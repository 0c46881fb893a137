package merese.model;

import java.util.List;

/**
 * What a source or a check limits itself to, such as "Irish decanters only". Nothing follows from
 * it about what lies outside: a source that treats only Irish glass does not claim that a type is
 * Irish.
 *
 * @param words as printed or as the user puts it
 * @param places the places it is limited to; empty for no limit
 * @param concepts the concepts it is limited to, with all that is narrower; empty for no limit
 */
public record Scope(String words, List<String> places, List<String> concepts) {
  public Scope {
    Require.text(words, "the words of a scope");
    places = List.copyOf(places);
    concepts = List.copyOf(concepts);
  }
}
