package pourwright.main;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CandleDesign;
import pourwright.stock.Trace;
import pourwright.work.AfterSale;
import pourwright.work.Customer;
import pourwright.work.RecordAfterSale;
import pourwright.work.Subject;

/**
 * The story of the bad lot: a fragrance that came with little life left is poured, three of its
 * candles are sold, three buyers write, and the lot is held with some of its candles still on the
 * shelf. So Hold and Trace have something to show on any day.
 */
final class DemoRecall {
  private static final String SCENT = "scent-hearth";
  private static final int LIFE_DAYS = 120;
  private static final int HELD_AFTER_WEEKS = 9;
  private static final int POURS = 2;

  /** Invented buyers. */
  private static final Map<String, String> BUYERS = buyers();

  private final DemoHistory history;
  private final DemoStock stock;
  private final DemoMaking making;
  private final DemoShop shop;
  private final List<CandleDesign> designs;
  private final Map<Long, String> sold = new LinkedHashMap<>();
  private int pours;

  DemoRecall(
      DemoHistory history,
      DemoStock stock,
      DemoMaking making,
      DemoShop shop,
      List<CandleDesign> designs) {
    this.history = history;
    this.stock = stock;
    this.making = making;
    this.shop = shop;
    this.designs = designs.stream().filter(d -> d.code().contains("hearth")).toList();
  }

  private static Map<String, String> buyers() {
    Map<String, String> buyers = new LinkedHashMap<>();
    buyers.put("c-reading-room", "Harbour Reading Room");
    buyers.put("c-tea-house", "Tolbooth Tea House");
    buyers.put("c-net-loft", "Net Loft Lodgings");
    return buyers;
  }

  /** Lays the story out; it begins seven months before the end, or a month after the beginning. */
  void plan(LocalDate first) {
    LocalDate bad = LocalDate.ofInstant(history.end(), history.zone()).minusMonths(7);
    LocalDate came = bad.isAfter(first.plusDays(120)) ? bad : first.plusDays(120);
    history.on(came, () -> stock.receiveBadLot(SCENT, LIFE_DAYS));
    for (int day = 3; day < 7 * (HELD_AFTER_WEEKS - 4); day += 2) {
      history.on(came.plusDays(day), this::pour);
    }
    LocalDate held = came.plusWeeks(HELD_AFTER_WEEKS);
    for (int day = 13; day > 4; day--) {
      history.on(held.minusDays(day), this::sell);
    }
    history.on(held.minusDays(2), this::write);
    history.on(held, this::hold);
  }

  /** A candle that may be sold is poured rather than one that may not yet. */
  private void pour() {
    Optional<CandleDesign> most =
        designs.stream()
            .filter(d -> making.tight(d.vessel()).size() > 2)
            .max(
                Comparator.comparing((CandleDesign d) -> shop.maySell(d.code()))
                    .thenComparing(d -> making.tight(d.vessel()).size()));
    if (pours < POURS && most.isPresent()) {
      pours++;
      making.pour(most.get(), 4);
    }
  }

  /** Candles of the bad lot that stand on the shelf, with their design. */
  private Map<Long, CandleDesign> onShelf() {
    Trace.Reached reached =
        history.studio().traceOnward(new Trace.Node(Trace.Kind.LOT, stock.badLot()));
    Map<Long, CandleDesign> found = new LinkedHashMap<>();
    for (CandleDesign design : designs) {
      for (long piece : making.shelf(design.code())) {
        if (shop.maySell(design.code(), piece)
            && reached.nodes().contains(new Trace.Node(Trace.Kind.PIECE, piece))) {
          found.put(piece, design);
        }
      }
    }
    return found;
  }

  private void sell() {
    Map<Long, CandleDesign> there = onShelf();
    List<Long> pieces = new ArrayList<>(there.keySet());
    List<String> buyers = List.copyOf(BUYERS.keySet());
    for (int i = 0; sold.size() < buyers.size() && i + 1 < pieces.size(); i++) {
      String buyer = buyers.get(sold.size());
      history
          .studio()
          .customers
          .put(
              history.act(),
              new Customer(
                  buyer,
                  BUYERS.getOrDefault(buyer, ""),
                  (3 + i) + " Quay Row, Harbour",
                  "",
                  "",
                  ""));
      CandleDesign design = there.get(pieces.get(i));
      if (design != null) {
        shop.sellTo(buyer, design.code(), pieces.get(i));
        sold.put(pieces.get(i), buyer);
      }
    }
  }

  private void write() {
    sold.forEach(
        (piece, buyer) ->
            history
                .studio()
                .afterSale
                .run(
                    history.act("smells sharp, not as the one before"),
                    new RecordAfterSale.Request(
                        AfterSale.Kind.COMPLAINT, piece, null, "", null, 0)));
  }

  private void hold() {
    if (stock.badLot() > 0) {
      history
          .studio()
          .placeHold
          .run(
              history.act(),
              Subject.of(Subject.Kind.LOT, stock.badLot()),
              "smells sharp, three buyers wrote; ask the supplier");
    }
  }
}
