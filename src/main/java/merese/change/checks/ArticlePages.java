package merese.change.checks;

import java.util.Optional;
import merese.model.Edition;
import merese.model.Locator;

/** The pages and plates of an article, which its places are held against. */
public final class ArticlePages {
  private final Locator pages;
  private final Reach reach;

  private ArticlePages(Locator pages) {
    this.pages = pages;
    this.reach = Reach.of(pages);
  }

  /** Those of an edition; empty where it is no article, or nobody has said them. */
  public static Optional<ArticlePages> of(Edition edition) {
    return edition.container().flatMap(Edition.Container::pages).map(ArticlePages::new);
  }

  /** What is wrong with a place that certainly is not in the article, to be said after it. */
  public Optional<String> outside(Locator place) {
    return reach.leavesOut(place)
        ? Optional.of("is not in the article, which has " + pages)
        : Optional.empty();
  }
}
