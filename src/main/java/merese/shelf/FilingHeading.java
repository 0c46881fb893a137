package merese.shelf;

import java.util.List;
import merese.model.Contributor;
import merese.model.Edition;
import merese.model.Name;
import merese.model.ShortReference;
import merese.model.Work;

/**
 * The words that a source files under: its first author, family name first and without the
 * particle, so that "van Marle" stands under M; else whatever names it in a short reference, a
 * title without its article (common practice, no source).
 */
final class FilingHeading {
  private static final List<String> ARTICLES = List.of("The ", "A ", "An ");

  private FilingHeading() {}

  static String of(Work work, Edition edition) {
    StringBuilder heading = new StringBuilder();
    for (Contributor maker : work.makers()) {
      heading.append(heading.isEmpty() ? "" : ", ").append(of(maker.name()));
    }
    return heading.isEmpty()
        ? withoutArticle(ShortReference.names(work, edition))
        : heading.toString();
  }

  private static String of(Name name) {
    if (name instanceof Name.Person person) {
      return person.family() + person.given().map(g -> " " + g).orElse("");
    }
    return withoutArticle(name.full());
  }

  private static String withoutArticle(String title) {
    for (String article : ARTICLES) {
      if (title.startsWith(article)) {
        return title.substring(article.length());
      }
    }
    return title;
  }
}
