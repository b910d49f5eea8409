package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.pouring.PourPage.BoughtLot;
import pourwright.work.Act;
import pourwright.work.AdvancePieces;
import pourwright.work.FinishPour;
import pourwright.work.Outcome;
import pourwright.work.PourFill;
import pourwright.work.PourWatch;
import pourwright.work.Reading;
import pourwright.work.Subject;

/** The end of a pour: which vessels were filled, what they weigh now, and their rest. */
final class FinishDesk {
  private static final String BOUGHT = "bought-";
  private final Desk desk;
  private final PourDesk pours;

  FinishDesk(Desk desk, PourDesk pours) {
    this.desk = desk;
    this.pours = pours;
  }

  void addTo(RoutesConfig routes) {
    routes.post("/pouring/{id}/finish", this::finish);
  }

  private void finish(Context http) {
    Form form = Form.of(http);
    PourWatch watch = pours.watch(http);
    String candle = watch.candle().design().code();
    List<Long> pieces = new ArrayList<>();
    for (String piece : form.values("piece")) {
      if (piece.matches("\\d{1,18}")) {
        pieces.add(Long.parseLong(piece));
      }
    }
    List<FinishPour.Bought> bought = bought(form, watch, candle);
    List<Reading> masses = masses(form, pieces);
    Optional<Act> act = form.act(http, "");
    if (form.ok() && pieces.isEmpty() && bought.isEmpty()) {
      form.complain("pieces", "Please tick the vessels that were filled.");
    }
    if (!form.ok() || act.isEmpty()) {
      pours.again(http, form);
      return;
    }
    List<FinishPour.Filled> filled =
        pieces.isEmpty() ? List.of() : List.of(new FinishPour.Filled(candle, pieces));
    Outcome<List<Piece>> outcome =
        desk.studio()
            .finishPour
            .run(act.get(), new FinishPour.Request(PourDesk.id(http), filled, bought));
    if (outcome.isDone()) {
      weigh(act.get(), masses);
      rest(act.get(), watch, outcome.made());
    }
    pours.back(http, outcome, "Finished. The candles rest now; a timer says when.");
  }

  /** Bought vessels by lot; a lot that is not one of this vessel is not asked for. */
  private List<FinishPour.Bought> bought(Form form, PourWatch watch, String candle) {
    List<FinishPour.Bought> bought = new ArrayList<>();
    String vessel = watch.candle().design().vessel();
    for (BoughtLot lot : desk.studio().look(books -> PourReader.bought(books, watch))) {
      long id = Long.parseLong(lot.field().substring(BOUGHT.length()));
      form.readIfThere(lot.field(), "how many vessels", Integer::valueOf)
          .filter(n -> n != 0)
          .ifPresent(n -> bought.add(new FinishPour.Bought(candle, vessel, id, n)));
    }
    return bought;
  }

  /** Full masses, and the net ones where the vessel was weighed empty. */
  private List<Reading> masses(Form form, List<Long> pieces) {
    List<Reading> readings = new ArrayList<>();
    for (long id : pieces) {
      String field = "full-" + id;
      Optional<Double> full = form.readIfThere(field, "a mass", t -> desk.units().grams(t));
      if (full.isEmpty()) {
        continue;
      }
      Subject subject = Subject.of(Subject.Kind.PIECE, id);
      Optional<Double> empty =
          desk.studio()
              .look(books -> books.readings().newest(subject, PourFill.EMPTY_G))
              .map(Reading::value);
      if (empty.isPresent() && full.get() <= empty.get()) {
        form.complain(
            field, "Full it weighs no more than empty (" + empty.get() + " g). Look again.");
      }
      readings.add(Reading.fresh(subject, PourFill.FILLED_G, full.get(), desk.now()));
      empty.ifPresent(
          e -> readings.add(Reading.fresh(subject, PourFill.NET_G, full.get() - e, desk.now())));
    }
    return readings;
  }

  private void weigh(Act act, List<Reading> masses) {
    if (!masses.isEmpty()) {
      desk.studio().recordReading.run(Act.of(act.by(), act.requestKey() + "-masses"), masses);
    }
  }

  /** The candles are trimmed by now: they go to rest, and a timer says until when. */
  private void rest(Act act, PourWatch watch, List<Piece> made) {
    List<Long> poured =
        made.stream().filter(p -> p.state() instanceof PieceState.Poured).map(Piece::id).toList();
    Act aside = Act.of(act.by(), act.requestKey() + "-aside");
    desk.studio().advancePieces.run(aside, AdvancePieces.Request.of(poured, PieceStep.RESTING));
    Act resting = Act.of(act.by(), act.requestKey() + "-rest");
    desk.studio()
        .timers
        .start(
            resting,
            "Rested: " + watch.candle().design().name() + " " + watch.batch().mark().text(),
            Subject.of(Subject.Kind.BATCH, watch.batch().id()),
            Duration.ofHours(Math.round(24 * watch.candle().restDays())));
  }
}
