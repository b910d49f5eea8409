package pourwright.page.stockroom;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.material.Material;
import pourwright.material.ShelfLife;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Place;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.stock.Amount;
import pourwright.stock.Price;
import pourwright.stock.Shelf;
import pourwright.work.Act;
import pourwright.work.Drawers;
import pourwright.work.Outcome;
import pourwright.work.PaperPrinter;
import pourwright.work.PriceText;
import pourwright.work.ReceiveLot;
import pourwright.work.SaveCard;
import pourwright.work.TablePrinter;

/** Materials, lots, counts, buying and tracing. */
public final class StockroomPlace implements Place {
  private final Desk desk;
  private final ShelfView view;
  private final LotDesk lots;

  /** The place, with the books and the clock of the studio. */
  public StockroomPlace(Desk desk) {
    this.desk = desk;
    this.view = new ShelfView(desk);
    this.lots = new LotDesk(desk, view);
  }

  @Override
  public String name() {
    return "Stockroom";
  }

  @Override
  public String path() {
    return "/stockroom";
  }

  @Override
  public String purpose() {
    return "Materials and their lots: take deliveries in, count at the shelf, trace both ways.";
  }

  /**
   * Taking a delivery in.
   *
   * @param form what was typed
   * @param materials by code
   */
  public record ReceivePage(Form form, Map<String, String> materials) {}

  @Override
  public void addTo(RoutesConfig routes) {
    routes.get(path(), this::show);
    routes.get("/stockroom/receive", this::receiving);
    routes.post("/stockroom/receive", this::receive);
    routes.get("/stockroom/material/{code}", this::material);
    routes.post("/stockroom/material/{code}", this::saveMaterial);
    routes.get("/stockroom/find", this::find);
    lots.addTo(routes);
    new DeliveryDesk(desk).addTo(routes);
    new ListDesk(desk).addTo(routes);
    new CountListDesk(desk, PaperPrinter.ofTheHouse()).addTo(routes);
    new MarketDesk(desk, PaperPrinter.ofTheHouse()).addTo(routes);
    new ShopDesk(desk).addTo(routes);
    new RestDesk(desk).addTo(routes);
    new RecallDesk(desk, PaperPrinter.ofTheHouse(), TablePrinter.ofTheHouse()).addTo(routes);
  }

  private void show(Context http) {
    String from = Optional.ofNullable(http.queryParam("after")).orElse("");
    Show.page(http, "stockroom/stockroom.jte", view.overview(purpose(), from));
  }

  private void receiving(Context http) {
    String material = Optional.ofNullable(http.queryParam("material")).orElse("");
    Form form = Form.startingFrom(Map.of("material", material));
    Show.page(http, "stockroom/receive.jte", new ReceivePage(form, view.choices()));
  }

  private void receive(Context http) {
    Form form = Form.of(http);
    Map<String, String> choices = view.choices();
    Optional<String> code = form.choice("material", "the material", List.copyOf(choices.keySet()));
    Optional<Material> material = code.flatMap(view::material);
    Optional<Amount> amount =
        form.read(
            "amount",
            "an amount",
            text -> StockWords.read(text, material.orElseThrow(() -> noMaterial()).unit(), desk));
    Optional<LocalDate> expires = form.readIfThere("expires", "a day", LocalDate::parse);
    Optional<Long> cents =
        form.readIfThere(
            "price", "a price", text -> PriceText.minor(text, desk.locale(), currency()));
    Optional<Act> act = form.act(http, form.optionalText("note"));
    if (!form.ok() || material.isEmpty() || amount.isEmpty() || act.isEmpty()) {
      Show.again(http, "stockroom/receive.jte", new ReceivePage(form, choices));
      return;
    }
    ReceiveLot.Request request =
        new ReceiveLot.Request(
            material.get().code(),
            form.optionalText("lot"),
            amount.get(),
            null,
            null,
            expires.orElse(null),
            cents.map(c -> new Price(c, currency())).orElse(null));
    Outcome<Shelf> outcome = desk.studio().receiveLot.run(act.get(), request);
    if (outcome instanceof Outcome.Refused<Shelf> refused) {
      form.complain("lot", refused.sentence() + ": " + refused.hint() + ".");
      Show.again(http, "stockroom/receive.jte", new ReceivePage(form, choices));
      return;
    }
    Shelf shelf = outcome.made();
    String said =
        StockWords.amount(shelf.onHand(), desk.locale())
            + " of "
            + material.get().name()
            + " are in, lot "
            + shelf.lot().code()
            + ".";
    Show.done(http, Said.done(said), "/stockroom/lot/" + shelf.lot().id());
  }

