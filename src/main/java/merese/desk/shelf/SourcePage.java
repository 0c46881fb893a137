package merese.desk.shelf;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import merese.answer.Coverage.SourceLine;
import merese.answer.UnknownSourceException;
import merese.answer.holdings.Describing;
import merese.answer.holdings.Holding;
import merese.answer.holdings.Holding.NoteLine;
import merese.answer.holdings.Holding.PlaceLine;
import merese.citation.Citations;
import merese.citation.StyleCatalogue;
import merese.desk.look.Pictures;
import merese.desk.web.Frame.Tab;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.model.LibrarySettings;
import merese.shelf.Shelf;
import merese.shelf.Source;

/** One source: how it is cited, its editions and copies, and every note on it. */
public final class SourcePage implements Page {
  private final Site site;
  private final Map<String, Citations> styles = new HashMap<>();

  public SourcePage(Site site) {
    this.site = site;
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/shelf/<key>", this::show);
  }

  /** One of the user's own photographs of a place. */
  public record Picture(String path, String at, String words) {}

  /**
   * The page.
   *
   * @param severalEditions whether its work has more than this edition
   * @param pictures of each note that has any which are there, by the note's id
   */
  public record Model(
      Holding answer, Map<String, List<Picture>> pictures, boolean severalEditions) {
    public List<Picture> of(NoteLine note) {
      return pictures.getOrDefault(note.id(), List.of());
    }

    /** Where a further note on the same place is begun. */
    public String noteAt(NoteLine note) {
      String at =
          note.places().stream()
              .findFirst()
              .map(place -> "&at=" + Site.encoded(place.locator().printed()))
              .orElse("");
      return "/note?source=" + Site.encoded(answer.source().key()) + at;
    }
  }

  /**
   * That a key is not of a source.
   *
   * @param near keys that may have been meant
   */
  public record Unknown(String message, List<String> near) {}

  private boolean severalEditions(Holding answer) {
    return site.ask(
        shelf ->
            shelf.sources().stream().filter(s -> s.workId().equals(answer.work())).count() > 1);
  }

  private void show(Context request) {
    String key = request.pathParam("key");
    try {
      Holding answer = site.ask(shelf -> described(shelf, key));
      if (Site.wantsJson(request)) {
        site.json(request, answer);
        return;
      }
      SourceLine source = answer.source();
      Model model = new Model(answer, pictures(answer), severalEditions(answer));
      site.show(
          request, Tab.SHELF, source.reference() + ", " + source.title(), "source.jte", model);
    } catch (UnknownSourceException e) {
      Optional<String> first = firstOf(key);
      if (first.isPresent()) {
        String asked = request.queryString();
        request.redirect(
            "/shelf/" + Site.encoded(first.get()) + (asked == null ? "" : "?" + asked));
        return;
      }
      request.status(404);
      Unknown unknown = new Unknown(e.getMessage(), e.near());
      site.show(request, Tab.SHELF, "No such source", "nosource.jte", unknown);
    }
  }

  /** The earliest edition of a work that is named itself. */
  private Optional<String> firstOf(String work) {
    return site.ask(shelf -> shelf.ofWork(work).stream().findFirst().map(Source::key));
  }

  /** Citations take long to make, and are not for several threads. */
  private Holding described(Shelf shelf, String key) {
    LibrarySettings settings = shelf.settings();
    String style = settings.style().orElse(StyleCatalogue.DEFAULT);
    synchronized (styles) {
      Citations citations =
          styles.computeIfAbsent(
              style + "\n" + settings.language(),
              both -> Citations.inStyle(style, settings.language()));
      return Describing.answer(shelf, key, citations);
    }
  }

  private Map<String, List<Picture>> pictures(Holding answer) {
    Map<String, List<Picture>> pictures = new HashMap<>();
    for (NoteLine note : answer.notes()) {
      List<Picture> those = new ArrayList<>();
      for (PlaceLine place : note.places()) {
        place
            .photo()
            .filter(site::hasPicture)
            .ifPresent(file -> those.add(picture(file, note, place)));
      }
      if (!those.isEmpty()) {
        pictures.put(note.id(), those);
      }
    }
    return pictures;
  }

  private static Picture picture(String file, NoteLine note, PlaceLine place) {
    String printed = note.namings().get(0).printed();
    Optional<String> named = Optional.of(printed).filter(words -> !words.isEmpty());
    return new Picture(
        Pictures.path(file), place.locator().printed(), named.map(n -> "“" + n + "”").orElse(""));
  }
}
