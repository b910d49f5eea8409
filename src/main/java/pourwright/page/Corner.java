package pourwright.page;

import io.javalin.config.RoutesConfig;

/** Something that answers under some paths of its own. */
public interface Corner {
  /** Adds the routes. */
  void addTo(RoutesConfig routes);
}
