package pourwright.page.press;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.card.CandleDesign;
import pourwright.card.PourCard;
import pourwright.label.Maker;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Kept;
import pourwright.page.Place;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.quantity.OutOfRange;
import pourwright.work.Act;
import pourwright.work.Books;
import pourwright.work.CandleLabel;
import pourwright.work.CardVersion;
import pourwright.work.Drawers;
import pourwright.work.FolderPrinter;
import pourwright.work.LabelPrinter;
import pourwright.work.LabelReader;
import pourwright.work.PageOf;

/** The label press: sheets, classification with its reasons, labels true to size, net weights. */
public final class PressPlace implements Place {
  private static final int ROWS = 30;
  private static final List<String> MAKER =
      List.of("maker.name", "maker.address", "maker.phone", "maker.web");

  private final Desk desk;

  /** What the cards, proofs, holds and the pieces that were burnt say of the candles. */
  private final Kept<List<PressPages.Candle>> rows = new Kept<>();

  /** The place, with the books and the clock of the studio. */
  public PressPlace(Desk desk) {
    this.desk = desk;
  }

  @Override
  public String name() {
    return "Label press";
  }

  @Override
  public String path() {
    return "/press";
  }

  @Override
  public String purpose() {
    return "From the supplier's sheet to the printed label: what the mixture is, why, and what the"
        + " label has to say.";
  }

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), http -> show(http, null));
    routes.post("/press/maker", this::saveMaker);
    new SheetDesk(desk).addTo(routes);
    new CandleDesk(desk, LabelPrinter.ofTheHouse()).addTo(routes);
    new FolderDesk(desk, FolderPrinter.ofTheHouse()).addTo(routes);
    new NetDesk(desk).addTo(routes);
    new ReprintDesk(desk).addTo(routes);
    new ScentDesk(desk).addTo(routes);
    new UfiDesk().addTo(routes);
    new LimitsDesk(desk).addTo(routes);
  }

  private void show(Context http, @Nullable Form typed) {
    String after = Optional.ofNullable(http.queryParam("after")).orElse("");
    PressPages.Overview page =
        desk.studio().look(books -> overview(books, after, typed == null ? maker(books) : typed));
    if (typed == null) {
      Show.page(http, "press/press.jte", page);
    } else {
      Show.again(http, "press/press.jte", page);
    }
  }

  private PressPages.Overview overview(Books books, String after, Form maker) {
    PageOf<CardVersion<CandleDesign>> designs =
        books.cards().list(Drawers.CANDLE, after.isEmpty() ? null : after, ROWS);
    List<PressPages.Candle> candles =
        rows.get(
            List.of(
                after,
                books.cards().edition(),
                books.burns().edition(),
                books.pieces().edition(),
                books.holds().standing()),
            () -> candles(books, designs.items()));
    String next = designs.next();
    return new PressPages.Overview(
        purpose(), candles, next == null ? "" : next, sheets(books), maker);
  }

  private static List<PressPages.Candle> candles(
      Books books, List<CardVersion<CandleDesign>> designs) {
    LabelReader reader = new LabelReader(books);
    return designs.stream().map(design -> candle(reader, design.body())).toList();
  }

  private static PressPages.Candle candle(LabelReader reader, CandleDesign design) {
    Optional<CandleLabel> found;
    try {
      found = reader.inShort(design.code());
    } catch (OutOfRange e) {
      return new PressPages.Candle(
          design.code(), design.name(), e.sentence(), "look at its cards", "badge-warn");
    }
    if (found.isEmpty()) {
      return new PressPages.Candle(design.code(), design.name(), "", "", "");
    }
    CandleLabel label = found.get();
    if (!label.gate().missing().isEmpty()) {
      return new PressPages.Candle(
          design.code(),
          design.name(),
          "missing: " + String.join(", ", label.gate().missing()),
          "not known",
          "badge-warn");
    }
    boolean stop = !label.classification().stops().isEmpty();
    boolean open = label.gate().isOpen();
    return new PressPages.Candle(
        design.code(),
        design.name(),
        CandleWords.words(label.classification()),
        stop ? "stop" : open ? "may be labelled for sale" : "test labels only",
        stop ? "badge-stop" : open ? "badge-good" : "badge-warn");
  }

  /** Materials that are poured, by the pour cards; with what is known of their sheets. */
  private static List<PressPages.Sheet> sheets(Books books) {
    Set<String> codes = new LinkedHashSet<>();
    for (CardVersion<PourCard> card : books.cards().all(Drawers.POUR)) {
      card.body().fragrances().forEach(p -> codes.add(p.material()));
      card.body().waxes().forEach(p -> codes.add(p.material()));
      card.body().extras().forEach(p -> codes.add(p.material()));
    }
    MaterialBook materials = Drawers.materials(books);
    List<PressPages.Sheet> sheets = new ArrayList<>();
    for (String code : codes) {
      String name = materials.find(code).map(Material::name).orElse(code);
      String words =
          books
              .cards()
              .current(Drawers.SHEET, code)
              .map(v -> "sheet " + v.body().revision())
              .orElse("sheet not written down yet");
      sheets.add(new PressPages.Sheet(code, name, words));
    }
    return sheets;
  }

  private static Form maker(Books books) {
    Map<String, String> values = new LinkedHashMap<>();
    Map<String, String> settings = books.settings().all();
    MAKER.forEach(key -> values.put(key, settings.getOrDefault(key, "")));
    return Form.startingFrom(values);
  }

  /** Who puts the candles on the market, as far as it is written down. */
  static Maker makerOf(Books books) {
    Map<String, String> settings = books.settings().all();
    return new Maker(
        settings.getOrDefault("maker.name", ""),
        settings.getOrDefault("maker.address", ""),
        settings.getOrDefault("maker.phone", ""),
        settings.getOrDefault("maker.web", ""));
  }

  private void saveMaker(Context http) {
    Form form = Form.of(http);
    form.text("maker.name", "the name of the studio or trade mark");
    form.text("maker.address", "the postal address");
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      show(http, form);
      return;
    }
    for (String key : MAKER) {
      Act each = Act.of(act.get().by(), act.get().requestKey() + "-" + key);
      desk.studio().saveSetting.run(each, key, form.value(key).strip());
    }
    Show.done(http, Said.done("Kept. It stands on every label from now on."), path());
  }
}
