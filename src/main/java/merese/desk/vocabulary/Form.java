package merese.desk.vocabulary;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import merese.change.vocabulary.VocabularyChange;
import merese.desk.web.FormException;
import merese.desk.web.Typed;

/**
 * The form of a page that was last sent.
 *
 * @param operation which of the page's forms it is; "" for none
 * @param problem why it was not taken
 * @param wrong the name of the field that this is of; "" where it is not known
 * @param preview what it would do, to be confirmed
 */
public record Form(
    String operation,
    Typed typed,
    Optional<String> problem,
    String wrong,
    Optional<VocabularyChange> preview) {
  public static final Form NONE = begun("", Typed.NOTHING);

  /** One that is filled in and not sent yet. */
  static Form begun(String operation, Typed typed) {
    return new Form(operation, typed, Optional.empty(), "", Optional.empty());
  }

  static Form refused(String operation, Typed typed, RuntimeException why) {
    String wrong = why instanceof FormException form ? form.field().orElse("") : "";
    return new Form(operation, typed, Optional.of(why.getMessage()), wrong, Optional.empty());
  }

  static Form shown(String operation, Typed typed, VocabularyChange preview) {
    return new Form(operation, typed, Optional.empty(), "", Optional.of(preview));
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

  /** Whether a field of a form is what was wrong. */
  public boolean isWrong(String name, String field) {
    return is(name) && problem.isPresent() && wrong.equals(field);
  }

  /** For the attribute of that name. */
  public String invalid(String name, String field) {
    return isWrong(name, field) ? "true" : null;
  }

  /** The ids of what describes a field: what was wrong, and a hint; null for neither. */
  public String described(String name, String field, String hint) {
    String problem = isWrong(name, field) ? "problem" : "";
    String both = (problem + " " + hint).strip();
    return both.isEmpty() ? null : both;
  }

  /** Whether what was wrong is itself what the eye is led to, since no field is known for it. */
  public boolean isWrongAsAWhole(String name) {
    return is(name) && problem.isPresent() && wrong.isEmpty();
  }

  public Optional<String> problem(String name) {
    return is(name) ? problem : Optional.empty();
  }
}
