package pourwright.page.house;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pourwright.batch.Mark;
import pourwright.page.Corner;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.Counted;
import pourwright.stock.Shelf;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.Hold;
import pourwright.work.HoldNotice;
import pourwright.work.Outcome;
import pourwright.work.Recall;
import pourwright.work.Subject;

/** Stops a lot or a piece from being drawn, picked or promised, and lifts such a stop by name. */
public final class HoldCorner implements Corner {
  private static final int ROWS = 200;
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
    routes.get("/hold/{id}", this::notice);
    routes.post("/hold/{id}/lift", this::lift);
  }

  /**
   * One hold and what it sets going: finished strings.
   *
   * @param stands whether it stands
   * @param lifted by whom and why it was lifted, or an empty string
   * @param clock the days by which something must be done
   * @param rows pieces that left the studio and who has them
   * @param more how many rows are not shown, and where they are
   */
  public record NoticePage(
      long id,
      String what,
      String reason,
      String since,
      boolean stands,
      String lifted,
      List<String> clock,
      String lead,
      List<Has> rows,
      String sheet,
      String message) {}

  /** Who has a piece. */
  public record Has(String mark, String path, String order, String buyer) {}

  private void notice(Context http) {
    long id = Numbers.of(http.pathParam("id"));
    NoticePage page =
        desk.studio()
            .look(books -> books.holds().hold(id).map(hold -> notice(books, hold)))
            .orElseThrow(
                () ->
                    new TurnedAway(404, "There is no such hold", "Look at the holds that stand."));
    Show.page(http, "house/held.jte", page);
  }

  private NoticePage notice(Books books, Hold hold) {
    String what = words(hold.subject());
    LocalDate learned = LocalDate.ofInstant(hold.placedAt(), desk.zone());
    HoldNotice notice = HoldNotice.of(books, hold, what, learned);
    List<Has> rows =
        notice.recall().rows().stream()
            .filter(Recall.Row::out)
            .limit(ROWS)
            .map(
                r ->
                    new Has(
                        r.mark(),
                        "/piece/" + r.piece(),
                        (r.order() + " " + r.channel()).strip(),
                        (r.customer() + " " + r.customerRef()).strip()))
            .toList();
    return new NoticePage(
        hold.id(),
        what,
        hold.reason(),
        desk.dayAndTime(hold.placedAt()) + ", " + hold.placedBy(),
        hold.stands(),
        hold.stands() ? "" : "Lifted by " + hold.liftedBy() + ": " + hold.liftReason(),
        List.of(
            "United States (16 CFR 1115.14): word reaches who answers for the studio by "
                + desk.day(notice.reachBy())
                + " (5 working days); it is looked into by "
                + desk.day(notice.investigateBy())
                + " (10 working days); once it is clear that it must be told, within 24 hours.",
            "European Union (Regulation 2023/988): an accident is told to the authority without"
                + " undue delay; complaints stay in the register.",
            "Days are counted from the day of the hold, federal holidays left out. Other rules may"
                + " apply where you sell: ask the authority."),
        Counted.of(notice.recall().rows().size(), "piece is of it, ", "pieces are of it, ")
            + notice.recall().out()
            + " of them left the studio.",
        rows,
        hold.subject().kind() == Subject.Kind.LOT
            ? "/stockroom/lot/" + hold.subject().id() + "/recall"
            : "",
        notice.message());
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
    Optional<Subject> button = named(form.value("subject"));
    String what = button.isPresent() ? "" : form.text("what", "a mark, a lot code or a design");
    String reason = form.text("reason", "a reason");
    Optional<Act> act = form.act(http, "");
    Optional<Subject> subject = what.isEmpty() ? button : find(what);
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
            : Said.done(
                "On hold: "
                    + words(subject.get())
                    + ". From now on it is not drawn, picked,"
                    + " labelled or promised."),
        outcome.isDone() ? "/hold/" + outcome.made().id() : "/hold");
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
    List<Shelf> shelves = desk.studio().look(books -> books.lots().coded(what));
    return shelves.stream().findFirst().map(s -> Subject.of(Subject.Kind.LOT, s.lot().id()));
  }

  /** What a button names, as {@code LOT/12}. */
  private static Optional<Subject> named(String text) {
    if (text.matches("(LOT|PIECE)/[0-9]{1,18}")) {
      Subject.Kind kind = Subject.Kind.valueOf(text.substring(0, text.indexOf('/')));
      return Optional.of(new Subject(kind, text.substring(text.indexOf('/') + 1)));
    }
    return text.matches("CARD/[a-z][a-z0-9-]*/.+")
        ? Optional.of(new Subject(Subject.Kind.CARD, text.substring(5)))
        : Optional.empty();
  }

  private void lift(Context http) {
    Form form = Form.of(http);
    String name = form.value("name").strip();
    String reason = form.value("why").strip();
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      Show.who(http, form);
      return;
    }
    Outcome<Hold> outcome =
        desk.studio().liftHold.run(act.get(), Numbers.of(http.pathParam("id")), name, reason);
    Show.done(
        http,
        outcome instanceof Outcome.Refused<Hold> refused
            ? Said.refused(refused)
            : Said.done("Lifted, under the name of " + name + "."),
        "/hold");
  }
}
