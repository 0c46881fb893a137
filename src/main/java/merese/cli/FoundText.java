package merese.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import merese.answer.Coverage.ConceptLine;
import merese.answer.Coverage.SourceLine;
import merese.answer.Found;
import merese.answer.Found.Hit;
import merese.answer.Found.Kind;
import merese.answer.Found.PageLine;
import merese.answer.Found.Passage;
import merese.answer.Found.Role;
import merese.answer.OnPages;
import merese.model.Locator;

/** Lays out what was found: what each hit is, where it is, and the words in their sentence. */
final class FoundText {
  private final PrintWriter out;
  private final Page page;
  private final MarkedText marked;

  FoundText(Context context) {
    this.out = context.out();
    this.page = new Page(out, context.screen());
    this.marked = new MarkedText(out, context.screen());
  }

  void print(Found found) {
    if (found.isEmpty()) {
      nothing(found);
      return;
    }
    String asked = "“" + MarkedText.clean(found.asked().strip()) + "”";
    if (found.hits().isEmpty()) {
      page.text("No note, source or concept has " + asked + ".");
      suggest(found);
      pages(found);
      return;
    }
    if (found.withAll() > 0) {
      page.text(
          found.withAll() + (found.withAll() == 1 ? " hit for " : " hits for ") + asked + ".");
    } else {
      String nothing = found.pages().isEmpty() ? "Nothing" : "No note, source or concept";
      page.text(nothing + " has all of " + asked + "; " + some(found.withSome()) + " of it.");
    }
    suggest(found);
    out.println();
    int digits = String.valueOf(found.hits().size()).length();
    boolean all = true;
    for (int i = 0; i < found.hits().size(); i++) {
      Hit hit = found.hits().get(i);
      if (all && !hit.all() && i > 0) {
        out.println();
        page.heading("With some of the words only");
      }
      all = hit.all();
      String number = String.valueOf(i + 1);
      hit(" ".repeat(digits - number.length()) + number + ". ", hit);
    }
    more(found);
    pages(found);
  }

  /** Pages of books: apart from the hits, and counted by themselves. */
  private void pages(Found found) {
    List<PageLine> noted = new ArrayList<>();
    List<PageLine> notNoted = new ArrayList<>();
    found.pages().forEach(p -> (p.noted() ? noted : notNoted).add(p));
    pages(OnPages.TITLE, notNoted);
    pages("On the page, and noted there", noted);
    int more = found.allPages() - found.pages().size();
    if (more > 0) {
      out.println();
      page.text("And " + Page.many(more, "more page") + "; --limit N prints more.");
    }
  }

  private void pages(String title, List<PageLine> lines) {
    if (lines.isEmpty()) {
      return;
    }
    out.println();
    page.heading(title);
    for (PageLine line : lines) {
      String where = Wrap.together(line.source().reference()) + ", " + Wrap.together(line.cited());
      marked.print("  ", "    ", where + ": “" + marked.text(line.passage()) + "”");
    }
  }

  private static String some(int count) {
    return count + (count == 1 ? " has some" : " have some");
  }

  private void suggest(Found found) {
    found
        .didYouMean()
        .ifPresent(meant -> page.text("Did you mean: " + MarkedText.clean(meant) + "?"));
  }

  private void more(Found found) {
    int shownWithAll = (int) found.hits().stream().filter(Hit::all).count();
    int all = found.withAll() - shownWithAll;
    int some = found.withSome() - (found.hits().size() - shownWithAll);
    List<String> more = new ArrayList<>();
    if (all > 0) {
      more.add(all + " more");
    }
    if (some > 0) {
      more.add(some + " more with some of the words");
    }
    if (!more.isEmpty()) {
      out.println();
      page.text("And " + String.join(", and ", more) + "; --limit N prints more.");
    }
  }

  private void hit(String number, Hit hit) {
    String indent = " ".repeat(number.length());
    switch (hit.kind()) {
      case NOTE -> {
        marked.print(number, indent, "Note: " + reference(hit) + places(hit));
        marked.print(indent, indent, marked.text(hit.heading()) + meanings(hit));
      }
      case SOURCE ->
          marked.print(
              number,
              indent,
              "Source: " + marked.text(hit.heading()) + " (" + hit.source().get().key() + ")");
      case CONCEPT ->
          marked.print(
              number, indent, "Concept: " + marked.text(hit.heading()) + " (" + hit.id() + ")");
      case OWN_PIECE -> marked.print(number, indent, "My piece " + marked.text(hit.heading()));
      case COINAGE ->
          marked.print(
              number, indent, "My coinage: “" + marked.text(hit.heading()) + "”" + meanings(hit));
      case PREFERENCE ->
          marked.print(
              number,
              indent,
              "My preferred term: “" + marked.text(hit.heading()) + "”" + meanings(hit));
      case EXPERIENCE -> marked.print(number, indent, "My experience" + of(hit));
      case UNTRACED ->
          marked.print(
              number,
              indent,
              "My untraced word: “"
                  + marked.text(hit.heading())
                  + "”, met somewhere, its source forgotten");
    }
    List<Passage> passages = hit.passages();
    for (int i = 0; i < passages.size(); i++) {
      Role role = passages.get(i).role();
      StringBuilder text = new StringBuilder(words(passages.get(i)));
      while (role == Role.LABEL && i + 1 < passages.size() && passages.get(i + 1).role() == role) {
        text.append(", ").append(words(passages.get(++i)));
      }
      marked.print(indent, indent + "  ", lead(hit, role) + text);
    }
  }

  /** A source's own words stand in quotation marks. */
  private String words(Passage passage) {
    String text = marked.text(passage.text());
    boolean quoted = passage.role() == Role.QUOTATION || passage.role() == Role.CLAIM;
    return quoted ? "“" + text + "”" : text;
  }

  private static String lead(Hit hit, Role role) {
    return switch (role) {
      case CLAIM -> "claims: ";
      case MY_READING -> "my reading: ";
      case LABEL -> hit.kind() == Kind.CONCEPT ? "also: " : "by the vocabulary: ";
      case AUTHOR -> "by or with: ";
      case QUOTATION, DEFINITION, TITLE, IMPRINT, MY_WORDS -> "";
    };
  }

  private static String reference(Hit hit) {
    SourceLine source = hit.source().get();
    return Wrap.together(source.reference())
        + source.whereabouts().map(w -> " [" + w + "]").orElse("");
  }

  private static String places(Hit hit) {
    String pictured = locators(hit.pictured());
    String inWords = locators(hit.inWords());
    if (pictured.isEmpty()) {
      return ", " + inWords + " (text only)";
    }
    return ", " + pictured + (inWords.isEmpty() ? "" : " (text " + inWords + ")");
  }

  private static String locators(List<Locator> locators) {
    List<String> printed = new ArrayList<>();
    locators.forEach(l -> printed.add(Wrap.together(l.toString())));
    return String.join("; ", printed);
  }

  private static String meanings(Hit hit) {
    if (hit.concepts().isEmpty()) {
      return hit.kind() == Kind.NOTE ? " (meaning not stated)" : "";
    }
    return " → " + String.join(", ", hit.concepts().stream().map(ConceptLine::label).toList());
  }

  private static String of(Hit hit) {
    return hit.concepts().isEmpty() ? "" : " of " + hit.concepts().get(0).label();
  }

  private void nothing(Found found) {
    page.text("Nothing in this library has “" + MarkedText.clean(found.asked().strip()) + "”.");
    suggest(found);
    page.text(
        "Try fewer words, the beginning of one with * (knife*), or no field; merese covers asks"
            + " for a feature by any of its names.");
  }
}
