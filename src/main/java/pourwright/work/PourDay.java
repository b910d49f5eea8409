package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.card.CandleDesign;
import pourwright.card.PourCard;
import pourwright.card.ResolvedCandle;
import pourwright.material.MaterialBook;
import pourwright.order.Order;
import pourwright.order.OrderLine;
import pourwright.pour.Dose;
import pourwright.pour.MeltDay;
import pourwright.pour.PourGrouping;
import pourwright.pour.PourGrouping.Grouping;
import pourwright.pour.PourGrouping.Pitcher;
import pourwright.pour.PourGrouping.Pour;
import pourwright.pour.PourGrouping.ToFill;
import pourwright.pour.SubsetGrouping;

/**
 * The candles of a day grouped into pitchers and melts.
 *
 * @param grouping pitchers
 * @param melts charges of the melter, in order
 * @param proved candles proved for sale by pour card, into which what is left over may go
 */
public record PourDay(Grouping grouping, MeltDay melts, Map<String, List<String>> proved) {
  private static final PourGrouping PITCHERS = new SubsetGrouping();

  /** So many of one candle. */
  public record Wanted(String candle, int count) {}

  /**
   * Groups.
   *
   * @param melterG wax that the melter holds, in g
   * @throws pourwright.quantity.OutOfRange when a candle fits no pitcher or a pour no melter
   */
  public static PourDay of(
      Books books, List<Wanted> wanted, List<Pitcher> pitchers, double melterG) {
    Map<String, PourCard> cards = new HashMap<>();
    List<ToFill> candles = new ArrayList<>();
    Map<String, List<Double>> weighed = PourFill.weighed(books);
    for (Wanted want : wanted) {
      ResolvedCandle candle =
          books
              .cards()
              .current(Drawers.CANDLE, want.candle())
              .map(CardVersion::body)
              .map((CandleDesign d) -> d.resolve(Drawers.book(books)))
              .orElseThrow();
      PourCard pour = candle.pour().card();
      cards.put(pour.code(), pour);
      double grams =
          PourFill.of(weighed, candle, 0).netG().value() * (1 + pour.losses().wasteFraction());
      for (int i = 0; i < want.count(); i++) {
        candles.add(
            new ToFill(
                candle.design().code(),
                pour.code(),
                grams,
                pour.temperatures().pourFromC(),
                pour.temperatures().pourToC()));
      }
    }
    Grouping grouping = PITCHERS.group(candles, pitchers);
    MaterialBook materials = Drawers.book(books).materials();
    List<MeltDay.Job> jobs = grouping.pours().stream().map(p -> job(p, cards, materials)).toList();
    return new PourDay(grouping, MeltDay.of(jobs, melterG), proved(books));
  }

  private static MeltDay.Job job(Pour pour, Map<String, PourCard> cards, MaterialBook materials) {
    String code = pour.candles().get(0).melt();
    PourCard card = java.util.Objects.requireNonNull(cards.get(code));
    String wax = wax(card, materials);
    Dose dose =
        Dose.ofTotal(pour.meltG(), Dose.loadOfTotal(card.load(), card.loadOf()), Dose.LoadOf.TOTAL);
    return new MeltDay.Job(pour, wax, card.family(), dose.waxG());
  }

  /** As "Soft plant wax A", or with the share of each wax of a blend. */
  private static String wax(PourCard card, MaterialBook materials) {
    double parts = card.waxes().stream().mapToDouble(PourCard.Part::parts).sum();
    return card.waxes().stream()
        .map(
            w -> {
              String name = materials.get(w.material()).name();
              double percent = 100 * w.parts() / parts;
              return card.waxes().size() == 1
                  ? name
                  : String.format(Locale.ROOT, "%.4g %% %s", percent, name)
                      .replaceFirst("\\.?0+ %", " %");
            })
        .collect(Collectors.joining(", "));
  }

  private static Map<String, List<String>> proved(Books books) {
    Map<String, List<String>> proved = new HashMap<>();
    for (CardVersion<CandleDesign> card : books.cards().all(Drawers.CANDLE)) {
      boolean holds =
          books
              .burns()
              .proof(card.code(), card.version())
              .map(BurnTest.Proof::proved)
              .orElse(false);
      if (holds) {
        proved.computeIfAbsent(card.body().pour(), p -> new ArrayList<>()).add(card.body().name());
      }
    }
    return proved;
  }

  /**
   * What orders still want of each candle: lines less what was picked, less what stands ready or is
   * being poured now.
   */
  public static Map<String, Integer> stillToPour(Books books) {
    Map<String, Integer> wanted = new java.util.TreeMap<>();
    for (Order order : books.orders().wanting()) {
      Map<OrderLine.Key, Long> ids = books.orders().lineIds(order.number());
      Map<Long, Integer> filled = books.orders().filled(ids.values());
      for (OrderLine line : order.lines()) {
        Long id = ids.get(line.key());
        int open = line.quantity() - (id == null ? 0 : filled.getOrDefault(id, 0));
        wanted.merge(line.design(), Math.max(0, open), Integer::sum);
      }
    }
    books
        .pieces()
        .counts()
        .forEach(
            (of, count) -> {
              if (List.of("Poured", "Resting", "Rested").contains(of.state())) {
                wanted.computeIfPresent(of.design(), (d, n) -> (int) Math.max(0, n - count));
              }
            });
    for (Batch batch : books.batches().running()) {
      if (batch.plan().kind() == BatchKind.POUR) {
        for (BatchPlan.Makes makes : batch.plan().makes()) {
          wanted.computeIfPresent(makes.design(), (d, n) -> Math.max(0, n - makes.count()));
        }
      }
    }
    wanted.values().removeIf(n -> n <= 0);
    return wanted;
  }
}
