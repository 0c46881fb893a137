package merese.answer.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import merese.answer.ReadingList;
import merese.answer.ReadingList.Chapter;
import merese.answer.ReadingList.Item;
import merese.citation.Output;

/** What a reading list is written as. */
public enum ListForm {
  TEXT(Output.TEXT) {
    @Override
    public String write(ReadingList list, Breaking breaking) {
      StringBuilder text = new StringBuilder();
      for (Chapter chapter : list.chapters()) {
        chapter.heading().ifPresent(h -> text.append(plain(breaking, h)).append("\n\n"));
        items(text, chapter.items(), breaking);
        chapter.why().ifPresent(w -> text.append(plain(breaking, w)).append('\n'));
        text.append('\n');
      }
      if (!list.consulted().isEmpty()) {
        text.append(CONSULTED).append("\n\n");
        items(text, list.consulted(), breaking);
        text.append('\n');
      }
      if (!list.pieces().isEmpty()) {
        text.append(PIECES).append("\n\n");
        for (String piece : list.pieces()) {
          breaking.lines(piece, "   ", "   ").forEach(l -> text.append(l).append('\n'));
        }
        text.append('\n');
      }
      for (String line : ending(list)) {
        text.append(plain(breaking, line)).append('\n');
      }
      return text.toString();
    }

    private void items(StringBuilder text, List<Item> items, Breaking breaking) {
      int digits = String.valueOf(items.size()).length();
      for (int i = 0; i < items.size(); i++) {
        String number = String.valueOf(i + 1);
        String lead = " ".repeat(digits - number.length()) + number + ". ";
        for (String line :
            breaking.citation(items.get(i).citation(), lead, " ".repeat(lead.length()))) {
          text.append(line).append('\n');
        }
      }
    }

    private String plain(Breaking breaking, String words) {
      return String.join("\n", breaking.lines(words, "", ""));
    }
  },

  MARKDOWN(Output.MARKDOWN) {
    @Override
    public String write(ReadingList list, Breaking breaking) {
      StringBuilder text = new StringBuilder("# Reading list\n\n");
      for (Chapter chapter : list.chapters()) {
        chapter
            .heading()
            .ifPresent(h -> text.append("## ").append(output().literal(h)).append("\n\n"));
        chapter.why().ifPresent(w -> text.append(output().literal(w)).append('\n'));
        items(text, chapter.items());
      }
      if (!list.consulted().isEmpty()) {
        text.append("## ").append(CONSULTED).append("\n\n");
        items(text, list.consulted());
      }
      if (!list.pieces().isEmpty()) {
        text.append("## ").append(PIECES).append("\n\n");
        list.pieces().forEach(piece -> text.append("- ").append(piece).append('\n'));
        text.append('\n');
      }
      ending(list).forEach(line -> text.append('*').append(output().literal(line)).append("*\n"));
      return text.toString();
    }

    private void items(StringBuilder text, List<Item> items) {
      for (int i = 0; i < items.size(); i++) {
        text.append(i + 1).append(". ").append(items.get(i).citation()).append('\n');
      }
      text.append('\n');
    }
  },

  HTML(Output.HTML) {
    @Override
    public String write(ReadingList list, Breaking breaking) {
      StringBuilder text = new StringBuilder(HTML_START);
      for (Chapter chapter : list.chapters()) {
        chapter.heading().ifPresent(h -> heading(text, h));
        chapter
            .why()
            .ifPresent(w -> text.append("<p>").append(output().literal(w)).append("</p>\n"));
        items(text, chapter.items());
      }
      if (!list.consulted().isEmpty()) {
        heading(text, CONSULTED);
        items(text, list.consulted());
      }
      if (!list.pieces().isEmpty()) {
        heading(text, PIECES);
        text.append("<ul>\n");
        list.pieces().forEach(p -> text.append("<li>").append(p).append("</li>\n"));
        text.append("</ul>\n");
      }
      for (String line : ending(list)) {
        text.append("<p><small>").append(output().literal(line)).append("</small></p>\n");
      }
      return text.append("</body>\n</html>\n").toString();
    }

    private void heading(StringBuilder text, String heading) {
      text.append("<h2>").append(output().literal(heading)).append("</h2>\n");
    }

    private void items(StringBuilder text, List<Item> items) {
      if (items.isEmpty()) {
        return;
      }
      text.append("<ol>\n");
      items.forEach(i -> text.append("<li>").append(i.citation()).append("</li>\n"));
      text.append("</ol>\n");
    }
  };

  private static final String CONSULTED = "Consulted without result";
  private static final String PIECES = "My own pieces";
  private static final String HTML_START =
      """
      <!DOCTYPE html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <meta name="viewport" content="width=device-width, initial-scale=1">
      <title>Reading list</title>
      <style>
      body { max-width: 42em; margin: 2em auto; padding: 0 1em; font: 1.05em/1.5 serif; }
      li { margin-bottom: 0.5em; }
      </style>
      </head>
      <body>
      <h1>Reading list</h1>
      """;

  private final Output output;

  ListForm(Output output) {
    this.output = output;
  }

  /** The form of this name, as {@code --as} calls it. */
  public static Optional<ListForm> named(String name) {
    for (ListForm form : values()) {
      if (form.name().toLowerCase(Locale.ROOT).equals(name)) {
        return Optional.of(form);
      }
    }
    return Optional.empty();
  }

  /** The mark-up that the list's citations must have. */
  public Output output() {
    return output;
  }

  /**
   * The whole list, with a newline at the end.
   *
   * @param breaking how lines of plain text are broken; nothing to the other forms
   */
  public abstract String write(ReadingList list, Breaking breaking);

  private static List<String> ending(ReadingList list) {
    List<String> lines = new ArrayList<>(list.remarks());
    lines.addAll(list.cautions());
    return lines;
  }
}
