package pourwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import pourwright.card.CardBook;
import pourwright.main.DemoCards;
import pourwright.material.Material;
import pourwright.material.UnitKind;
import pourwright.order.OrderLine;
import pourwright.stock.Amount;
import pourwright.stock.Lot;
import pourwright.stock.Shelf;

/**
 * Forty order lines over twelve candles, worked out again by closed formulas of this test alone.
 */
class ExplosionTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
  private static final CardBook BOOK = DemoCards.book();

  static List<OrderLine> fortyLines(long seed) {
    Random random = new Random(seed);
    List<String> designs =
        BOOK.all(pourwright.card.CandleDesign.class).stream().map(c -> c.code()).toList();
    List<OrderLine> lines = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      lines.add(
          new OrderLine(
              "A" + (1000 + i),
              designs.get(i % designs.size()),
              1,
              1 + random.nextInt(6),
              TODAY.plusDays(40 + random.nextInt(40)),
              null));
    }
    return lines;
  }

  static Map<String, List<Shelf>> lots(long seed) {
    Random random = new Random(seed);
    Map<String, List<Shelf>> shelves = new HashMap<>();
    long id = 1;
    for (Material material : BOOK.materials().all()) {
      List<Shelf> lots = new ArrayList<>();
      for (int i = 0; i < 1 + random.nextInt(4); i++) {
        LocalDate expires = TODAY.plusDays(random.nextInt(400) - 40);
        Lot lot =
            new Lot(
                id++,
                material.code(),
                "L" + id,
                material.unit(),
                null,
                TODAY.minusDays(50),
                null,
                expires,
                null,
                1);
        long units = material.unit().toSmall(50 + random.nextInt(9000));
        lots.add(new Shelf(lot, new Amount(material.unit(), units), random.nextInt(8) == 0));
      }
      shelves.put(material.code(), lots);
    }
    return shelves;
  }

  private static MakePlan plan(List<OrderLine> lines, Map<String, List<Shelf>> lots) {
    return Explosion.of(lines, BOOK, new InHand(Map.of(), Map.of(), lots, TODAY), Habits.HOUSE);
  }

  /**
   * Volume of mix in one vessel, ml: closed formulas. Source: mensuration, handbooks of geometry.
   */
  private static double castMl(String vessel) {
    double octagon = 8 * 46.0 * 46.0 * Math.tan(Math.PI / 8);
    return switch (vessel) {
      case "bollard" -> frustum(40, 46, 96) - frustum(32, 37.5, 86);
      case "ferry" ->
          roundedRectangle(128, 78, 20) * 84 / 1000 - roundedRectangle(110, 60, 14) * 73 / 1000;
      case "cog" -> octagon * 90 / 1000 - Math.PI * 37 * 37 * 79 / 1000;
      default -> stadium(300, 90) * 80 / 1000 - stadium(280, 70) * 68 / 1000;
    };
  }

  /** Volume of wax in one vessel with 12 mm headspace, ml. */
  private static double fillMl(String vessel) {
    return switch (vessel) {
      case "bollard" -> frustum(32, 32 + 5.5 * 74 / 86, 74);
      case "ferry" -> roundedRectangle(110, 60, 14) * 61 / 1000;
      case "cog" -> Math.PI * 37 * 37 * 67 / 1000;
      default -> stadium(280, 70) * 56 / 1000;
    };
  }

  private static double frustum(double r, double s, double h) {
    return Math.PI * h * (r * r + r * s + s * s) / 3 / 1000;
  }

  private static double roundedRectangle(double l, double w, double r) {
    return l * w - (4 - Math.PI) * r * r;
  }

  private static double stadium(double l, double w) {
    return (l - w) * w + Math.PI * w * w / 4;
  }

  private static double insideM2(String vessel) {
    return switch (vessel) {
      case "bollard" -> (Math.PI * (32 + 37.5) * Math.hypot(86, 5.5) + Math.PI * 32 * 32) * 1e-6;
      case "ferry" ->
          ((2 * (110 + 60) - (8 - 2 * Math.PI) * 14) * 73 + roundedRectangle(110, 60, 14)) * 1e-6;
      case "cog" -> (2 * Math.PI * 37 * 79 + Math.PI * 37 * 37) * 1e-6;
      default -> ((2 * 210 + Math.PI * 70) * 68 + stadium(280, 70)) * 1e-6;
    };
  }

  private static double outsideM2(String vessel) {
    double side = 2 * 46 * Math.tan(Math.PI / 8);
    double octagon = 8 * 46.0 * 46.0 * Math.tan(Math.PI / 8);
    return switch (vessel) {
      case "bollard" ->
          (Math.PI * (40 + 46) * Math.hypot(96, 6)
                  + Math.PI * 40 * 40
                  + Math.PI * (46 * 46 - 37.5 * 37.5))
              * 1e-6;
      case "ferry" ->
          ((2 * (128 + 78) - (8 - 2 * Math.PI) * 20) * 84
                  + 2 * roundedRectangle(128, 78, 20)
                  - roundedRectangle(110, 60, 14))
              * 1e-6;
      case "cog" -> (8 * side * 90 + 2 * octagon - Math.PI * 37 * 37) * 1e-6;
      default -> ((2 * 210 + Math.PI * 90) * 80 + 2 * stadium(300, 90) - stadium(280, 70)) * 1e-6;
    };
  }

  private static void add(Map<String, Double> sum, String material, double amount) {
    sum.merge(material, amount, Double::sum);
  }

  /** The needs of a plan's batches, each by the trade's own formulas. */
  private static Map<String, Double> recomputed(MakePlan plan) {
    Map<String, Double> sum = new TreeMap<>();
    for (CastJob cast : plan.casts()) {
      double ml = 0;
      for (CastJob.Fill fill : cast.fills()) {
        ml += castMl(fill.vessel()) * fill.pieces();
        double area = insideM2(fill.vessel()) * 2 + outsideM2(fill.vessel());
        add(sum, "film-sealer", 1000 * area / 8 * fill.pieces());
      }
      // absolute volumes, ACI 211.1-91; water 0.99820 g/ml at 20 °C, Tanaka 2001
      double water = 0.998203;
      boolean grey = cast.mix().equals("grey");
      double ratio = grey ? water / (3 * 1.08) : 0.42;
      double solid = grey ? 1 / 2.95 + 0.015 / 5.0 : 1 / 3.10 + 1.2 / 2.70;
      double powder = ml * 0.98 / (solid + ratio / water);
      double lean = powder * (1 + (grey ? 0.015 : 1.2) + ratio);
      double factor = 1.10 + 45 / lean;
      add(sum, grey ? "rapid-grey" : "white-portland", powder * factor);
      add(sum, grey ? "black-oxide" : "marble-flour", powder * factor * (grey ? 0.015 : 1.2));
      assertThat(cast.waterG()).isCloseTo(powder * factor * ratio, within(0.1));
    }
    for (PourJob pour : plan.pours()) {
      pour(pour, sum);
    }
    return sum;
  }

  private static void pour(PourJob pour, Map<String, Double> sum) {
    boolean fig = pour.pour().equals("fig");
    boolean hearth = pour.pour().equals("hearth");
    double load = fig ? 0.08 : hearth ? 0.10 / 1.10 : 0.10;
    double waxMl = fig ? 1 / 0.905 : 0.8 / 0.915 + 0.2 / 0.905;
    double density = 1 / ((1 - load) * waxMl + load / 0.98);
    double net = 0;
    for (PourJob.Fill fill : pour.fills()) {
      String vessel = fill.design().substring(0, fill.design().indexOf('-'));
      net += fillMl(vessel) * density * fill.candles();
      int wicks = vessel.equals("trough") ? 4 : vessel.equals("ferry") ? 2 : 1;
      add(sum, fig ? "flat-braid-41" : "flat-braid-48", wicks * fill.candles());
      add(sum, "tab-20", wicks * fill.candles());
      add(sum, "sticker-20", wicks * fill.candles());
      add(sum, vessel.equals("trough") ? "box-long" : "box-small", fill.candles());
      add(sum, "care-card", fill.candles());
      add(sum, "base-label", fill.candles());
    }
    double total = net * 1.03 + 5;
    double wax = total * (1 - load);
    add(sum, "scent-" + pour.pour(), total * load);
    add(sum, "blend-b", fig ? wax : wax * 0.2);
    if (!fig) {
      add(sum, "soft-wax-a", wax * 0.8);
    }
  }

  @Test
  void theNeedsOfFortyLinesEqualAnIndependentRecomputation() {
    MakePlan plan = plan(fortyLines(1), Map.of());
    Map<String, Double> expected = recomputed(plan);
    assertThat(plan.needs().byMaterial().keySet()).isEqualTo(expected.keySet());
    expected.forEach(
        (material, amount) ->
            assertThat(plan.needs().get(material)).as(material).isCloseTo(amount, within(0.1)));
  }

  @Test
  void enoughCandlesAndVesselsAreBegunForTheLossesAndNoMore() {
    List<OrderLine> lines = fortyLines(2);
    MakePlan plan = plan(lines, Map.of());
    Map<String, Integer> ordered = new TreeMap<>();
    lines.forEach(l -> ordered.merge(l.design(), l.quantity(), Integer::sum));
    Map<String, Integer> poured = new TreeMap<>();
    plan.pours().stream()
        .flatMap(p -> p.fills().stream())
        .forEach(f -> poured.merge(f.design(), f.candles(), Integer::sum));
    Map<String, Integer> vessels = new TreeMap<>();
    ordered.forEach(
        (design, good) -> {
          int begun = (int) Math.round(good / 0.98);
          assertThat(poured).containsEntry(design, begun);
          vessels.merge(design.substring(0, design.indexOf('-')), begun, Integer::sum);
        });
    Map<String, Integer> cast = new TreeMap<>();
    plan.casts().stream()
        .flatMap(c -> c.fills().stream())
        .forEach(f -> cast.merge(f.vessel(), f.pieces(), Integer::sum));
    vessels.forEach(
        (vessel, good) -> assertThat(cast).containsEntry(vessel, (int) Math.round(good / 0.95)));
  }

  @Test
  void noBatchIsLargerThanMoldsPotLifeAndPitcherAllow() {
    MakePlan plan = plan(fortyLines(3), Map.of());
    Map<String, Integer> molds = Map.of("bollard", 4, "ferry", 2, "cog", 3, "trough", 1);
    for (CastJob cast : plan.casts()) {
      assertThat(cast.pieces()).isLessThanOrEqualTo(8);
      cast.fills()
          .forEach(
              f -> assertThat(f.pieces()).isLessThanOrEqualTo(molds.getOrDefault(f.vessel(), 0)));
    }
    plan.pours()
        .forEach(
            p -> {
              if (p.candles() > 1) {
                assertThat(p.totalG()).isLessThanOrEqualTo(2500);
              }
            });
  }

  @Test
  void everyGramIsDrawnFromALotOrListedAsShortAndNothingTwice() {
    for (long seed = 0; seed < 50; seed++) {
      Map<String, List<Shelf>> lots = lots(seed);
      MakePlan plan = plan(fortyLines(seed), lots);
      Map<Long, Long> drawn = new HashMap<>();
      Map<String, Double> picked = new TreeMap<>();
      for (MakePlan.Pick pick : plan.picks()) {
        long sum = pick.draws().stream().mapToLong(MakePlan.Draw::units).sum();
        assertThat(sum + pick.shortUnits()).isEqualTo(pick.needUnits());
        pick.draws().forEach(d -> drawn.merge(d.lot(), d.units(), Long::sum));
        picked.merge(pick.material(), pick.unit().fromSmall(pick.needUnits()), Double::sum);
      }
      plan.needs()
          .byMaterial()
          .forEach((m, g) -> assertThat(picked.getOrDefault(m, 0.0)).isCloseTo(g, within(0.01)));
      for (List<Shelf> shelves : lots.values()) {
        for (Shelf shelf : shelves) {
          long out = drawn.getOrDefault(shelf.lot().id(), 0L);
          assertThat(out).isLessThanOrEqualTo(shelf.onHand().units());
          assertThat(out == 0 || shelf.isDrawable(TODAY)).isTrue();
        }
      }
      shortOnlyWhenAllIsGone(plan, lots, drawn);
    }
  }

  private static void shortOnlyWhenAllIsGone(
      MakePlan plan, Map<String, List<Shelf>> lots, Map<Long, Long> drawn) {
    for (String material : plan.shortages().keySet()) {
      for (Shelf shelf : lots.getOrDefault(material, List.of())) {
        if (shelf.isDrawable(TODAY)) {
          assertThat(drawn.getOrDefault(shelf.lot().id(), 0L)).isEqualTo(shelf.onHand().units());
        }
      }
    }
  }

  @Test
  void whatIsThereIsUsedFirstAndGoesToTheEarliestDate() {
    List<OrderLine> lines =
        List.of(
            new OrderLine("late", "cog-fig", 1, 3, TODAY.plusDays(60), null),
            new OrderLine("early", "cog-fig", 1, 3, TODAY.plusDays(50), null));
    InHand some =
        new InHand(
            Map.of("cog-fig", 4),
            Map.of(new VesselKind("cog", "white", "two-coats"), 1),
            Map.of(),
            TODAY);
    MakePlan plan = Explosion.of(lines, BOOK, some, Habits.HOUSE);
    assertThat(plan.served().get(0).line().order()).isEqualTo("early");
    assertThat(plan.served().get(0).fromStock()).isEqualTo(3);
    assertThat(plan.served().get(0).pours()).isEmpty();
    assertThat(plan.served().get(1).fromStock()).isEqualTo(1);
    // two candles left to make, too few for a spare; one vessel is there, one is cast
    assertThat(plan.pours().get(0).candles()).isEqualTo(2);
    assertThat(plan.casts().get(0).pieces()).isEqualTo(1);
    assertThat(plan.pours().get(0).after()).containsExactly("C1");
  }

  @Test
  void aVesselWithoutAMoldIsNamed() {
    List<pourwright.card.Card> cards =
        DemoCards.cards().stream().filter(c -> !c.code().equals("cog-mold")).toList();
    CardBook bare = CardBook.of(BOOK.materials(), cards);
    List<OrderLine> one = List.of(new OrderLine("1", "cog-fig", 1, 1, null, null));
    assertThatThrownBy(() -> Explosion.of(one, bare, InHand.nothing(TODAY), Habits.HOUSE))
        .hasMessageContaining("no mold for the vessel cog");
  }

  @Test
  void wicksAreCountedAndWaxIsWeighed() {
    MakePlan plan = plan(fortyLines(1), Map.of());
    assertThat(plan.picks())
        .filteredOn(p -> p.material().equals("tab-20"))
        .allMatch(p -> p.unit() == UnitKind.COUNT);
    assertThat(plan.shortages().keySet()).isEqualTo(plan.needs().byMaterial().keySet());
  }
}
