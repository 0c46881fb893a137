package merese.exchange.bibtex;

import java.util.List;
import java.util.Optional;
import merese.model.Contributor.Role;

/**
 * What biblatex's editors did: it has four fields for them, each with a type (The biblatex package,
 * version 3.17, section 2.3.6). "organizer" is one of its keys; the others are our own, and its
 * styles print them as they are.
 */
final class EditorRole {
  static final List<String> FIELDS = List.of("editor", "editora", "editorb", "editorc");

  private EditorRole() {}

  /** Empty for a type that a library has no role for, such as a compiler. */
  static Optional<Role> of(String type) {
    return switch (type) {
      case "", "editor" -> Optional.of(Role.EDITOR);
      case "organizer" -> Optional.of(Role.ORGANISER);
      case "illustrator" -> Optional.of(Role.ILLUSTRATOR);
      case "photographer" -> Optional.of(Role.PHOTOGRAPHER);
      case "interviewer" -> Optional.of(Role.INTERVIEWER);
      default -> Optional.empty();
    };
  }

  /** Empty for what has a field of its own, and for an editor, which needs no type. */
  static String type(Role role) {
    return switch (role) {
      case AUTHOR, EDITOR, TRANSLATOR -> "";
      case ORGANISER -> "organizer";
      case ILLUSTRATOR -> "illustrator";
      case PHOTOGRAPHER -> "photographer";
      case INTERVIEWER -> "interviewer";
    };
  }
}
