package merese.cli;

import merese.answer.written.ListForm;
import merese.citation.Citations;
import merese.citation.StyleCatalogue;
import merese.shelf.Shelf;

/** How a command cites: {@code --style} and {@code --as}. */
final class CitationOptions {
  private static final String LIST = "list";

  private final Given<String> style;
  private final Given<String> as;

  CitationOptions(Command command) {
    style =
        command.option(
            String.class,
            "STYLE",
            "A CSL style by name or a .csl file; list shows the names. Without this, the library's"
                + " style, else mhra-notes.",
            "--style");
    as =
        command.option(String.class, "FORM", "text, markdown or html. Without this, text.", "--as");
  }

  /** Whether the names of the styles are asked for, and no citation. */
  boolean asksForStyles() {
    return style.value().filter(LIST::equals).isPresent();
  }

  static void printStyles(Context context) {
    StyleCatalogue.load().names().forEach(context.out()::println);
  }

  /** In the style that was typed, else in the library's. */
  Citations citations(Shelf shelf) {
    String name = style.value().or(() -> shelf.settings().style()).orElse(StyleCatalogue.DEFAULT);
    return Citations.inStyle(name, shelf.settings().language());
  }

  ListForm form() {
    return ListForm.named(as.value().orElse("text"))
        .orElseThrow(
            () ->
                CommandException.wrongUse(
                    "--as: there is no form \""
                        + as.value().get()
                        + "\"; the forms are text, markdown and html"));
  }
}
