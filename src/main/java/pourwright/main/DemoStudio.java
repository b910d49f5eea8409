package pourwright.main;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.card.CardBook;
import pourwright.card.Mold;
import pourwright.material.Material;
import pourwright.material.MaterialBook;
import pourwright.material.MaterialKind;
import pourwright.material.ShelfLife;
import pourwright.plan.InHand;
import pourwright.quantity.Sourced;
import pourwright.work.AttachmentFiles;
import pourwright.work.Drawer;
import pourwright.work.Drawers;
import pourwright.work.SaveCard;
import pourwright.work.Subject;
import pourwright.work.UnitOfWork;
import pourwright.work.WorkPlan;

/**
 * Undercroft Lantern Works with its years of history. Everything is invented and used for nothing
 * but the demo, screenshots and load tests.
 */
final class DemoStudio {
  /** What is asked in the shop, by vessel; invented. */
  private static final Map<String, String> PRICES =
      Map.of("bollard", "26.00", "ferry", "38.00", "cog", "29.00", "trough", "64.00");

  /** A candle of a design is burnt again after so many pours; the rule would wait for twenty. */
  private static final int CHECK_FROM = 8;

  private final DemoHistory history;
  private final DemoStock stock;
  private final DemoMaking making;
  private final DemoShop shop;
  private final DemoTests tests;
  private final CardBook book;
  private final List<CandleDesign> designs;
  private final Set<String> tested = new HashSet<>();

  private DemoStudio(DemoHistory history) {
    this.history = history;
    List<Material> materials = materials(history.size().busy());
    this.book = CardBook.of(MaterialBook.of(materials), DemoCards.cards());
    this.designs = book.all(CandleDesign.class);
    this.stock = new DemoStock(history, materials);
    this.making = new DemoMaking(history, stock, book);
    this.tests = new DemoTests(history, making);
    this.shop = new DemoShop(history, making, designs, tests::proved);
  }

  /**
   * Writes the history.
   *
   * @param store an empty studio
   * @param files where attached files are kept
   * @param years 1 to 10; from five on a busy studio
   * @param seed the same seed and end give the same history
   * @param end now
   * @param zone the studio's zone
   */
  static void make(UnitOfWork store, AttachmentFiles files, Spec spec, Instant end, ZoneId zone) {
    DemoHistory.Size size = DemoHistory.Size.of(spec.years());
    DemoStudio studio = new DemoStudio(new DemoHistory(store, files, size, spec.seed(), end, zone));
    studio.begin();
    studio.weeks();
    studio.history.run();
    studio.today();
  }

  /** What is asked for. */
  record Spec(int years, long seed) {}

  /** The studio's own materials; a busy one keeps two hundred. */
  private static List<Material> materials(boolean busy) {
    List<Material> all = new ArrayList<>(DemoCards.materials());
    if (busy) {
      for (int i = 1; i <= 60; i++) {
        all.add(plain("consumable-" + i, "Consumable " + i, MaterialKind.CONSUMABLE, Map.of()));
      }
      for (int i = 1; all.size() < 200; i++) {
        all.add(
            plain(
                "colour-" + i,
                "Colour " + i,
                MaterialKind.PIGMENT,
                Map.of("particle_density_g_per_ml", Sourced.typical(4.5, 0.1))));
      }
    }
    return all;
  }

  private static Material plain(
      String code, String name, MaterialKind kind, Map<String, Sourced> properties) {
    return new Material(code, name, kind, kind.usualUnit(), properties, ShelfLife.KEEPS, null);
  }

  private void begin() {
    LocalDate first = history.today();
    history.at(history.now(), this::layCards);
    history.at(history.now().plusSeconds(60), () -> stockUp());
    new DemoRecall(history, stock, making, shop, designs).plan(first);
    history.at(
        history.end().minus(Duration.ofDays(25)),
        () ->
            shop.promiseTooMuch(
                LocalDate.ofInstant(history.end(), history.zone()).minusDays(2), inHand()));
  }

  private InHand inHand() {
    return history.studio().look(books -> WorkPlan.inHand(books, book, history.today()));
  }

  private void layCards() {
    history.studio().saveSetting.run(history.act(), "studio.name", SampleStudio.NAME);
    for (Material material : book.materials().all()) {
      save(Drawers.MATERIAL, material.code(), material);
    }
    for (Card card : DemoCards.cards()) {
      for (Drawer<? extends Card> drawer : Drawers.ofCards()) {
        saveIf(drawer, card);
      }
    }
    DemoSheets.all().forEach(sheet -> save(Drawers.SHEET, sheet.material(), sheet));
    setting("maker.name", SampleStudio.NAME);
    setting("maker.address", "1 Cellar Steps, Harbour");
    setting("maker.phone", "+00 000 0000");
    setting("maker.web", "works@example.org");
    designs.forEach(d -> setting("slate.price." + d.code(), PRICES.getOrDefault(d.vessel(), "24")));
  }

  private void setting(String key, String value) {
    history.studio().saveSetting.run(history.act(), key, value);
  }

  private <T extends Card> void saveIf(Drawer<T> drawer, Card card) {
    if (drawer.type().isInstance(card)) {
      save(drawer, card.code(), drawer.type().cast(card));
    }
  }

  private <T> void save(Drawer<T> drawer, String code, T body) {
    history.studio().saveCard.run(history.act(), SaveCard.Request.of(drawer, code, 0, body));
  }

  private void stockUp() {
    for (Material material : book.materials().all()) {
      stock.receive(material.code());
    }
  }

