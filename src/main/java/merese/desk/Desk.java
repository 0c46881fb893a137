package merese.desk;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.util.JavalinBindException;
import java.io.Closeable;
import java.util.List;
import merese.desk.chart.ConcordancePage;
import merese.desk.chart.TimelinePage;
import merese.desk.chart.WitnessesPage;
import merese.desk.chart.WordsPage;
import merese.desk.list.PullPage;
import merese.desk.list.ReadingListPage;
import merese.desk.list.ShowPage;
import merese.desk.look.FindPage;
import merese.desk.look.LookUpPage;
import merese.desk.note.ChangesPage;
import merese.desk.note.CheckPage;
import merese.desk.note.HeadingsPage;
import merese.desk.note.LookedPage;
import merese.desk.note.NotePage;
import merese.desk.shelf.AddPage;
import merese.desk.shelf.EditPage;
import merese.desk.shelf.JoinPage;
import merese.desk.shelf.RemovePage;
import merese.desk.shelf.ShelfPage;
import merese.desk.shelf.SourcePage;
import merese.desk.vocabulary.VocabularyPages;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.desk.web.Studio;

/** A web server for one library, which listens on the loopback address alone. */
public final class Desk implements Closeable {
  /** Loopback, as an address: a name could be made to lead elsewhere. */
  static final String HOST = "127.0.0.1";

  private static final int MOST_UPLOADED_MB = 65;
  private static final int PORTS_TRIED = 50;

  /** In bytes, with the headers, which name the address again: a script stands in it whole. */
  private static final int LONGEST_ADDRESS = 1 << 20;

  private final Studio studio;
  private final Javalin server;

  private Desk(Studio studio, Javalin server) {
    this.studio = studio;
    this.server = server;
  }

  /** All pages. A new one is a line here. */
  private static List<Page> pages(Site site) {
    return List.of(
        new LookUpPage(site),
        new FindPage(site),
        new ShelfPage(site),
        new SourcePage(site),
        new AddPage(site),
        new EditPage(site),
        new RemovePage(site),
        new JoinPage(site),
        new VocabularyPages(site),
        new ReadingListPage(site),
        new PullPage(site),
        new ShowPage(site),
        new ConcordancePage(site),
        new TimelinePage(site),
        new WordsPage(site),
        new WitnessesPage(site),
        new NotePage(site),
        new HeadingsPage(site),
        new LookedPage(site),
        new ChangesPage(site),
        new CheckPage(site));
  }

  /**
   * Starts to listen; returns once it does. Where the port is in use, the next that is free is
   * taken.
   *
   * @throws IllegalStateException where no port near it is free
   */
  public static Desk start(DeskSettings settings) {
    JavalinBindException inUse = null;
    for (int i = 0; i < PORTS_TRIED; i++) {
      Studio studio =
          new Studio(settings.library(), settings.clock(), settings.by(), settings.faults());
      int port = settings.port() == 0 ? 0 : settings.port() + i;
      try {
        Javalin server = Javalin.create(config -> configure(config, studio));
        server.start(HOST, port);
        studio.open(server.port());
        return new Desk(studio, server);
      } catch (JavalinBindException e) {
        studio.close();
        inUse = e;
      }
    }
    throw new IllegalStateException("no port from " + settings.port() + " up is free", inUse);
  }

  private static void configure(JavalinConfig config, Studio studio) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.maxRequestSize = 4L << 20;
    config.http.generateEtags = false;
    config.jetty.multipartConfig.maxFileSize(MOST_UPLOADED_MB, SizeUnit.MB);
    config.jetty.multipartConfig.maxTotalRequestSize(MOST_UPLOADED_MB + 1, SizeUnit.MB);
    config.jetty.multipartConfig.maxInMemoryFileSize(MOST_UPLOADED_MB, SizeUnit.MB);
    config.jetty.modifyHttpConfiguration(
        http -> {
          http.setSendServerVersion(false);
          http.setRequestHeaderSize(LONGEST_ADDRESS);
        });
    studio.addTo(config.routes, (long) (MOST_UPLOADED_MB + 1) << 20);
    for (Page page : pages(studio.site())) {
      page.addTo(config.routes);
    }
    studio.addLast(config.routes);
  }

  public int port() {
    return server.port();
  }

  /** Where a browser finds it. */
  public String address() {
    return "http://" + HOST + ":" + port() + "/";
  }

  @Override
  public void close() {
    server.stop();
    studio.close();
  }
}
