package merese.desk.list;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import merese.answer.CoverageQuestion.Narrowing;
import merese.answer.Exported;
import merese.answer.Exported.Format;
import merese.answer.ReadingList;
import merese.answer.SourceChoice;
import merese.answer.written.Breaking;
import merese.answer.written.ListForm;
import merese.citation.Output;
import merese.desk.web.FormException;
import merese.shelf.Shelf;

/**
 * A reading list as a file: letter by letter what the terminal writes.
 *
 * @param name of the file, in ASCII
 * @param type a media type
 */
record SavedList(String name, String type, String text) {
  private static final String BIBTEX = "bibtex";
  private static final int LONGEST_NAME = 60;

  /**
   * Makes the file.
   *
   * @param as a form of {@link ListForm}, or "bibtex"
   * @throws FormException where there is no such form, or no source to save
   */
  static SavedList of(Shelf shelf, Question asked, String as) {
    if (asked.isEmpty()) {
      throw new FormException("there is no list to save yet: choose a feature first");
    }
    String name = name(shelf, asked);
    if (BIBTEX.equals(as)) {
      return new SavedList(name + ".bib", "text/plain; charset=utf-8", bibtex(shelf, asked));
    }
    Optional<ListForm> form = as == null ? Optional.empty() : ListForm.named(as);
    if (form.isEmpty()) {
      throw new FormException(
          "there is no form \"" + as + "\"; the forms are text, markdown, html and bibtex");
    }
    return switch (form.get()) {
      case TEXT -> new SavedList(name + ".txt", "text/plain; charset=utf-8", text(shelf, asked));
      case MARKDOWN ->
          new SavedList(
              name + ".md", "text/markdown; charset=utf-8", written(shelf, asked, form.get()));
      case HTML ->
          new SavedList(
              name + ".html", "text/html; charset=utf-8", written(shelf, asked, form.get()));
    };
  }

  private static String text(Shelf shelf, Question asked) {
    return ListAnswer.fitted(shelf, asked).orElseGet(() -> written(shelf, asked, ListForm.TEXT));
  }

  private static String written(Shelf shelf, Question asked, ListForm form) {
    ReadingList list = ListAnswer.whole(shelf, asked, form.output()).without(ListAnswer.out(asked));
    return form.write(list, Breaking.NONE);
  }

  private static String bibtex(Shelf shelf, Question asked) {
    ReadingList list = ListAnswer.whole(shelf, asked, Output.TEXT).without(ListAnswer.out(asked));
    if (list.isEmpty()) {
      throw new FormException("no source is left in this list, so there is nothing to save");
    }
    SourceChoice choice = new SourceChoice(list.keys(), Optional.empty(), Narrowing.NONE);
    StringWriter text = new StringWriter();
    try {
      Exported.write(shelf, choice, Format.BIBTEX, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /** "reading-list-bladed-ring": what any system takes as the name of a file. */
  private static String name(Shelf shelf, Question asked) {
    List<String> words = new ArrayList<>(List.of("reading-list"));
    if (asked.has("script")) {
      words.add("script");
    }
    for (Features.Line feature : Features.lines(shelf, asked)) {
      String word = plain(feature.label());
      if (!word.isEmpty() && String.join("-", words).length() + word.length() < LONGEST_NAME) {
        words.add(word);
      }
    }
    return String.join("-", words);
  }

  private static String plain(String label) {
    StringBuilder plain = new StringBuilder();
    for (char c : label.toLowerCase(Locale.ROOT).toCharArray()) {
      boolean kept = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
      boolean between = !plain.isEmpty() && plain.charAt(plain.length() - 1) != '-';
      if (kept || between) {
        plain.append(kept ? c : '-');
      }
    }
    int end = plain.length();
    return plain.substring(0, end > 0 && plain.charAt(end - 1) == '-' ? end - 1 : end);
  }
}
