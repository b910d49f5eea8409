package pourwright.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pourwright.card.Amounts;
import pourwright.card.CardBook;
import pourwright.card.Mold;
import pourwright.card.ResolvedCandle;
import pourwright.card.ResolvedMix;
import pourwright.card.ResolvedPour;
import pourwright.order.OrderLine;
import pourwright.quantity.OutOfRange;

/**
 * Order lines to candles, pours, casts and material needs. What is there already is used first, the
 * earliest date first; losses are added; batches are cut to pitcher, molds and pot life.
 *
 * <p>Method and departures: docs/models/plan.md.
 */
public final class Explosion {
  private final CardBook book;
  private final InHand inHand;
  private final Habits habits;
  private final List<ClassKit> kits;
  private final Map<String, ResolvedCandle> resolved = new HashMap<>();

  private Explosion(CardBook book, InHand inHand, Habits habits, List<ClassKit> kits) {
    this.book = book;
    this.inHand = inHand;
    this.habits = habits;
    this.kits = kits;
  }

  /** One candle to be poured, for a line, or spare for those that fail. */
  private record Wanted(String design, LocalDate due, int line) {}

  /** One vessel to be cast and where it is cast, once that is known. */
  private record Seat(VesselKind kind, LocalDate due) {}

  /**
   * Works out what to make.
   *
   * @throws OutOfRange when a design, card or material is not there, or a vessel has no mold
   */
  public static MakePlan of(List<OrderLine> lines, CardBook book, InHand inHand, Habits habits) {
    return of(lines, List.of(), book, inHand, habits);
  }

  /** The same with classes, whose hour is fixed: what they need comes first. */
  public static MakePlan of(
      List<OrderLine> lines, List<ClassKit> classes, CardBook book, InHand inHand, Habits habits) {
    return new Explosion(book, inHand, habits, classes).explode(lines);
  }

  private ResolvedCandle candle(String design) {
    return resolved.computeIfAbsent(design, d -> book.candle(d).resolve(book));
  }

  private static LocalDate due(OrderLine line) {
    return line.dueOn() == null ? LocalDate.MAX : line.dueOn();
  }

  private MakePlan explode(List<OrderLine> unsorted) {
    List<OrderLine> lines = new ArrayList<>(unsorted);
    lines.sort(Comparator.comparing(Explosion::due).thenComparing(OrderLine::key));
    int[] fromStock = new int[lines.size()];
    List<Set<String>> pouredFor = new ArrayList<>();
    lines.forEach(l -> pouredFor.add(new LinkedHashSet<>()));
    ComingCandles poured = new ComingCandles(inHand.poured());
    List<Wanted> wanted = toPour(lines, fromStock, poured, pouredFor);
    List<Batch> pitchers = pitchers(wanted);
    List<Batch> classes = classes();
    List<Batch> vesselsFor = new ArrayList<>(classes);
    vesselsFor.addAll(pitchers);
    Map<VesselKind, Integer> ready = new HashMap<>(inHand.vessels());
    List<Seat> seats = new ArrayList<>();
    Map<VesselKind, List<Batch>> askers = new TreeMap<>();
    Map<Batch, Set<String>> after = new HashMap<>();
    Coming coming = new Coming(inHand.running());
    for (Batch pitcher : vesselsFor) {
      for (Wanted one : pitcher.candles) {
        VesselKind kind = VesselKind.of(candle(one.design()).design());
        if (ready.merge(kind, -1, Integer::sum) >= 0) {
          continue;
        }
        String running = coming.take(kind);
        if (running != null) {
          after.computeIfAbsent(pitcher, b -> new LinkedHashSet<>()).add(running);
        } else {
          seats.add(new Seat(kind, one.due()));
          askers.computeIfAbsent(kind, k -> new ArrayList<>()).add(pitcher);
        }
      }
    }
    List<CastJob> casts = new Mixings(book, habits).cut(withSpare(seats));
    suppliers(casts, askers)
        .forEach((b, of) -> after.computeIfAbsent(b, x -> new LinkedHashSet<>()).addAll(of));
    List<PourJob> pours = new ArrayList<>();
    for (Batch pitcher : pitchers) {
      pours.add(pourJob(pitcher, new ArrayList<>(after.getOrDefault(pitcher, Set.of()))));
    }
    Amounts needs = Amounts.NONE;
    for (RunningPour under : poured.used()) {
      needs = needs.plus(under.needs());
    }
    for (CastJob cast : casts) {
      needs = needs.plus(cast.needs());
    }
    for (PourJob pour : pours) {
      needs = needs.plus(pour.needs());
    }
    List<ClassJob> taught = new ArrayList<>();
    for (int i = 0; i < kits.size(); i++) {
      Batch batch = classes.get(i);
      taught.add(
          new ClassJob(
              batch.key, kits.get(i), new ArrayList<>(after.getOrDefault(batch, Set.of()))));
      needs = needs.plus(kits.get(i).needs());
    }
    return new MakePlan(
        served(lines, fromStock, pouredFor, pitchers),
        casts,
        coming.used(),
        poured.used(),
        pours,
        taught,
        Draws.of(poured.used(), casts, pours, taught, book.materials(), inHand),
        needs);
  }

