package pourwright.page;

import io.javalin.config.RoutesConfig;

/**
 * One of the nine places of the workshop. A place has a name, a path below which all its routes
 * lie, a sentence that says what is done there, and handlers of three lines: read the form, run the
 * use case, show what came of it.
 */
public interface Place extends Corner {
  /** The name as it stands in the navigation, such as "Casting bench". */
  String name();

  /** The path of the first page, such as {@code /casting}; "/" for the first page of all. */
  String path();

  /** What is done here, one sentence. */
  String purpose();

  /** Adds the place's routes; every path begins with {@link #path()}. */
  @Override
  void addTo(RoutesConfig routes);
}
