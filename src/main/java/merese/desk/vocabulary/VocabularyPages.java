package merese.desk.vocabulary;

import io.javalin.config.RoutesConfig;
import java.util.List;
import merese.desk.web.Page;
import merese.desk.web.Site;

/** The vocabulary, its concepts, the user's own pieces, and the key to look-alikes. */
public final class VocabularyPages implements Page {
  private final List<Page> pages;

  public VocabularyPages(Site site) {
    Told told = new Told(site.library());
    pages =
        List.of(
            new VocabularyPage(site, told),
            new ConceptPage(site, told),
            new PiecesPage(site, told),
            new IdentifyPage(site));
  }

  @Override
  public void addTo(RoutesConfig routes) {
    pages.forEach(page -> page.addTo(routes));
  }
}
