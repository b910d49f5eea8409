package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import pourwright.batch.Mark;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.stock.Shelf;
import pourwright.work.Act;
import pourwright.work.Hold;
import pourwright.work.Outcome;
import pourwright.work.Subject;

/** Stops a lot or a piece from being drawn, picked or promised, and lifts such a stop by name. */
public final class HoldCorner implements Corner {
  private final Desk desk;

  /** The holds of this studio. */
  public HoldCorner(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param form what was typed
   * @param standing holds that stand
   */
  public record HoldPage(Form form, List<Row> standing) {}

  /** One hold that stands. */
  public record Row(long id, String what, String reason, String since) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get("/hold", this::show);
    routes.post("/hold", this::place);
    routes.post("/hold/{id}/lift", this::lift);
  }

  private void show(Context http) {
    String what = http.queryParam("what");
    Form form = what == null ? Form.blank() : Form.startingFrom(java.util.Map.of("what", what));
    Show.page(http, "house/hold.jte", page(form));
  }

  private HoldPage page(Form form) {
    List<Hold> standing = desk.studio().look(books -> books.holds().standing());
    return new HoldPage(
        form,
        standing.stream()
            .map(
                h ->
                    new Row(
                        h.id(),
                        words(h.subject()),
                        h.reason(),
                        desk.dayAndTime(h.placedAt()) + ", " + h.placedBy()))
            .toList());
  }

  private String words(Subject subject) {
    return switch (subject.kind()) {
      case LOT ->
          desk.studio()
              .look(books -> books.lots().shelf(subject.number()))
              .map(shelf -> shelf.lot().material() + " lot " + shelf.lot().code())
              .orElse("lot " + subject.id());
      case PIECE ->
          desk.studio()
              .look(books -> books.pieces().piece(subject.number()))
              .map(piece -> "piece " + piece.mark().text())
              .orElse("piece " + subject.id());
      default -> subject.id();
    };
  }

  private void place(Context http) {
    Form form = Form.of(http);
    String what = form.text("what", "a mark, a lot code or a design");
    String reason = form.text("reason", "a reason");
    Optional<Act> act = form.act(http, "");
    Optional<Subject> subject = what.isEmpty() ? Optional.empty() : find(what);
    if (!what.isEmpty() && subject.isEmpty()) {
      form.complain("what", "'" + what + "' is no mark, no lot and no design in the books.");
    }
    if (!form.ok() || act.isEmpty() || subject.isEmpty()) {
      Show.again(http, "house/hold.jte", page(form));
      return;
    }
    Outcome<Hold> outcome = desk.studio().placeHold.run(act.get(), subject.get(), reason);
    Show.done(
        http,
        outcome instanceof Outcome.Refused<Hold> refused
            ? Said.refused(refused)
            : Said.done("On hold: " + words(subject.get()) + "."),
        "/hold");
  }

  /** A mark of a piece, a lot's code, or a design as {@code candle/bollard-rain}. */
  private Optional<Subject> find(String what) {
    if (what.matches("[a-z][a-z0-9-]*/.+")) {
      return Optional.of(new Subject(Subject.Kind.CARD, what));
    }
    String mark = what.replaceAll("[\\s\\-_.]", "").toUpperCase(java.util.Locale.ROOT);
    if (Mark.isValid(mark)) {
      Optional<Subject> marked = desk.studio().find(Mark.read(what));
      if (marked.isPresent()) {
        return marked;
      }
    }
    List<Shelf> shelves = desk.studio().look(books -> books.lots().allShelves());
    return shelves.stream()
        .filter(s -> s.lot().code().equalsIgnoreCase(what))
        .findFirst()
        .map(s -> Subject.of(Subject.Kind.LOT, s.lot().id()));
  }

  private void lift(Context http) {
    Form form = Form.of(http);
    String name = form.value("name").strip();
    String reason = form.value("why").strip();
    String by = Show.initials(http).isEmpty() ? "?" : Show.initials(http);
    Outcome<Hold> outcome =
        desk.studio()
            .liftHold
            .run(Act.of(by, form.requestKey()), Numbers.of(http.pathParam("id")), name, reason);
    Show.done(
        http,
        outcome instanceof Outcome.Refused<Hold> refused
            ? Said.refused(refused)
            : Said.done("Lifted, under the name of " + name + "."),
        "/hold");
  }
}
