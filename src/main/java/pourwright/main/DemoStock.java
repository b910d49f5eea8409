package pourwright.main;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.card.Amounts;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.material.UnitKind;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.Price;
import pourwright.stock.Shelf;
import pourwright.work.CountLot;
import pourwright.work.ReceiveLot;
import pourwright.work.RecordStep;
import pourwright.work.WriteOff;

/** Deliveries of the demo studio, and what its batches draw. */
final class DemoStock {
  private final DemoHistory history;
  private final Map<String, Material> materials = new HashMap<>();
  private final Map<String, Long> left = new HashMap<>();
  private final List<Long> lots = new ArrayList<>();
  private int nth = 100;
  private long badLot;

  DemoStock(DemoHistory history, List<Material> all) {
    this.history = history;
    all.forEach(m -> materials.put(m.code(), m));
  }

  Material material(String code) {
    Material material = materials.get(code);
    if (material == null) {
      throw new IllegalArgumentException("the demo has no " + code);
    }
    return material;
  }

  /** The lot of fragrance that went bad, 0 before it came. */
  long badLot() {
    return badLot;
  }

  /** A usual pack: what the studio buys at a time, in g, ml or pieces. */
  private double pack(MaterialKind kind) {
    double busy = history.size().busy() ? 2.5 : 1;
    return busy
        * switch (kind) {
          case POWDER -> 20_000;
          case SAND -> 15_000;
          case WAX -> 12_000;
          case FRAGRANCE -> 1_500;
          case SEALER -> 2_500;
          case PIGMENT -> 800;
          case WICK, TAB, STICKER -> 200;
          case PACKAGING, LABEL -> 100;
          default -> 60;
        };
  }

  private static double centsPerUnit(MaterialKind kind) {
    return switch (kind) {
      case POWDER -> 0.22;
      case SAND -> 0.08;
      case WAX -> 0.95;
      case FRAGRANCE -> 7.5;
      case SEALER -> 2.4;
      case PIGMENT -> 1.4;
      case WICK -> 14;
      case TAB, STICKER -> 4;
      case PACKAGING -> 85;
      case LABEL -> 9;
      default -> 30;
    };
  }

  /** Receives a delivery. */
  long receive(String code) {
    return receive(code, null);
  }

  /** The same with so many days left, or as its material keeps. */
  private long receive(String code, @Nullable Integer daysLeft) {
    Material material = material(code);
    double amount = Math.rint(pack(material.kind()) * (0.7 + 0.6 * history.random().nextDouble()));
    long units = material.unit().toSmall(amount);
    LocalDate today = history.today();
    Integer closed = material.shelfLife().closedDays();
    LocalDate usual = closed == null ? null : today.plusDays(closed + history.random().nextInt(60));
    LocalDate expires = daysLeft == null ? usual : today.plusDays(daysLeft);
    long cents = Math.round(amount * centsPerUnit(material.kind()));
    String lot = (material.kind() == MaterialKind.FRAGRANCE ? "LY" : "NQ") + "-" + nth++;
    var shelf =
        history
            .studio()
            .receiveLot
            .run(
                history.act(),
                new ReceiveLot.Request(
                    code,
                    lot,
                    new Amount(material.unit(), units),
                    material.kind() == MaterialKind.FRAGRANCE ? "lantern-yard" : "north-quay",
                    today,
                    expires,
                    new Price(cents, "EUR")))
            .made();
    left.merge(code, units, Long::sum);
    lots.add(shelf.lot().id());
    return shelf.lot().id();
  }

  /** Uses old packs of a material up on trials, so that three are left. */
  void clearOld(String code) {
    List<Shelf> packs = new ArrayList<>(history.studio().look(books -> books.lots().shelves(code)));
    packs.removeIf(s -> s.held() || s.lot().id() == badLot);
    packs.sort(Comparator.comparingLong(s -> s.lot().id()));
    for (int i = 0; i + 3 < packs.size(); i++) {
      Shelf old = packs.get(i);
      boolean past = !old.isDrawable(history.today());
      history
          .studio()
          .writeOff
          .run(
              history.act(),
              new WriteOff.Request(old.lot().id(), old.onHand(), past ? Cause.WASTE : Cause.TEST));
    }
  }

  /** The lot that will turn out bad; it comes with so few days left that it is used first. */
  void receiveBadLot(String code, int daysLeft) {
    badLot = receive(code, daysLeft);
  }

  /** What a step takes, buying first where too little is left. */
  List<RecordStep.Taken> take(Amounts amounts) {
    List<RecordStep.Taken> taken = new ArrayList<>();
    amounts
        .byMaterial()
        .forEach(
            (code, amount) -> {
              Material material = material(code);
              double weighed =
                  material.unit() == UnitKind.COUNT
                      ? amount
                      : amount * (0.985 + 0.03 * history.random().nextDouble());
              long units = Math.max(1, material.unit().toSmall(Math.rint(weighed * 10) / 10));
              while (drawable(material) < units * 2) {
                receive(code);
              }
              taken.add(new RecordStep.Taken(code, null, new Amount(material.unit(), units)));
            });
    return taken;
  }

  /** What may be drawn; asked of the books, for lots expire and are held. */
  private long drawable(Material material) {
    return history
        .studio()
        .look(
            books ->
                books.lots().shelves(material.code()).stream()
                    .filter(s -> s.isDrawable(history.today()))
                    .mapToLong(s -> s.onHand().units())
                    .sum());
  }

  /** Counts a lot that has something left; scales and spills differ a little. */
  void count() {
    if (lots.isEmpty()) {
      return;
    }
    long id = lots.get(lots.size() - 1 - history.random().nextInt(Math.min(40, lots.size())));
    history
        .studio()
        .look(books -> books.lots().shelf(id))
        .filter(s -> s.onHand().units() > 1000)
        .ifPresent(
            s -> {
              long off = Math.round(s.onHand().units() * 0.004 * history.random().nextGaussian());
              Amount counted = new Amount(s.onHand().kind(), Math.max(0, s.onHand().units() + off));
              history.studio().countLot.run(history.act(), new CountLot.Request(id, counted, null));
            });
  }
}
