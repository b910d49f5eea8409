package pourwright.page.stockroom;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.quantity.OutOfRange;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Shelf;
import pourwright.work.Act;
import pourwright.work.CountLot;
import pourwright.work.EnoughFor;
import pourwright.work.Outcome;
import pourwright.work.Subject;
import pourwright.work.WriteOff;

/** One lot at the shelf: count it, open it, write it off, hold it. */
final class LotDesk {
  private static final Map<String, Cause> CAUSES =
      Map.of("waste", Cause.WASTE, "test", Cause.TEST, "gift", Cause.GIFT);

  private final Desk desk;
  private final ShelfView view;

  LotDesk(Desk desk, ShelfView view) {
    this.desk = desk;
    this.view = view;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/stockroom/lot/{id}", this::show);
    routes.post("/stockroom/lot/{id}/count", this::count);
    routes.post("/stockroom/lot/{id}/open", this::open);
    routes.post("/stockroom/lot/{id}/off", this::writeOff);
    routes.post("/stockroom/lot/{id}/hold", this::hold);
  }

  private Shelf shelf(Context http) {
    String id = http.pathParam("id");
    Optional<Shelf> found =
        id.matches("[0-9]{1,18}")
            ? desk.studio().look(books -> books.lots().shelf(Long.parseLong(id)))
            : Optional.empty();
    return found.orElseThrow(
        () -> new TurnedAway(404, "There is no such lot in the books", "Look it up in its list."));
  }

  private void show(Context http) {
    Shelf shelf = shelf(http);
    String after = Optional.ofNullable(http.queryParam("after")).orElse("");
    Show.page(http, "stockroom/lot.jte", view.lotPage(shelf, withTare(shelf), after));
  }

  /** The tub's own weight is kept and stands there, so that one number is enough next time. */
  private Form withTare(Shelf shelf) {
    String tare =
        desk.studio()
            .look(books -> books.settings().value("tare.lot-" + shelf.lot().id()).orElse(""));
    return Form.startingFrom(Map.of("tare", tare));
  }

  private void again(Context http, Shelf shelf, Form form) {
    Show.again(http, "stockroom/lot.jte", view.lotPage(shelf, form, ""));
  }

  private void count(Context http) {
    Shelf shelf = shelf(http);
    Form form = Form.of(http);
    Optional<Amount> gross = form.read("found", "what the scale shows", t -> read(t, shelf));
    Optional<Amount> tare = form.readIfThere("tare", "the empty tub's weight", t -> read(t, shelf));
    Optional<Act> act = form.act(http, form.optionalText("why"));
    if (gross.isPresent() && tare.isPresent() && gross.get().compareTo(tare.get()) < 0) {
      form.complain("tare", "The empty tub cannot weigh more than the full one.");
    }
    if (!form.ok() || gross.isEmpty() || act.isEmpty()) {
      again(http, shelf, form);
      return;
    }
    Amount found = tare.map(t -> gross.get().minus(t)).orElse(gross.get());
    Outcome<Shelf> outcome =
        desk.studio()
            .countLot
            .run(act.get(), new CountLot.Request(shelf.lot().id(), found, seen(form, shelf)));
    if (outcome instanceof Outcome.Refused<Shelf> refused) {
      form.complain("found", refused.sentence() + ": " + refused.hint() + ".");
      again(http, shelf(http), form);
      return;
    }
    keepTare(act.get(), shelf, form.optionalText("tare"));
    Show.done(http, Said.note(counted(outcome.made(), shelf), enough(outcome.made())), path(shelf));
  }

  private String counted(Shelf now, Shelf before) {
    Amount difference = now.onHand().minus(before.onHand());
    String amount = StockWords.amount(now.onHand(), desk.locale());
    if (difference.isNone()) {
      return "Counted: " + amount + ", as the ledger said.";
    }
    Amount size = difference.isNegative() ? difference.negated() : difference;
    return "Counted: "
        + amount
        + ", "
        + StockWords.amount(size, desk.locale())
        + (difference.isNegative() ? " less" : " more")
        + " than the ledger said.";
  }

