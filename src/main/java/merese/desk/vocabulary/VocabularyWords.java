package merese.desk.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.Effect.Sort;
import merese.desk.web.Site;
import merese.model.Concept.Label;
import merese.model.Concept.Match;
import merese.model.OwnObject.Observation;
import merese.vocabulary.Thesaurus;

/** Short words of these pages. */
public final class VocabularyWords {
  private VocabularyWords() {}

  public static String effect(Sort sort) {
    return switch (sort) {
      case ADDED -> "Added";
      case STAYS -> "Stays";
      case RENAMED -> "Renamed";
      case FOLLOWS -> "Follows";
      case DROPPED -> "Dropped";
      case LOOK_AT -> "Look at";
    };
  }

  /** A label with its scope, and whether the word is used for something else as well. */
  public static String label(Label label) {
    return Thesaurus.display(label) + (label.elsewhere() ? " ‡" : "");
  }

  public static String match(Match match) {
    return switch (match.kind()) {
      case EXACT_MATCH -> "the same";
      case CLOSE_MATCH -> "nearly the same";
      case BROAD_MATCH -> "broader there";
      case NARROW_MATCH -> "narrower there";
      case RELATED_MATCH -> "related there";
    };
  }

  /** "3 sources, 7 with what is narrower". */
  public static String sources(int own, int withNarrower) {
    String said = own == 0 ? "no source" : own == 1 ? "1 source" : own + " sources";
    return withNarrower > own ? said + ", " + withNarrower + " with what is narrower" : said;
  }

  public static String sense(Observation observation) {
    return observation.sense() == Observation.Sense.FELT ? "felt" : "seen";
  }

  /** The address of a picture of the library. */
  public static String picture(String file) {
    List<String> names = new ArrayList<>();
    for (String name : file.split("/", -1)) {
      names.add(Site.encoded(name).replace("+", "%20"));
    }
    return "/pictures/" + String.join("/", names);
  }

  /** An address that leads out of the desk, where it is one that a browser may follow. */
  public static Optional<String> web(String uri) {
    return uri.startsWith("http://") || uri.startsWith("https://")
        ? Optional.of(uri)
        : Optional.empty();
  }
}
