package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.card.ResolvedCandle;
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
    List<FinishPour.Filled> filled = new ArrayList<>();
    List<Long> pieces = new ArrayList<>();
    for (int i = 0; i < watch.parts().size(); i++) {
      List<Long> of = new ArrayList<>();
      for (String piece : form.values(PourReader.ticks(i))) {
        if (piece.matches("\\d{1,18}")) {
          of.add(Long.parseLong(piece));
        }
      }
      if (!of.isEmpty()) {
        filled.add(new FinishPour.Filled(watch.parts().get(i).candle().design().code(), of));
        pieces.addAll(of);
      }
    }
    List<FinishPour.Bought> bought = bought(form, watch);
    List<Reading> masses = masses(form, pieces);
    Optional<Act> act = form.act(http, "");
    if (form.ok() && pieces.isEmpty() && bought.isEmpty()) {
      form.complain("pieces", "Please tick the vessels that were filled.");
    }
    if (!form.ok() || act.isEmpty()) {
      pours.again(http, form);
      return;
    }
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

  /** Bought vessels by lot; a lot that is not one of these vessels is not asked for. */
  private List<FinishPour.Bought> bought(Form form, PourWatch watch) {
    List<FinishPour.Bought> bought = new ArrayList<>();
    for (int i = 0; i < watch.parts().size(); i++) {
      ResolvedCandle candle = watch.parts().get(i).candle();
      int part = i;
      for (BoughtLot lot : desk.studio().look(books -> PourReader.bought(books, candle, part))) {
        form.readIfThere(lot.field(), "how many vessels", Integer::valueOf)
            .filter(n -> n != 0)
            .ifPresent(
                n ->
                    bought.add(
                        new FinishPour.Bought(
                            candle.design().code(), candle.design().vessel(), lot.lot(), n)));
      }
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
    Map<Long, List<String>> hours = new TreeMap<>();
    for (PourWatch.Part part : watch.parts()) {
      long rest = Math.round(24 * part.candle().restDays());
      hours.computeIfAbsent(rest, h -> new ArrayList<>()).add(part.candle().design().name());
    }
    hours.forEach(
        (rest, names) ->
            desk.studio()
                .timers
                .start(
                    Act.of(act.by(), act.requestKey() + "-rest-" + rest),
                    "Rested: " + String.join(", ", names) + " " + watch.batch().mark().text(),
                    Subject.of(Subject.Kind.BATCH, watch.batch().id()),
                    Duration.ofHours(rest)));
  }
}
