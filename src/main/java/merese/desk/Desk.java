package merese.desk;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.util.JavalinBindException;
import java.io.Closeable;
import java.util.List;
import merese.desk.web.Page;
import merese.desk.web.Site;
import merese.desk.web.Studio;

/** A web server for one library, which listens on the loopback address alone. */
public final class Desk implements Closeable {
  /** Loopback, as an address: a name could be made to lead elsewhere. */
  static final String HOST = "127.0.0.1";

  private static final int MOST_UPLOADED_MB = 65;
  private static final int PORTS_TRIED = 50;

  private final Studio studio;
  private final Javalin server;

  private Desk(Studio studio, Javalin server) {
    this.studio = studio;
    this.server = server;
  }

  /** All pages. A new one is a line here. */
  private static List<Page> pages(Site site) {
    return List.of(
        new merese.desk.look.LookUpPage(site),
        new merese.desk.note.NotePage(site),
        new merese.desk.note.HeadingsPage(site),
        new merese.desk.note.LookedPage(site),
        new merese.desk.note.ChangesPage(site),
        new merese.desk.note.CheckPage(site));
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
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    studio.addTo(config.routes, (long) (MOST_UPLOADED_MB + 1) << 20);
    for (Page page : pages(studio.site())) {
      page.addTo(config.routes);
    }
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
