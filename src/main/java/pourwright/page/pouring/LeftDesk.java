package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CandleDesign;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.pouring.PourPage.Left;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.LeftWax;
import pourwright.work.PourWalk;
import pourwright.work.PourWatch;

/** Where the wax goes that is left in a pitcher. */
final class LeftDesk {
  private static final String WASTE = "waste";
  private static final String UNWICKED = "unwicked";
  private static final String PROVED = "proved:";

  private final Desk desk;
  private final PourDesk pours;

  LeftDesk(Desk desk, PourDesk pours) {
    this.desk = desk;
    this.pours = pours;
  }

  void addTo(RoutesConfig routes) {
    routes.post("/pouring/{id}/left", this::left);
  }

  /** What may be done with it, once something was poured. */
  static Left of(Books books, PourWatch watch) {
    boolean poured = watch.done().stream().anyMatch(s -> s.key().equals(PourWalk.POUR));
    if (!poured) {
      return new Left(false, List.of(), Map.of());
    }
    List<String> lines = new ArrayList<>();
    List<String> closed = LeftWax.closed(watch);
    Map<String, String> whither = new LinkedHashMap<>();
    whither.put(UNWICKED, "into unwicked pieces");
    if (closed.isEmpty()) {
      for (CandleDesign design : LeftWax.proved(books, watch)) {
        whither.put(PROVED + design.code(), "into " + design.name() + " (proved)");
      }
    } else {
      closed.forEach(why -> lines.add("No candle may be poured from it: " + why + "."));
    }
    whither.put(WASTE, "to waste");
    return new Left(true, lines, whither);
  }

  private void left(Context http) {
    Form form = Form.of(http);
    Optional<Double> grams = form.read("left_g", "a mass", t -> desk.units().grams(t));
    String whither = form.value("whither");
    Optional<Act> act = form.act(http, "");
    if (whither.isEmpty()) {
      form.complain("whither", "Please choose where it goes.");
    }
    if (!form.ok() || act.isEmpty() || grams.isEmpty()) {
      pours.again(http, form);
      return;
    }
    boolean proved = whither.startsWith(PROVED);
    String quantity =
        proved ? LeftWax.PROVED_G : whither.equals(UNWICKED) ? LeftWax.UNWICKED_G : LeftWax.WASTE_G;
    LeftWax.Request request =
        new LeftWax.Request(
            PourDesk.id(http),
            grams.get(),
            quantity,
            proved ? whither.substring(PROVED.length()) : null);
    pours.back(
        http,
        desk.studio().leftWax.run(act.get(), request),
        String.format(Locale.ROOT, "%.1f g written down.", grams.get()));
  }
}
