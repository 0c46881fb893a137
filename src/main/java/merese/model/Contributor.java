package merese.model;

/** Someone whom a title page names, and for what. */
public record Contributor(Role role, Name name) {
  /** What a contributor did. */
  public enum Role implements Coded {
    AUTHOR,
    EDITOR,
    PHOTOGRAPHER,
    TRANSLATOR,
    ILLUSTRATOR,
    ORGANISER,
    INTERVIEWER
  }
}
