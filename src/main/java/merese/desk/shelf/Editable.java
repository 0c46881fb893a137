package merese.desk.shelf;

import java.util.Optional;
import java.util.Set;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Site;
import merese.store.LibraryFile.Kind;

/** The sorts of file that can be edited as text. */
public enum Editable {
  SOURCE("source", Kind.WORK, "", Tab.SHELF),
  PIECE("piece", Kind.OBJECT, "", Tab.PIECES),
  VOCABULARY("vocabulary", Kind.VOCABULARY, "", Tab.VOCABULARY),
  MINE("mine", Kind.MINE, "mine", Tab.VOCABULARY),
  KEY("key", Kind.CHARACTERS, "characters", Tab.VOCABULARY),
  HOMONYMS("homonyms", Kind.HOMONYMS, "homonyms", Tab.VOCABULARY);

  private final String code;
  private final Kind kind;
  private final String only;
  private final Tab tab;

  Editable(String code, Kind kind, String only, Tab tab) {
    this.code = code;
    this.kind = kind;
    this.only = only;
    this.tab = tab;
  }

  static Optional<Editable> named(String code) {
    for (Editable each : values()) {
      if (each.code.equals(code)) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }

  Set<Kind> files() {
    return Set.of(kind);
  }

  /** The name of the file, where there is one of its sort. */
  Optional<String> only() {
    return Optional.of(only).filter(name -> !name.isEmpty());
  }

  Tab tab() {
    return tab;
  }

  String address(String name) {
    return "/edit/" + code + (only.isEmpty() ? "/" + Site.encoded(name) : "");
  }

  /** What else the page can say of such a file. */
  public String hint() {
    return switch (this) {
      case SOURCE -> "A work with its editions, copies and notes.";
      case PIECE -> "One of your own pieces.";
      case VOCABULARY -> "The concepts of one facet.";
      case MINE -> "Your preferences, your experience, and words whose source is forgotten.";
      case KEY -> "The key to look-alikes: its characters, and which kinds show them.";
      case HOMONYMS -> "Words that must be asked about, with the concepts they may mean.";
    };
  }
}
