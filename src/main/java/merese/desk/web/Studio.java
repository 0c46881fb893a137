package merese.desk.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.io.Closeable;
import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
import merese.desk.web.Frame.Tab;
import merese.model.ForTheUser;
import merese.store.LibraryFolder;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.io.EofException;

/** Sets up what the pages share, and answers what goes wrong in any of them. */
public final class Studio implements Closeable {
  private static final String TEMPLATES = "merese.desk.templates";

  private final Gate gate = new Gate();
  private final Assets assets = new Assets();
  private final Consumer<String> faults;
  private final Shelves shelves;
  private final Site site;

  public Studio(LibraryFolder library, Clock clock, String by, Consumer<String> faults) {
    this.faults = faults;
    this.shelves = new Shelves(library, Math.max(2, Runtime.getRuntime().availableProcessors()));
    TemplateEngine templates =
        TemplateEngine.createPrecompiled(
            null, ContentType.Html, Studio.class.getClassLoader(), TEMPLATES);
    this.site = new Site(library, clock, by, shelves, templates, assets, gate.token());
  }

  public Site site() {
    return site;
  }

  /** From now on requests are let in. */
  public void open(int port) {
    gate.open(port);
  }

  /**
   * @param mostBytes that a request may bring
   */
  public void addTo(RoutesConfig routes, long mostBytes) {
    routes.before(request -> gate.check(request, mostBytes));
    assets.addTo(routes);
    new Pictures(site.library()).addTo(routes);
    routes.exception(Exception.class, this::failed);
  }

  /** Answers, after all pages, what none of them does. */
  public void addLast(RoutesConfig routes) {
    routes.get("/<anything>", request -> refused(request, 404));
  }

  /** What an error page says. */
  public record Failure(String heading, List<String> lines) {}

  private void refused(Context request, int status) {
    if (status == 404) {
      say(request, 404, "There is no such page", "The address leads nowhere in this desk.");
    } else if (status == 413) {
      plain(request, 413, "more was sent than a picture may have; export it smaller, as JPEG");
    } else {
      plain(request, status, "the desk does not understand this request");
    }
  }

  private void failed(Exception e, Context request) {
    if (e instanceof RefusedException refused) {
      plain(request, refused.status(), refused.getMessage());
    } else if (e instanceof EarlierStartException earlier) {
      sayEarlier(request, earlier);
    } else if (e instanceof NotThereException) {
      say(request, 404, "It is not there", e.getMessage());
    } else if (e instanceof ForTheUser known) {
      say(request, 422, "This cannot be answered", known.getMessage());
    } else if (badRequest(e) > 0) {
      refused(request, badRequest(e));
    } else if (isGone(e)) {
      plain(request, 400, "whoever asked has hung up");
    } else {
      faults.accept("a fault in merese at " + request.path() + ": " + e);
      say(
          request,
          500,
          "This is a fault in Merese",
          "It is not in what you typed. What is on the disk is whole: " + e);
    }
  }

  /** The status by which the server below refuses what cannot be read; 0 where it does not. */
  private static int badRequest(Throwable e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      String message = String.valueOf(cause.getMessage());
      if (message.contains("max length exceeded") || message.contains("too large")) {
        return 413;
      } else if (cause instanceof HttpException bad) {
        return bad.getCode();
      } else if (cause instanceof HttpResponseException response) {
        return response.getStatus();
      }
    }
    return 0;
  }

  private static boolean isGone(Throwable e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof EofException) {
        return true;
      }
    }
    return false;
  }

  private static void plain(Context request, int status, String message) {
    request.status(status).contentType("text/plain; charset=utf-8").result(message + "\n");
  }

  /** Nothing that was typed is lost, and nothing is done before somebody has looked at it. */
  private void sayEarlier(Context request, EarlierStartException earlier) {
    request.status(403);
    try {
      SentAgain again = SentAgain.of(request);
      site.show(request, Tab.LOOK_UP, "The desk was started anew", "again.jte", again);
    } catch (RuntimeException e) {
      plain(request, 403, earlier.getMessage());
    }
  }

  /** Where even the frame cannot be made, plain words are left. */
  private void say(Context request, int status, String heading, String message) {
    request.status(status);
    try {
      Failure failure = new Failure(heading, Remedies.words(message).lines().toList());
      site.show(request, Tab.LOOK_UP, heading, "failure.jte", failure);
    } catch (RuntimeException e) {
      plain(request, status, site.said(message));
    }
  }

  @Override
  public void close() {
    shelves.close();
  }
}
