package pourwright.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import pourwright.card.Amounts;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.card.Mold;
import pourwright.card.ResolvedCandle;
import pourwright.cost.Channel;
import pourwright.cost.Slate;
import pourwright.cost.Slate.Named;
import pourwright.cost.Valuation;
import pourwright.plan.Habits;
import pourwright.quantity.Origin;
import pourwright.quantity.Sourced;

/**
 * Lays the slate of every candle out of the books: materials at what their lots cost, hands by the
 * house's minutes, failures by what was scrapped. Settings hold wage, overhead, channels and
 * prices.
 */
public final class SlateBook {
  private static final double MINUTES_UNCERTAINTY = 0.25;
  private static final double LIFE_UNCERTAINTY = 0.25;
  private static final double REJECT_UNCERTAINTY = 0.4;
  private static final double HOUSE_MOLD_PRICE = 35;
  private static final double MINOR = 100;

  private final Books books;
  private final CardBook cards;
  private final Map<String, String> settings;
  private final StockValues values;
  private final Valuation.Method method;
  private final long newest;
  private final String pieces;
  private final Map<String, StockValue> looked = new HashMap<>();
  private final Set<String> designs = new TreeSet<>();
  private @Nullable RecordedMinutes minutes;
  private @Nullable Map<String, Integer> lives;

  /** A way to sell, its key, its terms, and the share of the shop price that is asked there. */
  public record Terms(String name, String key, Channel channel, double ofShopPrice) {}

  /**
   * Hands on one piece in a step.
   *
   * @param planned by the house's habits
   * @param recorded as it was done; empty where too few batches were recorded step by step
   */
  public record Minutes(String step, double planned, Optional<RecordedMinutes.Recorded> recorded) {
    private Named named() {
      return recorded
          .map(r -> new Named(step, Sourced.measured(r.minutes(), r.relativeUncertainty())))
          .orElseGet(() -> new Named(step, Sourced.typical(planned, MINUTES_UNCERTAINTY)));
    }
  }

  /**
   * A laid-out slate.
   *
   * @param design the candle
   * @param byTerms the slate in each channel
   * @param unpriced materials whose price is not known and that count as nothing
   * @param moldDays days a piece keeps its mold
   * @param minutes hands by step, as planned and as recorded
   */
  public record Laid(
      CandleDesign design,
      Map<Terms, Slate> byTerms,
      List<String> unpriced,
      double moldDays,
      List<Minutes> minutes) {
    /** The slate at the shop price, the first of the channels. */
    public Slate atShop() {
      return byTerms.values().iterator().next();
    }
  }

  /** The slates of these books. */
  public SlateBook(Books books) {
    this(books, new StockValues());
  }

  /** The slates of these books, with the values that are known from the last look. */
  public SlateBook(Books books, StockValues values) {
    this.books = books;
    this.settings = books.settings().all();
    this.values = values;
    this.cards = Drawers.book(books);
    this.method = StockValue.method(settings.get("slate.method"));
    this.newest = books.lots().newestMovement();
    this.pieces = books.pieces().edition();
  }

  private Optional<String> setting(String key) {
    return Optional.ofNullable(settings.get(key));
  }

  private double setting(String key, double absent) {
    return setting(key).map(SlateBook::number).orElse(absent);
  }

