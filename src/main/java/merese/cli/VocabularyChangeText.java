package merese.cli;

import merese.change.vocabulary.VocabularyChange;
import merese.change.vocabulary.VocabularyChange.StayingNote;

/** A change of the vocabulary, laid out. */
final class VocabularyChangeText {
  private final Page page;

  VocabularyChangeText(Page page) {
    this.page = page;
  }

  void print(VocabularyChange change, boolean done) {
    page.heading(change.concept() + ": " + change.label());
    page.blank();
    EffectText text = new EffectText(page);
    text.print(change.effects());
    if (!change.staying().isEmpty()) {
      page.blank();
      page.text(
          Page.many(change.staying().size(), "note")
              + (change.staying().size() == 1 ? " stays" : " stay")
              + " where "
              + (change.staying().size() == 1 ? "it is" : "they are")
              + "; --printed, --source or --note takes more:");
      for (StayingNote note : change.staying()) {
        page.hanging("  ", words(note));
      }
    }
    page.blank();
    String files = Page.many(change.files(), "file");
    page.text(
        !done
            ? "Nothing is changed yet; --apply does it (" + files + ")."
            : change.files() == 0
                ? "It is so already; nothing was written."
                : "Done: " + files + " written. merese undo takes it back.");
  }

  private static String words(StayingNote note) {
    StringBuilder words = new StringBuilder(note.note());
    words.append("  ").append(String.join("; ", note.places())).append("  ");
    for (String printed : note.printed()) {
      words.append(printed.isEmpty() ? "(not named) " : "“" + printed + "” ");
    }
    return words.toString().strip();
  }
}