  /** Each class with a vessel for every kit that is poured in it. */
  private List<Batch> classes() {
    List<Batch> all = new ArrayList<>();
    for (ClassKit kit : kits) {
      Batch batch = new Batch("K" + (all.size() + 1), candle(kit.of().design()).design().pour());
      for (int n = 0; n < kit.vessels(); n++) {
        batch.candles.add(new Wanted(kit.of().design(), kit.of().day(), -1));
      }
      all.add(batch);
    }
    return all;
  }

  /** Candles to pour one by one, earliest date first, spares for failures last. */
  private List<Wanted> toPour(
      List<OrderLine> lines, int[] fromStock, ComingCandles poured, List<Set<String>> pouredFor) {
    Map<String, Integer> stock = new HashMap<>(inHand.candles());
    Map<String, Integer> count = new TreeMap<>();
    Map<String, LocalDate> last = new HashMap<>();
    List<Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      OrderLine line = lines.get(i);
      candle(line.design());
      fromStock[i] = Math.min(line.quantity(), stock.getOrDefault(line.design(), 0));
      stock.merge(line.design(), -fromStock[i], Integer::sum);
      for (int n = fromStock[i]; n < line.quantity(); n++) {
        String underway = poured.take(line.design());
        if (underway != null) {
          pouredFor.get(i).add(underway);
          continue;
        }
        wanted.add(new Wanted(line.design(), due(line), i));
        count.merge(line.design(), 1, Integer::sum);
        last.put(line.design(), due(line));
      }
    }
    count.forEach(
        (design, good) -> {
          LocalDate due = last.getOrDefault(design, LocalDate.MAX);
          for (int n = good; n < withLoss(good, habits.candleReject()); n++) {
            wanted.add(new Wanted(design, due, -1));
          }
        });
    wanted.sort(Comparator.comparing(Wanted::due).thenComparing(Wanted::design));
    return wanted;
  }

  /** How many to begin so that so many are good, on the average, to the nearest whole piece. */
  static int withLoss(int good, double reject) {
    return (int) Math.round(good / (1 - reject));
  }

  private List<Seat> withSpare(List<Seat> seats) {
    Map<VesselKind, Integer> count = new TreeMap<>();
    Map<VesselKind, LocalDate> last = new HashMap<>();
    for (Seat seat : seats) {
      count.merge(seat.kind(), 1, Integer::sum);
      last.put(seat.kind(), seat.due());
    }
    List<Seat> all = new ArrayList<>(seats);
    count.forEach(
        (kind, good) -> {
          for (int n = good; n < withLoss(good, habits.vesselReject()); n++) {
            all.add(new Seat(kind, last.getOrDefault(kind, LocalDate.MAX)));
          }
        });
    return all;
  }

  /** Candles that go into one pitcher. */
  private static final class Batch {
    private final String key;
    private final String pour;
    private final List<Wanted> candles = new ArrayList<>();
    private double grams;

    Batch(String key, String pour) {
      this.key = key;
      this.pour = pour;
    }
  }

  private List<Batch> pitchers(List<Wanted> wanted) {
    Map<String, Batch> open = new HashMap<>();
    List<Batch> all = new ArrayList<>();
    for (Wanted one : wanted) {
      String pour = candle(one.design()).design().pour();
      double net = candle(one.design()).netG().value();
      Batch batch = open.get(pour);
      if (batch == null || total(pour, batch.grams + net) > habits.pitcherG()) {
        batch = new Batch("P" + (all.size() + 1), pour);
        all.add(batch);
        open.put(pour, batch);
      }
      batch.candles.add(one);
      batch.grams += net;
    }
    return all;
  }

  private double total(String pour, double netG) {
    return book.pour(pour).resolve(book.materials()).melt(netG).totalG();
  }

  private PourJob pourJob(Batch batch, List<String> after) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    batch.candles.forEach(c -> counts.merge(c.design(), 1, Integer::sum));
    ResolvedPour pour = book.pour(batch.pour).resolve(book.materials());
    ResolvedPour.Melt melt = pour.melt(batch.grams);
    Amounts needs = melt.materials();
    List<PourJob.Fill> fills = new ArrayList<>();
    for (var count : counts.entrySet()) {
      ResolvedCandle candle = candle(count.getKey());
      int candles = count.getValue();
      needs = needs.plus(candle.wicking().times(candles)).plus(candle.boxes(candles));
      fills.add(new PourJob.Fill(count.getKey(), candles, candle.netG().value()));
    }
    return new PourJob(
        batch.key, batch.pour, fills, needs, melt.waxG(), melt.fragranceG(), melt.totalG(), after);
  }

  /** Which casts each pitcher waits for: the n-th vessel asked for is the n-th one cast. */
  private static Map<Batch, Set<String>> suppliers(
      List<CastJob> casts, Map<VesselKind, List<Batch>> askers) {
    Map<VesselKind, Integer> given = new HashMap<>();
    Map<Batch, Set<String>> after = new HashMap<>();
    for (CastJob cast : casts) {
      for (CastJob.Fill fill : cast.fills()) {
        VesselKind kind = new VesselKind(fill.vessel(), cast.mix(), cast.finish());
        List<Batch> asking = askers.getOrDefault(kind, List.of());
        for (int i = 0; i < fill.pieces(); i++) {
          int n = given.merge(kind, 1, Integer::sum) - 1;
          if (n < asking.size()) {
            after.computeIfAbsent(asking.get(n), b -> new LinkedHashSet<>()).add(cast.key());
          }
        }
      }
    }
    return after;
  }

  private static List<MakePlan.Served> served(
      List<OrderLine> lines, int[] fromStock, List<Set<String>> pours, List<Batch> pitchers) {
    for (Batch pitcher : pitchers) {
      for (Wanted one : pitcher.candles) {
        if (one.line() >= 0) {
          pours.get(one.line()).add(pitcher.key);
        }
      }
    }
    List<MakePlan.Served> served = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      served.add(new MakePlan.Served(lines.get(i), fromStock[i], new ArrayList<>(pours.get(i))));
    }
    return served;
  }

  /** Cuts vessels into mixings: by mix and finish, to free molds and what one mixing can fill. */
  private static final class Mixings {
    private final CardBook book;
    private final Habits habits;
    private final List<CastJob> casts = new ArrayList<>();

    Mixings(CardBook book, Habits habits) {
      this.book = book;
      this.habits = habits;
    }

    List<CastJob> cut(List<Seat> seats) {
      List<Seat> left = new ArrayList<>(seats);
      left.sort(Comparator.comparing(Seat::due).thenComparing(Seat::kind));
      while (!left.isEmpty()) {
        left = castOne(left);
      }
      return casts;
    }

    private List<Seat> castOne(List<Seat> left) {
      VesselKind first = left.get(0).kind();
      Map<String, Integer> pieces = new LinkedHashMap<>();
      List<Seat> later = new ArrayList<>();
      int room = habits.piecesPerMixing();
      for (Seat seat : left) {
        VesselKind kind = seat.kind();
        boolean fits = kind.mix().equals(first.mix()) && kind.finish().equals(first.finish());
        int molds = room(kind.vessel());
        if (fits && room > 0 && pieces.getOrDefault(kind.vessel(), 0) < molds) {
          pieces.merge(kind.vessel(), 1, Integer::sum);
          room--;
        } else {
          later.add(seat);
        }
      }
      casts.add(job(first, pieces));
      return later;
    }

    private int room(String vessel) {
      int room =
          book.moldsFor(vessel).stream()
              .filter(m -> !m.leftoverOnly())
              .mapToInt(m -> m.count() * m.piecesPerCast())
              .sum();
      if (room == 0) {
        throw new OutOfRange(
            "mold",
            "there is no mold for the vessel " + vessel,
            "write one down on the drawing board, or count the ones that are left");
      }
      return room;
    }

    private CastJob job(VesselKind kind, Map<String, Integer> pieces) {
      ResolvedMix mix = book.mix(kind.mix()).resolve(book.materials());
      double volume = 0;
      Amounts needs = Amounts.NONE;
      List<CastJob.Fill> fills = new ArrayList<>();
      for (var entry : pieces.entrySet()) {
        volume += book.vessel(entry.getKey()).mixMl().value() * entry.getValue();
        needs = needs.plus(sealers(kind, entry.getKey()).times(entry.getValue()));
        fill(entry.getKey(), entry.getValue(), fills);
      }
      ResolvedMix.Mixing mixing = mix.mixing(volume);
      return new CastJob(
          "C" + (casts.size() + 1),
          kind.mix(),
          kind.finish(),
          fills,
          needs.plus(mixing.materials()),
          mixing.waterG(),
          mixing.totalG(),
          mixing.freshMl(),
          mixing.warnings());
    }

    private Amounts sealers(VesselKind kind, String vessel) {
      return ResolvedCandle.sealers(
          book.vessel(vessel), book.finish(kind.finish()), book.materials());
    }

    private void fill(String vessel, int pieces, List<CastJob.Fill> fills) {
      int left = pieces;
      for (Mold mold : book.moldsFor(vessel)) {
        int here = mold.leftoverOnly() ? 0 : Math.min(left, mold.count() * mold.piecesPerCast());
        if (here > 0) {
          fills.add(new CastJob.Fill(vessel, mold.code(), here));
          left -= here;
        }
      }
    }
  }
}