  private static double number(String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      return 0;
    }
  }

  /** What an hour of hands is paid. House: 18. */
  public double wage() {
    return setting("slate.wage", 18);
  }

  /** Overhead by the hour of hands. House: 4. */
  public double overhead() {
    return setting("slate.overhead", 4);
  }

  /** Margin of price that a suggested price leaves. House: 35 %. */
  public double margin() {
    return Math.min(0.8, setting("slate.margin", 0.35));
  }

  /** Read once for all candles. */
  private Map<String, Integer> lives() {
    Map<String, Integer> known = lives;
    if (known == null) {
      known = MoldCare.lives(books);
      lives = known;
    }
    return known;
  }

  /** What making one mold cost, spread over its life. House: 35. */
  public double moldCost(String mold) {
    return setting("slate.mold." + mold, HOUSE_MOLD_PRICE);
  }

  /** What a market day costs before the first sale. House: 120. */
  public double marketDay() {
    return setting("slate.market-day", 120);
  }

  /** The channels with their terms: shop, stall, wholesale, goods left with a shop. House. */
  public List<Terms> terms() {
    return List.of(
        terms("own shop", "shop", 0.05, 0.30, 1),
        terms("market stall", "stall", 0.02, 0, 1),
        terms("wholesale", "wholesale", 0, 0, 0.5),
        terms("left with a shop", LeaveWithShop.CHANNEL, 0.4, 0, 1));
  }

  private Terms terms(String name, String key, double fee, double fixed, double share) {
    String head = "slate.channel." + key;
    Channel channel =
        new Channel(
            Math.min(0.9, setting(head + ".fee", fee)),
            setting(head + ".fixed", fixed),
            setting(head + ".postage", 0));
    return new Terms(name, key, channel, setting(head + ".share", share));
  }

  /** Currency of all amounts. */
  public String currency() {
    return setting("currency").orElse("EUR");
  }

  /** What all slates are laid out of: cards, settings, movements, and how pieces fared. */
  public List<Object> edition() {
    return List.of(books.cards().edition(), settings, newest, pieces, books.batches().newestDeed());
  }

  /** The slates of all candles. */
  public List<Laid> all() {
    List<CandleDesign> written = cards.all(CandleDesign.class);
    written.forEach(d -> designs.addAll(List.of(d.code(), d.vessel())));
    List<Laid> all = new ArrayList<>();
    written.forEach(d -> lay(d, Optional.empty()).ifPresent(all::add));
    return all;
  }

  /** One candle's slate, at a price that is only looked at or at the one written down. */
  public Optional<Laid> of(String candle, Optional<Double> price) {
    return books
        .cards()
        .current(Drawers.CANDLE, candle)
        .flatMap(version -> lay(version.body(), price));
  }

  private Optional<Laid> lay(CandleDesign design, Optional<Double> asked) {
    ResolvedCandle candle;
    try {
      candle = design.resolve(cards);
    } catch (pourwright.quantity.OutOfRange e) {
      return Optional.empty();
    }
    TreeSet<String> unpriced = new TreeSet<>();
    List<Minutes> minutes = steps(candle);
    Slate.Inputs inputs = inputs(candle, unpriced, minutes);
    List<Terms> terms = terms();
    double cost = new Slate(inputs, terms.get(0).channel(), exact(1)).cost().value();
    double shop =
        asked
            .or(() -> setting("slate.price." + design.code()).map(SlateBook::number))
            .orElseGet(() -> terms.get(0).channel().priceForMarginOfPrice(cost, margin()));
    Map<Terms, Slate> byTerms = new LinkedHashMap<>();
    for (Terms t : terms) {
      byTerms.put(t, new Slate(inputs, t.channel(), exact(Math.max(0.01, shop * t.ofShopPrice()))));
    }
    double moldDays = candle.mix().card().times().demoldFromH() / 24;
    return Optional.of(
        new Laid(design, byTerms, List.copyOf(unpriced), Math.max(0.05, moldDays), minutes));
  }

  private Slate.Inputs inputs(
      ResolvedCandle candle, TreeSet<String> unpriced, List<Minutes> minutes) {
    Amounts made =
        candle
            .mix()
            .mixing(candle.vessel().castMl() == null ? drawnMl(candle) : measuredMl(candle))
            .materials()
            .plus(candle.sealers())
            .plus(candle.wicking())
            .plus(candle.pour().melt(candle.netG().value()).materials());
    List<Named> materials = new ArrayList<>();
    made.byMaterial()
        .forEach(
            (code, amount) ->
                materials.add(
                    new Named(cards.materials().get(code).name(), money(code, amount, unpriced))));
    double boxed = 0;
    Amounts boxes = candle.boxes(candle.design().piecesPerBox());
    for (Map.Entry<String, Double> box : boxes.byMaterial().entrySet()) {
      boxed +=
          money(box.getKey(), box.getValue(), unpriced).value() / candle.design().piecesPerBox();
    }
    Mold mold = cards.moldsFor(candle.vessel().code()).stream().findFirst().orElse(null);
    double life =
        mold == null
            ? Mold.LIFE_CASTS
            : lives().getOrDefault(mold.code(), mold.lifeCasts()) * (double) mold.piecesPerCast();
    String moldKey = "slate.mold." + (mold == null ? candle.vessel().code() : mold.code());
    return new Slate.Inputs(
        materials,
        minutes.stream().map(Minutes::named).toList(),
        exact(wage()),
        exact(overhead()),
        reject(candle),
        Sourced.typical(setting(moldKey, HOUSE_MOLD_PRICE), 0.2),
        Sourced.typical(life, LIFE_UNCERTAINTY),
        exact(boxed));
  }

  private static double drawnMl(ResolvedCandle candle) {
    return candle.vessel().hollow().wallMl();
  }

  private static double measuredMl(ResolvedCandle candle) {
    Sourced measured = candle.vessel().castMl();
    return measured == null ? drawnMl(candle) : measured.value();
  }

  private static Sourced exact(double value) {
    return Sourced.exact(value, Origin.MEASURED_HERE);
  }

  private Sourced money(String material, double usualUnits, TreeSet<String> unpriced) {
    StockValue value = looked.computeIfAbsent(material, m -> values.of(books, m, method, newest));
    Optional<Sourced> perUnit = value.perUnit();
    if (perUnit.isEmpty()) {
      unpriced.add(cards.materials().get(material).name());
      return exact(0);
    }
    double small = usualUnits * cards.materials().get(material).unit().smallUnitsPerUnit();
    return new Sourced(
        small * perUnit.get().value() / MINOR,
        perUnit.get().relativeUncertainty(),
        perUnit.get().origin());
  }

  private List<Minutes> steps(ResolvedCandle candle) {
    Habits house = Habits.HOUSE;
    Habits.Hands hands = house.hands();
    int coats = candle.finish().coats().size();
    RecordedMinutes recorded = recorded();
    return List.of(
        new Minutes(
            "cast",
            hands.mix() / house.piecesPerMixing() + hands.fill() + hands.demold(),
            recorded.of(candle.vessel().code())),
        new Minutes("seal", coats * hands.coat() + 2 * hands.test(), Optional.empty()),
        new Minutes(
            "pour",
            candle.design().wicks().count() * hands.wick() + hands.pour() + hands.trim(),
            recorded.of(candle.design().code())),
        new Minutes("pack", hands.box() / candle.design().piecesPerBox(), Optional.empty()));
  }

  private RecordedMinutes recorded() {
    RecordedMinutes known = minutes;
    if (known == null) {
      known = values.minutes(books);
      minutes = known;
    }
    return known;
  }

  /** Share scrapped of the latest ones; the house's where fewer than ten were made. */
  private Sourced reject(ResolvedCandle candle) {
    double made = 0;
    double scrapped = 0;
    for (String design : List.of(candle.design().code(), candle.vessel().code())) {
      PieceBook.Fared fared = values.fared(books, pieces, design, designs);
      made += fared.made();
      scrapped += fared.scrapped();
    }
    if (made >= 10 && scrapped < made) {
      return Sourced.measured(scrapped / made, 0);
    }
    double house = 1 - (1 - Habits.HOUSE.vesselReject()) * (1 - Habits.HOUSE.candleReject());
    return Sourced.typical(house, REJECT_UNCERTAINTY);
  }
}
