package pourwright.page.pouring;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CandleDesign;
import pourwright.card.ResolvedCandle;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.board.CandleSection;
import pourwright.page.board.Drawing;
import pourwright.pour.Fill;
import pourwright.pour.Rest;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.wick.HeatCheck;
import pourwright.wick.WickLayout;
import pourwright.wick.WickMemory.Proposal;
import pourwright.wick.WickOffer;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.PourFill;
import pourwright.work.SaveCard;
import pourwright.work.WickChoice;
import pourwright.work.WickPlaces;

/** Which wicks for a candle, and how many. */
final class WicksDesk {
  private final Desk desk;

  WicksDesk(Desk desk) {
    this.desk = desk;
  }

  void addTo(RoutesConfig routes) {
    routes.get("/pouring/wicks", this::show);
    routes.post("/pouring/wicks/keep", this::keep);
  }

  private void show(Context http) {
    Form form = Form.asked(http);
    Show.page(http, "pouring/wicks.jte", desk.studio().look(books -> page(books, form)));
  }

  private WicksPage page(Books books, Form form) {
    Map<String, String> candles = PouringPlace.candles(books);
    String code = form.value("candle");
    Optional<CardVersion<CandleDesign>> card = books.cards().current(Drawers.CANDLE, code);
    Optional<CandleDesign> design = card.map(CardVersion::body);
    WicksPage none = new WicksPage(form, candles, "", "", "", "", "", List.of(), List.of());
    if (design.isEmpty()) {
      if (!code.isEmpty()) {
        form.complain("candle", "There is no candle '" + code + "'.");
      }
      return none;
    }
    try {
      ResolvedCandle candle = design.get().resolve(Drawers.book(books));
      WickChoice choice = WickChoice.of(books, candle);
      Fill fill = PourFill.of(books, candle, 0).fill();
      return new WicksPage(
          form,
          candles,
          design.get().name(),
          "/pouring/template/" + code,
          String.valueOf(card.get().version()),
          standing(candle),
          beside(choice),
          choice.wicks().stream().map(WicksDesk::wick).toList(),
          choice.counts().stream().map(c -> count(choice, fill, c)).toList());
    } catch (OutOfRange e) {
      form.complain("candle", e.sentence() + ": " + e.hint() + ".");
      return none;
    }
  }

  /** Where the card has the wicks now, and how far a pool must reach then. */
  private static String standing(ResolvedCandle candle) {
    try {
      WickPlaces places = WickPlaces.of(candle);
      String now =
          String.format(
              Locale.ROOT,
              places.written()
                  ? "The card has places for %d: each pool must reach %.1f mm."
                  : "The card has no places for %d; as laid out each pool must reach %.1f mm.",
              candle.design().wicks().count(),
              places.layout().coveringRadiusMm());
      String near = places.written() && !places.sentence().isEmpty() ? " " + places.sentence() : "";
      double depth = candle.vessel().cavity().heightMm();
      return now
          + near
          + String.format(
              Locale.ROOT,
              " Cut each to about %.0f mm: the cavity's depth and %.0f mm for the bar (house).",
              Rest.cutMm(depth, Rest.FOR_THE_BAR_MM),
              Rest.FOR_THE_BAR_MM);
    } catch (OutOfRange e) {
      return e.sentence() + ".";
    }
  }

  /** Keeps a layout on the candle's card, as its next version. */
  private void keep(Context http) {
    Form form = Form.of(http);
    String code = form.value("candle");
    String back = "/pouring/wicks?candle=" + URLEncoder.encode(code, StandardCharsets.UTF_8);
    Optional<CandleDesign> design =
        desk.studio()
            .look(books -> books.cards().current(Drawers.CANDLE, code))
            .map(CardVersion::body);
    Optional<Integer> count = form.count("count", "how many wicks", 1, WickLayout.MOST);
    Optional<Integer> version = form.count("version", "the card's version", 1, 1_000_000);
    Optional<Act> act = form.act(http, "");
    if (design.isEmpty() || count.isEmpty() || version.isEmpty() || act.isEmpty()) {
      Show.done(http, Said.refused("Nothing was kept: say who works here first.", ""), back);
      return;
    }
    try {
      ResolvedCandle candle = desk.studio().look(b -> design.get().resolve(Drawers.book(b)));
      boolean free = form.value("free").equals("yes");
      CandleDesign changed =
          design.get().withPlaces(WickPlaces.laidOut(candle, count.get(), free).forTheCard());
      SaveCard.Saving<CandleDesign> saving =
          desk.studio()
              .saveCard
              .run(act.get(), SaveCard.Request.of(Drawers.CANDLE, code, version.get(), changed));
      Show.done(http, said(saving), back);
    } catch (OutOfRange e) {
      Show.done(http, Said.refused(e.sentence() + ".", e.hint() + "."), back);
    }
  }

