package merese.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import merese.change.EntryException;
import merese.change.SourceEntry;
import merese.change.SourceField;
import merese.model.Copy;
import merese.model.Edition.Lineage;
import merese.model.SourceKind;

/** Asks for what a kind of source needs and has not been given. */
final class AddQuestions {
  private final Asking asking;
  private final SourceEntry entry;

  AddQuestions(Asking asking, SourceEntry entry) {
    this.asking = asking;
    this.entry = entry;
  }

  /** Kind and title first, which every work has; then what its kind needs. */
  void ofWork() {
    if (!entry.has(SourceField.KIND)) {
      List<String> kinds = new ArrayList<>();
      for (SourceKind kind : SourceKind.values()) {
        kinds.add(kind.words());
      }
      SourceKind kind = SourceKind.values()[asking.choice("What sort of source is it?", kinds)];
      entry.put(SourceField.KIND, kind.code());
    }
    while (!entry.has(SourceField.TITLE)) {
      put(SourceField.TITLE, asking.line(SourceField.TITLE.question()));
    }
    asking.say("Just Return leaves a question out.");
    SourceField.asked(entry.kind().orElseThrow()).forEach(this::ask);
  }

  /** What tells an edition from the others of its work. */
  void ofEdition() {
    asking.say("Just Return leaves a question out.");
    SourceField.askedOfEdition().forEach(this::ask);
  }

  /** How it stands to the edition that was named. */
  Optional<Lineage.Form> form() {
    List<String> forms = new ArrayList<>();
    for (Lineage.Form form : Lineage.Form.values()) {
      forms.add(form.code());
    }
    forms.add("not known");
    int chosen = asking.choice("How does it stand to the edition that is there?", forms);
    return chosen < Lineage.Form.values().length
        ? Optional.of(Lineage.Form.values()[chosen])
        : Optional.empty();
  }

  private void ask(SourceField field) {
    boolean more = !entry.has(field) && field.needs().filter(f -> !entry.has(f)).isEmpty();
    while (more) {
      String typed = asking.line(field.question());
      more = !typed.isEmpty() && (!put(field, typed) || isNamed(field));
    }
  }

  /** Of people there may be several, of what else a person is asked there seldom are. */
  private static boolean isNamed(SourceField field) {
    return field == SourceField.AUTHOR || field == SourceField.ORGANISER;
  }

  /** What cannot be taken is said, and asked again. */
  private boolean put(SourceField field, String typed) {
    if (typed.isEmpty()) {
      return false;
    }
    try {
      entry.put(field, typed);
      return true;
    } catch (EntryException e) {
      asking.say(e.getMessage());
      return false;
    }
  }

  /** A copy on the user's shelf. */
  Optional<Copy> copy() {
    String mark = asking.line("Where does your copy stand? (Return where you have none)");
    return mark.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Copy(
                "new",
                Optional.empty(),
                Optional.of(mark),
                Optional.empty(),
                false,
                Optional.empty()));
  }
}
