package pourwright.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.plan.BuyDesk;
import pourwright.plan.ForwardRule;
import pourwright.solve.CpSatPurchasing;
import pourwright.stock.Amount;
import pourwright.stock.Deliveries;
import pourwright.work.BeginPour;
import pourwright.work.DrawForBatch;
import pourwright.work.MaterialUse;
import pourwright.work.PlaceOrder;
import pourwright.work.ReceiveLot;
import pourwright.work.Replan;
import pourwright.work.ToBuy;
import pourwright.work.WorkPlan;

/** From what was ordered and came to a safety stock, a need, and the day to order. */
class BuyingAgainTest {
  private static final String WAX = "soft-wax-a";
  private static final String QUAY = "north-quay";

  @TempDir Path folder;
  private Workshop workshop;

  @BeforeEach
  void open() {
    workshop = new Workshop(folder);
  }

  private void order(double grams) {
    workshop
        .desk
        .studio()
        .placeOrder
        .run(workshop.act(), List.of(new PlaceOrder.Line(WAX, QUAY, grams)))
        .made();
  }

  private void comes(String lot, double grams) {
    workshop
        .desk
        .studio()
        .receiveLot
        .run(
            workshop.act(),
            new ReceiveLot.Request(WAX, lot, Amount.ofGrams(grams), QUAY, null, null, null))
        .made();
  }

  /** Three deliveries that took 4, 7 and 10 days, and 900 g drawn on one of 90 days. */
  private void threeDeliveries() {
    int lot = 0;
    for (int days : List.of(4, 7, 10)) {
      order(1000);
      workshop.clock.move(Duration.ofDays(days));
      comes("came-" + lot++, 1000);
    }
    long pour =
        workshop
            .desk
            .studio()
            .beginPour
            .run(workshop.act(), new BeginPour.Request("bollard-rain", 1, 0))
            .made()
            .id();
    workshop
        .desk
        .studio()
        .drawForBatch
        .run(
            workshop.act(),
            new DrawForBatch.Request(
                pour,
                WAX,
                workshop
                    .desk
                    .studio()
                    .look(b -> b.lots().shelf(WAX, "came-0"))
                    .orElseThrow()
                    .lot()
                    .id(),
                Amount.ofGrams(900)))
        .made();
  }

