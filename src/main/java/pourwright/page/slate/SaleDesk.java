package pourwright.page.slate;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.cost.MoneyKind;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.Said;
import pourwright.page.Show;
import pourwright.page.guard.TurnedAway;
import pourwright.work.Act;
import pourwright.work.MoneyFact;
import pourwright.work.Outcome;
import pourwright.work.PaperPrinter;
import pourwright.work.PriceText;
import pourwright.work.SaleSums;

/** An order's money: prices that were agreed, what was paid, and its papers. */
final class SaleDesk {
  private static final String PATH = "/slate/order";
  private static final int ORDERS = 40;
  private final Desk desk;
  private final PaperPrinter paper;

  SaleDesk(Desk desk, PaperPrinter paper) {
    this.desk = desk;
    this.paper = paper;
  }

  void addTo(RoutesConfig routes) {
    routes.get(PATH, this::orders);
    routes.get(PATH + "/{number}", http -> Show.page(http, "slate/sale.jte", page(http, blank())));
    routes.post(PATH + "/{number}/prices", this::agree);
    routes.post(PATH + "/{number}/money", this::money);
    routes.get(PATH + "/{number}/{paper}.pdf", this::paper);
  }

  private Form blank() {
    return Form.startingFrom(Map.of("day", desk.today().toString()));
  }

  /** Where an order's money is. */
  static String path(String number) {
    return PATH + "/" + URLEncoder.encode(number, StandardCharsets.UTF_8).replace("+", "%20");
  }

  private void orders(Context http) {
    String asked = http.queryParam("number");
    if (asked != null && !asked.isBlank()) {
      boolean there = desk.studio().look(books -> books.orders().order(asked.strip()).isPresent());
      if (there) {
        http.redirect(path(asked.strip()));
        return;
      }
    }
    Form form = Form.startingFrom(Map.of("number", asked == null ? "" : asked));
    if (asked != null && !asked.isBlank()) {
      form.complain("number", "There is no order '" + asked.strip() + "' in the book.");
    }
    List<String[]> orders =
        desk.studio().look(books -> books.orders().list(null, null, ORDERS)).items().stream()
            .map(
                o ->
                    new String[] {
                      path(o.number()), o.number(), o.channel() + ", " + o.state().words()
                    })
            .toList();
    SalePages.Orders page = new SalePages.Orders(form, orders);
    if (form.ok()) {
      Show.page(http, "slate/sales.jte", page);
    } else {
      Show.again(http, "slate/sales.jte", page);
    }
  }

  private SaleSums sums(Context http) {
    return desk.studio()
        .look(books -> SaleSums.of(books, http.pathParam("number")))
        .orElseThrow(
            () -> new TurnedAway(404, "There is no such order", "Look it up in the order book."));
  }

  private SalePages.Sale page(Context http, Form form) {
    SaleSums sums = sums(http);
    List<SalePages.Line> lines =
        sums.lines().stream()
            .map(
                l ->
                    new SalePages.Line(
                        l.id(),
                        l.name(),
                        l.pieces(),
                        l.eachMinor() == null ? "no price" : sums.words(l.eachMinor()),
                        l.eachMinor() == null ? "" : l.agreed() ? "agreed" : "by the price list",
                        sums.words(l.sumMinor()),
                        form.value("price-" + l.id())))
            .toList();
    List<String> money =
        sums.money().stream()
            .filter(m -> m.kind() != MoneyKind.AGREED)
            .map(
                m ->
                    desk.day(m.day())
                        + ": "
                        + m.kind().words()
                        + " "
                        + sums.words(m.minor())
                        + (m.words().isEmpty() ? "" : " (" + m.words() + ")"))
            .toList();
    Map<String, String> kinds = new LinkedHashMap<>();
    for (MoneyKind kind : MoneyKind.values()) {
      if (kind != MoneyKind.AGREED) {
        kinds.put(kind.code(), kind.words());
      }
    }
    return new SalePages.Sale(
        form,
        sums.order().number(),
        path(sums.order().number()),
        sums.order().channel() + ", " + sums.order().state().words(),
        lines,
        sums.words(sums.totalMinor()),
        money,
        sums.words(sums.totalMinor() - sums.paidMinor()),
        kinds);
  }

  private void agree(Context http) {
    Form form = Form.of(http);
    SaleSums sums = sums(http);
    List<MoneyFact> facts = new ArrayList<>();
    for (SaleSums.Line line : sums.lines()) {
      form.readIfThere(
              "price-" + line.id(),
              "a price",
              t -> PriceText.minor(t, desk.locale(), sums.currency()))
          .ifPresent(
              minor -> facts.add(fact(MoneyKind.AGREED, sums, line.id(), minor, desk.today(), "")));
    }
    if (form.ok() && facts.isEmpty()) {
      form.complain("prices", "Please give at least one price.");
    }
    write(http, form, facts, "The prices are agreed.");
  }

  private static MoneyFact fact(
      MoneyKind kind,
      SaleSums sums,
      @org.jspecify.annotations.Nullable Long line,
      long minor,
      LocalDate day,
      String words) {
    return new MoneyFact(
        0, kind, sums.order().number(), line, minor, sums.currency(), day, words, 0);
  }

  private void money(Context http) {
    Form form = Form.of(http);
    SaleSums sums = sums(http);
    Optional<MoneyKind> kind = form.read("kind", "what for", MoneyKind::of);
    Optional<Long> minor =
        form.read("amount", "an amount", t -> PriceText.minor(t, desk.locale(), sums.currency()));
    Optional<LocalDate> day = form.read("day", "a day", LocalDate::parse);
    List<MoneyFact> facts =
        kind.isEmpty() || minor.isEmpty() || day.isEmpty()
            ? List.of()
            : List.of(
                fact(
                    kind.get(),
                    sums,
                    null,
                    minor.get(),
                    day.get(),
                    form.optionalText("words-said")));
    write(http, form, facts, "It is written down.");
  }

  private void write(Context http, Form form, List<MoneyFact> facts, String said) {
    Optional<Act> act = form.act(http, "");
    if (!form.ok() || act.isEmpty()) {
      Show.again(http, "slate/sale.jte", page(http, form));
      return;
    }
    Outcome<List<MoneyFact>> outcome = desk.studio().recordMoney.run(act.get(), facts);
    Show.done(
        http,
        outcome instanceof Outcome.Refused<List<MoneyFact>> refused
            ? Said.refused(refused)
            : Said.done(said),
        path(http.pathParam("number")));
  }

  private void paper(Context http) {
    SaleSums sums = sums(http);
    SalePapers papers = new SalePapers(desk);
    var sheet =
        switch (http.pathParam("paper")) {
          case "quote" -> papers.quote(sums);
          case "invoice" -> papers.invoice(sums);
          case "slip" -> papers.slip(sums);
          default -> throw new TurnedAway(404, "There is no such paper", "Choose one of three.");
        };
    String size = "letter".equals(http.queryParam("paper")) ? "letter" : "a4";
    Show.inline(
        http,
        paper.pdf(sheet, size),
        "application/pdf",
        http.pathParam("paper") + "-" + sums.order().number() + ".pdf");
  }
}
