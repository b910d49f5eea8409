package pourwright.main;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.card.CardBook;
import pourwright.card.Mold;
import pourwright.card.OutlineForm;
import pourwright.card.SolidForm;
import pourwright.card.Vessel;
import pourwright.material.MaterialBook;
import pourwright.order.OrderLine;
import pourwright.plan.Explosion;
import pourwright.plan.Floor;
import pourwright.plan.Habits;
import pourwright.plan.InHand;
import pourwright.plan.PlanProblem;
import pourwright.plan.Routing;
import pourwright.plan.VesselKind;
import pourwright.plan.WorkHours;

/**
 * Invented studios to measure the planner on: twelve designs in six kinds of molds, one person,
 * some candles and vessels there already, dates of which some cannot be kept. The way from order to
 * steps is the program's own. The same seed gives the same studio.
 */
final class PlanStudios {
  private static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
  private static final Instant MONDAY = Instant.parse("2026-09-07T07:00:00Z");
  private static final List<String> VESSELS =
      List.of("bollard", "ferry", "cog", "trough", "buoy", "sluice");
  private static final int HORIZON_DAYS = 180;

  private final Random random;

  private PlanStudios(long seed) {
    this.random = new Random(seed);
  }

  /**
   * The problem of a studio with so many order lines, due from so many days on, over nine weeks.
   */
  static PlanProblem problem(long seed, int lines, int soonestDays) {
    return new PlanStudios(seed).make(lines, soonestDays);
  }

  private PlanProblem make(int lines, int soonestDays) {
    CardBook book = CardBook.of(MaterialBook.of(DemoCards.materials()), cards());
    List<String> designs = book.all(CandleDesign.class).stream().map(CandleDesign::code).toList();
    List<OrderLine> orders = new ArrayList<>();
    LocalDate today = LocalDate.ofInstant(MONDAY, ZONE);
    for (int i = 1; i <= lines; i++) {
      String design = designs.get(random.nextInt(designs.size()));
      LocalDate due = today.plusDays(soonestDays + random.nextInt(63));
      orders.add(new OrderLine("" + (1000 + i), design, 1, 1 + random.nextInt(6), due, null));
    }
    Floor floor = new Floor(MONDAY, ZONE, HORIZON_DAYS, Map.of("MB", hours(today)), 1, 60);
    return Routing.of(
        Explosion.of(orders, book, inHand(book, today), Habits.HOUSE), book, Habits.HOUSE, floor);
  }

  private List<Card> cards() {
    List<Card> cards = new ArrayList<>();
    for (Card card : DemoCards.cards()) {
      if (card instanceof CandleDesign) {
        continue;
      }
      cards.add(card instanceof Mold mold && !mold.leftoverOnly() ? counted(mold) : card);
    }
    add(cards, "buoy", "Buoy", OutlineForm.circle(110), OutlineForm.circle(92));
    add(
        cards,
        "sluice",
        "Sluice",
        OutlineForm.roundedRectangle(96, 96, 6),
        OutlineForm.roundedRectangle(78, 78, 6));
    List<CandleDesign> ofDemo =
        DemoCards.cards().stream()
            .filter(CandleDesign.class::isInstance)
            .map(CandleDesign.class::cast)
            .toList();
    for (int v = 0; v < VESSELS.size(); v++) {
      for (int n = 0; n < 2; n++) {
        CandleDesign like = ofDemo.get((v < 4 ? v * 3 : 0) + (v + n) % 3);
        String scent = like.pour();
        cards.add(
            new CandleDesign(
                VESSELS.get(v) + "-" + scent,
                VESSELS.get(v) + ", " + scent,
                VESSELS.get(v),
                v == 4 ? "white" : like.mix(),
                like.finish(),
                scent,
                like.wicks(),
                CandleDesign.HEADSPACE_MM,
                null,
                1,
                like.boxed(),
                null));
      }
    }
    return cards;
  }

  private Mold counted(Mold mold) {
    return new Mold(
        mold.code(),
        mold.name(),
        mold.vessel(),
        2 + random.nextInt(4),
        mold.piecesPerCast(),
        mold.lifeCasts(),
        false,
        null);
  }

  private void add(
      List<Card> cards, String code, String name, OutlineForm outer, OutlineForm cavity) {
    cards.add(
        new Vessel(
            code,
            name,
            SolidForm.straight(outer, 84),
            SolidForm.straight(cavity, 73),
            null,
            null,
            null));
    cards.add(
        new Mold(code + "-mold", name + " mold", code, 2 + random.nextInt(4), 1, 60, false, null));
  }

  /** House hours, without one day in twenty. */
  private WorkHours hours(LocalDate today) {
    Set<LocalDate> off = new HashSet<>();
    for (int day = 0; day < HORIZON_DAYS; day++) {
      if (random.nextInt(20) == 0) {
        off.add(today.plusDays(day));
      }
    }
    return WorkHours.house().without(off);
  }

  private InHand inHand(CardBook book, LocalDate today) {
    Map<String, Integer> candles = new HashMap<>();
    Map<VesselKind, Integer> vessels = new TreeMap<>();
    for (CandleDesign design : book.all(CandleDesign.class)) {
      candles.put(design.code(), random.nextInt(4));
      vessels.put(VesselKind.of(design), random.nextInt(4));
    }
    return new InHand(candles, vessels, Map.of(), today);
  }
}
