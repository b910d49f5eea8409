package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import pourwright.batch.Mark;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.stock.Trace;
import pourwright.work.Subject;

/** Finds what carries a mark, and shows where a thing came from and where it went. */
public final class FindCorner implements Corner {
  private static final String NOT_HERE = "There is no such thing in the books";
  private final Desk desk;

  /** Finding in this studio. */
  public FindCorner(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page for a mark that was not found.
   *
   * @param form what was typed
   */
  public record FindPage(Form form) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/find", this::find);
    routes.get("/m/{mark}", http -> goTo(http, http.pathParam("mark")));
    routes.get("/piece/{id}", http -> show(http, Trace.Kind.PIECE));
    routes.get("/batch/{id}", http -> show(http, Trace.Kind.BATCH));
    routes.get("/lot/{id}", http -> show(http, Trace.Kind.LOT));
  }

  private void find(Context http) {
    String typed = http.queryParam("mark");
    if (typed == null || typed.isBlank()) {
      Show.page(http, "house/find.jte", new FindPage(Form.blank()));
    } else {
      goTo(http, typed);
    }
  }

  private void goTo(Context http, String typed) {
    Form form = Form.startingFrom(java.util.Map.of("mark", typed.strip()));
    Optional<Mark> mark = form.read("mark", "a mark", Mark::read);
    Optional<Subject> found = mark.flatMap(desk.studio()::find);
    if (found.isPresent()) {
      http.redirect(path(found.get()));
      return;
    }
    form.complain("mark", "Nothing in the books carries the mark '" + typed.strip() + "'.");
    Show.again(http, "house/find.jte", new FindPage(form));
  }

  private static String path(Subject subject) {
    return switch (subject.kind()) {
      case PIECE -> "/piece/" + subject.id();
      case BATCH -> "/batch/" + subject.id();
      case LOT -> "/lot/" + subject.id();
      default -> "/";
    };
  }

  private void show(Context http, Trace.Kind kind) {
    long id = Numbers.of(http.pathParam("id"));
    Trace.Node node = new Trace.Node(kind, id);
    Optional<TracePage> page = desk.studio().look(books -> new TraceReader(books, desk).page(node));
    if (page.isEmpty()) {
      throw new TurnedAway(404, NOT_HERE, "Look for its mark, or in the list it belongs to.");
    }
    Show.page(http, "house/trace.jte", page.get());
  }
}
