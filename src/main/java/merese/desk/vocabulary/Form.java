package merese.desk.vocabulary;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import merese.change.vocabulary.VocabularyChange;
import merese.desk.web.Typed;

/**
 * The form of a page that was last sent.
 *
 * @param operation which of the page's forms it is; "" for none
 * @param problem why it was not taken
 * @param preview what it would do, to be confirmed
 */
public record Form(
    String operation, Typed typed, Optional<String> problem, Optional<VocabularyChange> preview) {
  public static final Form NONE = new Form("", Typed.NOTHING, Optional.empty(), Optional.empty());

  static Form refused(String operation, Typed typed, String problem) {
    return new Form(operation, typed, Optional.of(problem), Optional.empty());
  }

  static Form shown(String operation, Typed typed, VocabularyChange preview) {
    return new Form(operation, typed, Optional.empty(), Optional.of(preview));
  }

  /** The fields that are sent again where what was shown is confirmed. */
  public Set<String> names() {
    Set<String> names = new LinkedHashSet<>(typed.names());
    names.removeAll(Set.of("token", "confirmed"));
    return names;
  }

  /** Whether it is this one. */
  public boolean is(String name) {
    return operation.equals(name);
  }

  /** What was typed into a field of a form, else what the form begins with. */
  public String value(String name, String field, String begin) {
    return is(name) ? typed.get(field) : begin;
  }

  /** Whether a choice was made in a form, else whether it begins so. */
  public boolean chosen(String name, String field, String value, boolean begin) {
    return is(name) ? typed.is(field, value) : begin;
  }

  public Optional<String> problem(String name) {
    return is(name) ? problem : Optional.empty();
  }
}
