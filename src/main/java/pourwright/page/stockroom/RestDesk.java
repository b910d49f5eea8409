package pourwright.page.stockroom;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.Carried;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.stock.Amount;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.CarryRest;
import pourwright.work.Outcome;

/** What is left of a pour goes into one that runs; the trace and the cost go along. */
public final class RestDesk {
  private static final String PATH = "/stockroom/rest";
  private static final int LATEST = 30;
  private final Desk desk;

  RestDesk(Desk desk) {
    this.desk = desk;
  }

  /**
   * The page.
   *
   * @param form what was typed
   * @param finished pours that something may be left of, by number
   * @param running pours that it may go into, by number
   * @param carried what went over lately
   */
  public record RestPage(
      Form form, Map<String, String> finished, Map<String, String> running, List<String> carried) {}

  void addTo(RoutesConfig routes) {
    routes.get(PATH, http -> Show.page(http, "stockroom/rest.jte", page(Form.blank())));
    routes.post(PATH, this::carry);
  }

  private RestPage page(Form form) {
    return desk.studio()
        .look(
            books -> {
              Map<String, String> finished = new LinkedHashMap<>();
              Map<String, String> running = new LinkedHashMap<>();
              for (Batch pour : books.batches().list(BatchKind.POUR, null, LATEST).items()) {
                (pour.isRunning() ? running : finished).put("" + pour.id(), words(pour));
              }
              return new RestPage(form, finished, running, carried(books));
            });
  }

  private String words(Batch pour) {
    String what = pour.plan().makes().stream().map(BatchPlan.Makes::design).findFirst().orElse("");
    return pour.mark().text() + ", " + what + ", " + desk.dayAndTime(pour.startedAt());
  }

  private List<String> carried(Books books) {
    List<Carried> all = books.batches().carried();
    List<String> lines = new ArrayList<>();
    for (int i = all.size() - 1; i >= Math.max(0, all.size() - LATEST); i--) {
      Carried one = all.get(i);
      lines.add(
          StockWords.amount(one.amount(), desk.locale())
              + " of "
              + mark(books, one.from())
              + " went into "
              + mark(books, one.into()));
    }
    return lines;
  }

  private static String mark(Books books, long batch) {
    return books.batches().batch(batch).map(b -> b.mark().text()).orElse("batch " + batch);
  }

  private void carry(Context http) {
    Form form = Form.of(http);
    RestPage page = page(form);
    Optional<String> from =
        form.choice("from", "the pour it is left of", List.copyOf(page.finished().keySet()));
    Optional<String> into =
        form.choice("into", "the pour it goes into", List.copyOf(page.running().keySet()));
    Optional<Double> grams = form.read("amount", "a mass", t -> desk.units().grams(t));
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || from.isEmpty() || into.isEmpty() || grams.isEmpty() || act.isEmpty()) {
      Show.again(http, "stockroom/rest.jte", page(form));
      return;
    }
    Outcome<Carried> outcome =
        desk.studio()
            .carryRest
            .run(
                act.get(),
                new CarryRest.Request(
                    Long.parseLong(from.get()),
                    Long.parseLong(into.get()),
                    Amount.ofGrams(grams.get())));
    if (outcome instanceof Outcome.Refused<Carried> refused) {
      form.complain("amount", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, "stockroom/rest.jte", page(form));
      return;
    }
    Show.done(http, Said.done("It is in. The trace goes through both pours now."), PATH);
  }
}