  private MaterialUse.Row row() {
    return workshop
        .desk
        .studio()
        .look(b -> MaterialUse.rows(b, workshop.desk.now(), ZoneOffset.UTC))
        .stream()
        .filter(r -> r.material().code().equals(WAX))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theSafetyStockComesFromDeliveriesAsTheyWere() {
    threeDeliveries();
    MaterialUse.Row row = row();
    assertThat(row.lead()).isEqualTo(new Deliveries.LeadTime(7, 3, 3));
    // use: 900 g on one day of 90: mean 10, variance 900 * 900 / 90 - 100 = 8900
    assertThat(row.use().perDayG()).isCloseTo(10, within(1e-9));
    // Silver, Pyke, Peterson, ch. 7: sqrt(7 * 8900 + 100 * 9) = 251.4; times 1.6449 is 413.5
    assertThat(row.reorder().safetyG()).isCloseTo(413.5, within(0.1));
    assertThat(row.reorder().orderPointG()).isCloseTo(70 + 413.5, within(0.1));
    assertThat(row.onOrder()).isZero();
    order(2000);
    assertThat(row().onOrder()).isEqualTo(2000);
    assertThat(row().orderBy()).isEqualTo(row.orderBy().plusDays(200)); // 2000 g at 10 g a day
  }

  private List<ToBuy> toBuy() {
    return workshop
        .desk
        .studio()
        .look(
            b -> {
              WorkPlan plan =
                  WorkPlan.of(
                      b,
                      Replan.openLines(b),
                      workshop.desk.now(),
                      ZoneOffset.UTC,
                      new ForwardRule());
              assertThat(plan.plan()).isNotNull();
              return ToBuy.of(b, plan, workshop.desk.now(), ZoneOffset.UTC);
            });
  }

  private java.util.Optional<ToBuy> wax() {
    return toBuy().stream().filter(r -> r.material().code().equals(WAX)).findFirst();
  }

  @Test
  void whatOrdersNeedAndTheSafetyStockLessWhatIsThereIsBoughtADeliveryBeforeTheBatch() {
    threeDeliveries();
    assertThat(wax()).as("enough is there").isEmpty();
    workshop.order("big", "bollard-rain", 60, "shop");
    ToBuy wax = wax().orElseThrow();
    assertThat(wax.safety()).isCloseTo(413.5, within(0.1));
    assertThat(wax.there()).isEqualTo(5000 + 3000 - 900);
    assertThat(wax.need().amountG())
        .isCloseTo(wax.wanted() + wax.safety() - wax.there(), within(1e-6));
    WorkPlan plan =
        workshop
            .desk
            .studio()
            .look(
                b ->
                    WorkPlan.of(
                        b,
                        Replan.openLines(b),
                        workshop.desk.now(),
                        ZoneOffset.UTC,
                        new ForwardRule()));
    LocalDate first =
        plan.make().picks().stream()
            .filter(p -> p.material().equals(WAX) && p.shortUnits() > 0)
            .map(p -> begins(plan, p.batch()))
            .min(LocalDate::compareTo)
            .orElseThrow();
    LocalDate expected = first.minusDays(7);
    assertThat(wax.orderBy())
        .isEqualTo(expected.isBefore(workshop.desk.today()) ? workshop.desk.today() : expected);
    assertThat(wax.orderBy()).as("weeks of casting go before").isAfter(workshop.desk.today());
    order(wax.need().amountG());
    assertThat(wax()).as("it is on order").isEmpty();
  }

  private static LocalDate begins(WorkPlan plan, String batch) {
    return java.util.Objects.requireNonNull(plan.plan()).placed().stream()
        .filter(p -> p.step().startsWith(batch + "/"))
        .map(p -> plan.problem().clock(p.startMin()).toLocalDate())
        .min(LocalDate::compareTo)
        .orElseThrow();
  }

  @Test
  void anOrderCanBeUndoneOrGivenUp() {
    order(2000);
    order(500);
    Deliveries both = deliveries();
    assertThat(both.onOrder(WAX)).isEqualTo(2500);
    workshop
        .desk
        .studio()
        .placeOrder
        .giveUp(workshop.act(), both.open().get(0).order().id())
        .made();
    assertThat(deliveries().onOrder(WAX)).isEqualTo(500);
    assertThat(
            workshop
                .desk
                .studio()
                .placeOrder
                .giveUp(workshop.act(), both.open().get(0).order().id())
                .isDone())
        .isFalse();
    long deed = workshop.desk.studio().look(b -> b.deeds().history(null, 1)).items().get(0).id();
    workshop.desk.studio().undo.run(workshop.act(), deed);
    assertThat(deliveries().onOrder(WAX)).isEqualTo(2500);
  }

  private Deliveries deliveries() {
    return workshop.desk.studio().look(b -> PlaceOrder.of(b, ZoneOffset.UTC));
  }

  @Test
  void thePageSaysByWhichDayAndTakesTheOrderDown() {
    threeDeliveries();
    workshop.order("big", "bollard-rain", 60, "shop");
    Site site =
        TestStudio.site(workshop.desk).and(new BuyDesk(workshop.desk, new CpSatPurchasing()));
    try (Server server = TestStudio.open(site, ServerSettings.onAnyPort("Test studio"), folder)) {
      Visitor visitor = new Visitor(server.port());
      var before = visitor.page("/plan/buy");
      assertThat(before.select("#needs").text()).contains(WAX + "; ");
      assertThat(before.select("section:has(#again)").text())
          .contains("7 \u00b1 3.0 d, 3 deliveries");
      String answer =
          visitor
              .post(
                  "/plan/buy",
                  "/plan/buy",
                  Map.of(
                      "needs", WAX + "; 4000",
                      "packs", WAX + "; north-quay; 1000; 9; 3: 7.5",
                      "postage", ""))
              .body();
      // four packs at 7.50 each, the price from three packs on
      assertThat(answer).contains("Together 30,", "Order from north-quay by ");
      Map<String, String> fields = new TreeMap<>(Map.of("by", "MB"));
      Jsoup.parse(answer).select("form[action=/plan/buy/ordered] input").stream()
          .filter(field -> !field.attr("name").equals("by"))
          .forEach(field -> fields.put(field.attr("name"), field.val()));
      assertThat(fields.get("ordered")).isEqualTo(WAX + "; north-quay; 4000\n");
      visitor.post("/plan/buy/ordered", fields);
      assertThat(deliveries().onOrder(WAX)).isEqualTo(4000);
      assertThat(visitor.page("/plan/buy").select("section:has(#onorder)").text())
          .contains("4000 g", "north-quay");
    }
  }
}