  private static Said said(SaveCard.Saving<CandleDesign> saving) {
    if (saving instanceof SaveCard.Saving.Saved<CandleDesign> saved) {
      return Said.note(
          "Kept on the card, version " + saved.version().version() + ".",
          "Another count or place is another candle to test: what was proved before does not cover"
              + " it.");
    }
    return saving instanceof SaveCard.Saving.Refused<CandleDesign> refused
        ? Said.refused(refused.sentence() + ".", refused.hint() + ".")
        : Said.refused(
            "The card was changed meanwhile; nothing was kept.", "Look at the page again.");
  }

  private static String beside(WickChoice choice) {
    WickChoice.Proved proved = choice.proved();
    return proved == null
        ? "No candle is proved for sale yet: heat stands alone."
        : String.format(
            Locale.ROOT,
            "Heat is held against %s, proved for sale: %.3f g/h per cm².",
            proved.candle(),
            proved.gPerHPerCm2());
  }

  private static WicksPage.Wick wick(WickChoice.Known known) {
    var written = known.written();
    return new WicksPage.Wick(
        known.wick().name(),
        range(known.rate(), "%.1f g/h (%.1f to %.1f)"),
        range(known.reach(), "%.0f mm (%.0f to %.0f)"),
        known.rate().standsOn(),
        written == null
            ? "no figure on its card"
            : String.format(
                Locale.ROOT, "%.1f g/h, %s", written.value(), written.origin().words()));
  }

  private static String range(Proposal proposal, String format) {
    return String.format(Locale.ROOT, format, proposal.value(), proposal.low(), proposal.high());
  }

  private WicksPage.Count count(WickChoice choice, Fill fill, WickChoice.Count count) {
    String title = Counted.of(count.count(), "wick", "wicks");
    WickOffer offer = count.offer();
    HeatCheck heat = count.heat();
    if (offer == null || heat == null) {
      return new WicksPage.Count(
          title, count.count(), List.of(), count.refusal() + ".", null, null);
    }
    List<String> lines = new ArrayList<>();
    double reach = offer.layout().coveringRadiusMm();
    lines.add(String.format(Locale.ROOT, "Each pool must reach %.1f mm.", reach));
    if (!choice.wicks().isEmpty()) {
      lines.add(reached(choice.wicks().get(0), reach));
    }
    lines.add(heat(heat));
    if (count.count() == 2 && choice.surface() instanceof Circle) {
      lines.add(
          "Two in a round vessel is a choice makers make; it covers no better than one in the middle.");
    }
    if (!offer.sentence().isEmpty()) {
      lines.add(offer.sentence());
    }
    String flag =
        heat.isFlagged()
            ? "Hotter than 1.5 times the proved vessel (house): a smaller wick, or fewer."
            : "";
    WickLayout free = offer.free();
    return new WicksPage.Count(
        title,
        count.count(),
        lines,
        flag,
        drawing(choice, fill, offer.layout()),
        free == null ? null : drawing(choice, fill, free));
  }

  private static String reached(WickChoice.Known own, double reach) {
    Proposal pool = own.reach();
    String word =
        pool.low() >= reach
            ? "likely to"
            : pool.high() < reach ? "not likely to" : "open if it will";
    return String.format(
        Locale.ROOT,
        "%s reaches %s: %s. Only a burn test tells.",
        own.wick().name(),
        range(pool, "%.0f mm (%.0f to %.0f)"),
        word);
  }

  private static String heat(HeatCheck heat) {
    return Double.isNaN(heat.timesProved())
        ? String.format(Locale.ROOT, "Heat %.3f g/h per cm².", heat.gramsPerHourPerCm2())
        : String.format(
            Locale.ROOT,
            "Heat %.3f g/h per cm², %.2f times the proved vessel's.",
            heat.gramsPerHourPerCm2(),
            heat.timesProved());
  }

  private Drawing drawing(WickChoice choice, Fill fill, WickLayout layout) {
    return new CandleSection(desk).plan(choice.candle(), fill, layout.inOwnAxes());
  }
}
