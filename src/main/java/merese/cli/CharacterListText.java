package merese.cli;

import merese.answer.identify.CharacterList;
import merese.answer.identify.Identification.ValueLine;

/** Lays out what can be looked at, with the values to type. */
final class CharacterListText {
  private static final String INDENT = "    ";

  private final Page page;

  CharacterListText(Page page) {
    this.page = page;
  }

  void print(CharacterList list) {
    for (CharacterList.Line character : list.characters()) {
      page.heading(character.id() + ": " + character.question());
      page.hanging(INDENT, character.look());
      page.hanging(
          INDENT,
          "To be "
              + character.senses()
              + "; the key speaks of it for "
              + Page.many(character.kinds(), "kind")
              + ".");
      if (character.values().isEmpty()) {
        page.hanging(INDENT, character.id() + "=NUMBER");
      }
      int wide = 0;
      for (ValueLine value : character.values()) {
        wide = Math.max(wide, character.id().length() + 1 + value.id().length());
      }
      for (ValueLine value : character.values()) {
        page.columns(INDENT, character.id() + "=" + value.id(), wide).line(value.label());
      }
      page.blank();
    }
    page.text("For what was looked for and not found: not-found. It rules nothing out.");
    page.blank();
    page.heading("Kinds (" + list.kinds().size() + ")");
    page.hanging(INDENT, IdentificationText.names(list.kinds()));
    page.blank();
    IdentificationText.key(page, list.key());
  }
}
