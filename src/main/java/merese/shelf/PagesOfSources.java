package merese.shelf;

import java.util.List;

/**
 * Pages of some sources.
 *
 * @param pages of the first sources, in their order
 * @param sources how many sources there are
 */
public record PagesOfSources(List<SourcedPage> pages, int sources) {}