  private static IllegalArgumentException noMaterial() {
    return new IllegalArgumentException("no material");
  }

  private String currency() {
    return desk.studio().look(books -> books.settings().value("currency")).orElse("EUR");
  }

  private void material(Context http) {
    Material material = known(http.pathParam("code"));
    ShelfLife life = material.shelfLife();
    String low =
        desk.studio()
            .look(books -> books.settings().value("low." + material.code()))
            .filter(text -> !text.isEmpty())
            .map(text -> new Amount(material.unit(), Long.parseLong(text)))
            .map(amount -> StockWords.amount(amount, desk.locale()))
            .orElse("");
    Form form =
        Form.startingFrom(
            Map.of(
                "closed", life.closedDays() == null ? "" : life.closedDays().toString(),
                "opened", life.openedDays() == null ? "" : life.openedDays().toString(),
                "low", low));
    Show.page(http, "stockroom/material.jte", view.materialPage(material, form));
  }

  private Material known(String code) {
    return view.material(code)
        .orElseThrow(
            () -> new TurnedAway(404, "There is no such material", "Look it up in the list."));
  }

  private void saveMaterial(Context http) {
    Material material = known(http.pathParam("code"));
    Form form = Form.of(http);
    Optional<Integer> closed = form.readIfThere("closed", "days", Integer::valueOf);
    Optional<Integer> opened = form.readIfThere("opened", "days", Integer::valueOf);
    Optional<Amount> low =
        form.readIfThere("low", "an amount", text -> StockWords.read(text, material.unit(), desk));
    for (String field : List.of("closed", "opened")) {
      Optional<Integer> days = field.equals("closed") ? closed : opened;
      if (days.isPresent() && days.get() <= 0) {
        form.complain(field, "Please give a whole number of days above 0, or leave it empty.");
      }
    }
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, "stockroom/material.jte", view.materialPage(material, form));
      return;
    }
    ShelfLife life = new ShelfLife(closed.orElse(null), opened.orElse(null));
    Said said = save(act.get(), material, life);
    String level = low.map(a -> Long.toString(a.units())).orElse("");
    Act second = new Act(act.get().by(), act.get().requestKey() + "-low", "");
    desk.studio().saveSetting.run(second, "low." + material.code(), level);
    Show.done(http, said, "/stockroom/material/" + material.code());
  }

  private Said save(Act act, Material material, ShelfLife life) {
    if (life.equals(material.shelfLife())) {
      return Said.done("Kept.");
    }
    Material changed =
        new Material(
            material.code(),
            material.name(),
            material.kind(),
            material.unit(),
            material.properties(),
            life,
            material.note());
    int version =
        desk.studio()
            .look(books -> books.cards().current(Drawers.MATERIAL, material.code()))
            .map(v -> v.version())
            .orElse(0);
    SaveCard.Saving<Material> saving =
        desk.studio()
            .saveCard
            .run(act, SaveCard.Request.of(Drawers.MATERIAL, material.code(), version, changed));
    return saving instanceof SaveCard.Saving.Saved
        ? Said.done("Kept. The shelf life is yours now, not the typical one.")
        : Said.refused(
            "Somebody else changed this material in the meantime.",
            "Look at what it says now and change it again.");
  }

  private void find(Context http) {
    String code = Optional.ofNullable(http.queryParam("lot")).orElse("").strip();
    Optional<Shelf> found =
        desk.studio().look(books -> books.lots().coded(code)).stream()
            .filter(s -> s.onHand().isPositive())
            .findFirst();
    if (found.isEmpty()) {
      Show.done(
          http,
          Said.refused(
              "There is no lot '" + code + "' in the books.",
              "Read the code on the pack again, or look under the material."),
          path());
      return;
    }
    http.redirect("/stockroom/lot/" + found.get().lot().id());
  }
}
