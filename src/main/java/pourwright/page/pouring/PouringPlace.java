package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Place;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.work.Act;
import pourwright.work.BeginPour;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.PlasterGate;
import pourwright.work.TemplatePrinter;

/** Wicks, melt, scent, the cooling clock, pour, tops, trim, rest. */
public final class PouringPlace implements Place {
  private final Desk desk;

  /** The place, with the clock and zone of the studio. */
  public PouringPlace(Desk desk) {
    this.desk = desk;
  }

  @Override
  public String name() {
    return "Pouring bench";
  }

  @Override
  public String path() {
    return "/pouring";
  }

  @Override
  public String purpose() {
    return "Wicks, melt, scent, the cooling clock, pour, tops, trim, rest.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), http -> Show.page(http, "pouring/pouring.jte", page(first())));
    routes.post(path(), this::begin);
    new TemplateDesk(desk, TemplatePrinter.ofTheHouse()).addTo(routes);
    new WicksDesk(desk).addTo(routes);
    new BlendDesk(desk).addTo(routes);
    new GroupDesk(desk).addTo(routes);
    new TopsDesk(desk).addTo(routes);
    new UnwickedDesk(desk).addTo(routes);
    new PourDesk(desk).addTo(routes);
  }

  private static Form first() {
    return Form.startingFrom(Map.of("count", "1", "top_up", "0"));
  }

  private PouringPage page(Form form) {
    return desk.studio()
        .look(
            books ->
                new PouringPage(
                    purpose(), form, candles(books), running(books), PlasterGate.concerns(books)));
  }

  static Map<String, String> candles(Books books) {
    Map<String, String> candles = new LinkedHashMap<>();
    books.cards().all(Drawers.CANDLE).forEach(c -> candles.put(c.code(), c.body().name()));
    return candles;
  }

  private List<PouringPage.Row> running(Books books) {
    List<PouringPage.Row> rows = new ArrayList<>();
    Map<String, String> names = candles(books);
    for (Batch batch : books.batches().running()) {
      if (batch.plan().kind() == BatchKind.POUR) {
        rows.add(
            new PouringPage.Row(
                "/pouring/" + batch.id(),
                batch.mark().text()
                    + ": "
                    + batch.plan().makes().stream()
                        .map(m -> m.count() + " × " + names.getOrDefault(m.design(), m.design()))
                        .collect(Collectors.joining(", ")),
                "since " + desk.clockTime(batch.startedAt()) + ", " + batch.by()));
      }
    }
    return rows;
  }

  private void begin(Context http) {
    Form form = Form.of(http);
    List<String> codes = desk.studio().look(books -> List.copyOf(candles(books).keySet()));
    Optional<String> candle = form.choice("candle", "a candle", codes);
    Optional<Integer> count = form.count("count", "how many candles", 1, 500);
    Optional<Integer> topUp = form.count("top_up", "a share in per cent", 0, 50);
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty() || candle.isEmpty() || count.isEmpty() || topUp.isEmpty()) {
      Show.again(http, "pouring/pouring.jte", page(form));
      return;
    }
    Outcome<Batch> outcome =
        desk.studio()
            .beginPour
            .run(
                act.get(),
                new BeginPour.Request(
                    List.of(new BeginPour.Of(candle.get(), count.get())),
                    topUp.get() / 100.0,
                    null,
                    form.value("for_test").equals("yes")));
    if (outcome instanceof Outcome.Refused<Batch> refused) {
      Show.done(http, Said.refused(refused), path());
    } else {
      Show.done(
          http,
          Said.done("Pour " + outcome.made().mark().text() + " has begun."),
          path() + "/" + outcome.made().id());
    }
  }
}
