package merese.exchange.pages;

import java.util.ArrayList;
import java.util.List;
import merese.model.PageLines;

/** Takes pages in, and no more of them than the limits allow. */
final class Collected implements PageSink {
  private final Limits limits;
  private final List<PageLines> pages = new ArrayList<>();
  private long characters;

  Collected(Limits limits) {
    this.limits = limits;
  }

  @Override
  public void page(String text) {
    if (pages.size() == limits.pages()) {
      throw tooManyPages(limits);
    }
    if (text.length() > limits.pageCharacters()) {
      throw tooLargeAPage(pages.size() + 1, limits);
    }
    characters += text.length();
    if (characters > limits.characters()) {
      throw new RefusedException(
          "its pages have more than " + Counted.of(limits.characters()) + " characters of text",
          "attach it in parts, each under a --name of its own");
    }
    pages.add(PageLinesOf.text(text));
  }

  List<PageLines> pages() {
    return pages;
  }

  int withoutText() {
    return (int) pages.stream().filter(PageLines::isEmpty).count();
  }

  static RefusedException tooManyPages(Limits limits) {
    return new RefusedException(
        "it has more than " + Counted.of(limits.pages()) + " pages",
        "attach it in parts, each under a --name of its own");
  }

  static RefusedException tooLargeAPage(int page, Limits limits) {
    return new RefusedException(
        "page " + page + " has more than " + Counted.of(limits.pageCharacters()) + " characters",
        "no page of a book has so many; mark where pages end with form feeds, or look at the file");
  }
}