  /** What happens in each week, laid out from the first day to the last. */
  private void weeks() {
    LocalDate last = LocalDate.ofInstant(history.end(), history.zone());
    double owed = 0;
    int week = 0;
    for (LocalDate monday = history.today(); monday.isBefore(last); monday = monday.plusDays(7)) {
      owed += history.size().castsPerWeek() * (0.7 + 0.3 * DemoShop.season(monday.plusDays(40)));
      for (; owed >= 1; owed--) {
        LocalDate day = monday.plusDays(history.random().nextInt(5));
        history.on(day, this::castOne);
        history.on(day, this::pourOne);
      }
      double orders = history.size().ordersPerWeek() * DemoShop.season(monday);
      for (int i = 0; i < Math.round(orders + history.random().nextDouble() - 0.5); i++) {
        history.on(
            monday.plusDays(history.random().nextInt(5)),
            () -> shop.order(history.size().busy() ? 4 : 3));
      }
      history.on(monday.plusDays(1), shop::send);
      history.on(monday.plusDays(4), shop::send);
      history.on(monday.plusDays(4), this::testOne);
      int counts = history.size().busy() ? 6 : 1;
      for (int i = 0; i < counts; i++) {
        history.on(monday.plusDays(2), stock::count);
      }
      int deliveries = history.size().busy() ? 6 : week % 4 == 0 ? 1 : 0;
      for (int i = 0; i < deliveries; i++) {
        history.on(monday.plusDays(i % 5), this::deliver);
      }
      week++;
    }
  }

  private void deliver() {
    List<Material> all = book.materials().all();
    String code = all.get(history.random().nextInt(all.size())).code();
    stock.receive(code);
    if (history.size().busy()) {
      stock.clearOld(code);
    }
  }

  /** Pieces of a design that orders wait for or will soon ask, over what is there or rests. */
  private double lacking(CandleDesign design, double weeks) {
    double asked = shop.wanted(design.code()) + weeks * shop.aWeek(design);
    return asked - making.shelf(design.code()).size() - making.resting(design.code());
  }

  /** A busy studio casts what it will lack when the vessels of today are ready. */
  private String scarcestVessel() {
    String vessel = "bollard";
    double most = Double.NEGATIVE_INFINITY;
    for (String candidate : List.of("bollard", "ferry", "cog", "trough")) {
      double need =
          designs.stream()
                  .filter(d -> d.vessel().equals(candidate))
                  .mapToDouble(d -> lacking(d, 8))
                  .sum()
              - making.tight(candidate).size()
              - making.underWay(candidate);
      if (need > most) {
        most = need;
        vessel = candidate;
      }
    }
    return vessel;
  }

  private void castOne() {
    if (history.size().busy()) {
      making.cast(scarcestVessel(), history.size().piecesPerCast());
      return;
    }
    String vessel = "bollard";
    int least = Integer.MAX_VALUE;
    for (String candidate : List.of("bollard", "ferry", "cog", "trough")) {
      int weight = candidate.equals("trough") ? 3 : candidate.equals("ferry") ? 2 : 1;
      int have = making.tight(candidate).size() * weight + history.random().nextInt(8);
      if (have < least) {
        least = have;
        vessel = candidate;
      }
    }
    int most = history.size().piecesPerCast();
    making.cast(vessel, vessel.equals("trough") ? Math.max(1, most / 3) : most);
  }

  private void pourOne() {
    CandleDesign best = designs.get(history.random().nextInt(designs.size()));
    double need = Double.NEGATIVE_INFINITY;
    boolean busy = history.size().busy();
    for (CandleDesign design : designs) {
      double lacking =
          busy
              ? lacking(design, 3)
              : shop.wanted(design.code()) - making.shelf(design.code()).size();
      double score = lacking * 2 + history.random().nextInt(6);
      if (score > need && !making.tight(design.vessel()).isEmpty()) {
        need = score;
        best = design;
      }
    }
    making.pour(best, history.size().piecesPerCast());
  }

  /**
   * Burns what is to be sold first; then one candle of each design well before its check burn is
   * due, and one of every new lot; else one that she is curious about.
   */
  private void testOne() {
    for (CandleDesign design : designs) {
      if (making.shelf(design.code()).size() >= 3 && tested.add(design.code())) {
        tests.begin(design, false);
      }
    }
    history
        .studio()
        .look(books -> books.burns().poursSinceBurnt(null))
        .forEach(
            (candle, pours) -> {
              if (pours.size() >= CHECK_FROM) {
                tests.check(candle);
              }
            });
    for (CandleDesign sold : designs) {
      if (tests.proved(sold.code())) {
        tests.checkLots(sold.code());
      }
    }
    CandleDesign design = designs.get(history.random().nextInt(designs.size()));
    boolean again = history.size().busy() || history.random().nextInt(8) == 0;
    if (again && tested.contains(design.code())) {
      tests.begin(design, history.random().nextInt(3) == 0);
    }
  }

  /** What is going on at this moment: a mold near its end, a timer that runs. */
  private void today() {
    shop.lastOrders(inHand());
    int life = Math.max(20, (int) Math.round(making.bollardCasts() * 1.04));
    Mold mold =
        book.all(Mold.class).stream()
            .filter(m -> m.code().equals("bollard-mold"))
            .findFirst()
            .orElseThrow();
    Mold worn =
        new Mold(
            mold.code(),
            mold.name(),
            mold.vessel(),
            mold.count(),
            mold.piecesPerCast(),
            life,
            false,
            "edges go soft: " + making.bollardCasts() + " casts of about " + life);
    history
        .studio()
        .saveCard
        .run(history.act(), SaveCard.Request.of(Drawers.MOLD, mold.code(), 1, worn));
    history
        .studio()
        .timers
        .start(
            history.act(),
            "Demold the Cogs",
            new Subject(Subject.Kind.STUDIO, "bench"),
            Duration.ofHours(3));
  }
}