  private String enough(Shelf now) {
    List<EnoughFor> candles =
        desk.studio()
            .look(books -> EnoughFor.of(books, now.lot().material(), now.onHand(), desk.today()));
    if (candles.isEmpty()) {
      return "";
    }
    return candles.stream()
        .map(e -> "%d of %s".formatted(e.pieces(), e.candle()))
        .collect(Collectors.joining("; or ", "This lot is enough for about ", "."));
  }

  private void keepTare(Act act, Shelf shelf, String tare) {
    if (!tare.isEmpty()) {
      String unit = StockWords.unit(shelf.onHand(), desk);
      desk.studio()
          .saveSetting
          .run(
              new Act(act.by(), act.requestKey() + "-tare", ""),
              "tare.lot-" + shelf.lot().id(),
              // with its unit, which the settings may change before it is read again
              tare.matches("[\\d.,]+") ? tare + " " + unit : tare);
    }
  }

  private static Amount seen(Form form, Shelf shelf) {
    String seen = form.value("seen");
    return seen.matches("[0-9]{1,18}")
        ? new Amount(shelf.onHand().kind(), Long.parseLong(seen))
        : shelf.onHand();
  }

  private Amount read(String text, Shelf shelf) {
    return StockWords.read(text, shelf.onHand().kind(), desk);
  }

  private void open(Context http) {
    Shelf shelf = shelf(http);
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      again(http, shelf, form);
      return;
    }
    Outcome<Shelf> outcome = desk.studio().openLot.run(act.get(), shelf.lot().id(), null);
    Show.done(http, said(outcome, "Opened today."), path(shelf));
  }

  private void writeOff(Context http) {
    Shelf shelf = shelf(http);
    Form form = Form.of(http);
    Cause cause = CAUSES.getOrDefault(form.value("cause"), Cause.WASTE);
    Optional<Amount> amount = form.read("off", "how much", t -> read(t, shelf));
    String why = form.text("off-why", "a few words on why");
    Optional<Act> act = form.act(http, why);
    if (!form.ok() || amount.isEmpty() || act.isEmpty()) {
      again(http, shelf, form);
      return;
    }
    Outcome<Shelf> outcome;
    try {
      outcome =
          desk.studio()
              .writeOff
              .run(act.get(), new WriteOff.Request(shelf.lot().id(), amount.get(), cause));
    } catch (OutOfRange e) {
      form.complain("off", e.sentence() + ": " + e.hint() + ".");
      again(http, shelf, form);
      return;
    }
    String done = StockWords.amount(amount.get(), desk.locale()) + " written off.";
    Show.done(http, said(outcome, done), path(shelf));
  }

  private void hold(Context http) {
    Shelf shelf = shelf(http);
    Form form = Form.of(http);
    Optional<Act> act = form.act(http, "");
    if (act.isEmpty()) {
      again(http, shelf, form);
      return;
    }
    String reason = form.optionalText("reason");
    Outcome<pourwright.work.Hold> outcome =
        desk.studio()
            .placeHold
            .run(
                act.get(),
                Subject.of(Subject.Kind.LOT, shelf.lot().id()),
                reason.isEmpty() ? "held at the shelf" : reason);
    Show.done(
        http,
        said(outcome, "On hold. It is not drawn, picked, labelled or promised until it is lifted."),
        outcome.isDone() ? "/hold/" + outcome.made().id() : path(shelf));
  }

  private static Said said(Outcome<?> outcome, String done) {
    return outcome instanceof Outcome.Refused<?> refused ? Said.refused(refused) : Said.done(done);
  }

  private static String path(Shelf shelf) {
    return "/stockroom/lot/" + shelf.lot().id();
  }
}
