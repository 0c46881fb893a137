package merese.desk.web;

import io.javalin.config.RoutesConfig;

/** A page of the desk, or a few that belong together, with what can be done there. */
public interface Page {
  /** Says which addresses are answered, and how. */
  void addTo(RoutesConfig routes);
}
