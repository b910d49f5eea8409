package pourwright.work;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import pourwright.card.CandleDesign;
import pourwright.card.Finish;
import pourwright.card.MixCard;
import pourwright.card.PourCard;
import pourwright.card.ResolvedCandle;
import pourwright.card.ResolvedPour;
import pourwright.card.Vessel;
import pourwright.card.WickPlan;
import pourwright.label.Proof;
import pourwright.material.MaterialBook;
import pourwright.material.MaterialKind;
import pourwright.pour.Dose;

/**
 * The cards that a candle is made by, each in one version: what stands now, what stood at a moment,
 * or what a piece was really made by.
 *
 * @param candle its own card
 * @param pour what is poured
 * @param vessel its vessel
 * @param mix what the vessel is cast from
 * @param finish how the vessel is finished
 */
public record CandleCards(
    CardVersion<CandleDesign> candle,
    CardVersion<PourCard> pour,
    CardVersion<Vessel> vessel,
    CardVersion<MixCard> mix,
    CardVersion<Finish> finish) {

  /** The cards as they are now; nothing when there is no such candle or a card of it is missing. */
  static Optional<CandleCards> now(Books books, String code) {
    return books.cards().current(Drawers.CANDLE, code).flatMap(c -> of(books, c, null));
  }

  /** The cards that a version of a candle's card named at a moment. */
  static Optional<CandleCards> at(Books books, CardVersion<CandleDesign> candle, Instant moment) {
    return of(books, candle, moment);
  }

  private static Optional<CandleCards> of(
      Books books, CardVersion<CandleDesign> candle, @Nullable Instant moment) {
    CandleDesign design = candle.body();
    var pour = standing(books, Drawers.POUR, design.pour(), moment);
    var vessel = standing(books, Drawers.VESSEL, design.vessel(), moment);
    var mix = standing(books, Drawers.MIX, design.mix(), moment);
    var finish = standing(books, Drawers.FINISH, design.finish(), moment);
    boolean all = pour.isPresent() && vessel.isPresent() && mix.isPresent() && finish.isPresent();
    return all
        ? Optional.of(new CandleCards(candle, pour.get(), vessel.get(), mix.get(), finish.get()))
        : Optional.empty();
  }

  private static <T> Optional<CardVersion<T>> standing(
      Books books, Drawer<T> drawer, String code, @Nullable Instant moment) {
    Optional<CardVersion<T>> current = books.cards().current(drawer, code);
    if (moment == null || current.filter(c -> !c.at().isAfter(moment)).isPresent()) {
      return current;
    }
    return books.cards().history(drawer, code).stream()
        .filter(v -> !v.at().isAfter(moment))
        .findFirst();
  }

  /** The same with other versions of the pour card and the mix card, where they are on file. */
  CandleCards madeBy(Books books, @Nullable Integer pourVersion, MadeIn cast) {
    return new CandleCards(
        candle,
        version(books, pour, pourVersion),
        version(books, vessel, cast.vesselVersion()),
        cast.mix() == null
            ? mix
            : books
                .cards()
                .version(Drawers.MIX, cast.mix(), cast.mixVersion() == null ? 1 : cast.mixVersion())
                .orElse(mix),
        finish);
  }

  /**
   * The cast that a vessel came out of, by its cards; nulls for a bought vessel.
   *
   * @param mix code of the mix card
   * @param mixVersion its version
   * @param vesselVersion version of the vessel's card
   */
  record MadeIn(
      @Nullable String mix, @Nullable Integer mixVersion, @Nullable Integer vesselVersion) {
    static final MadeIn BOUGHT = new MadeIn(null, null, null);
  }

  private static <T> CardVersion<T> version(
      Books books, CardVersion<T> card, @Nullable Integer version) {
    return version == null || version == card.version()
        ? card
        : books.cards().version(card.kind(), card.code(), version).orElse(card);
  }

  /** Every card with its materials. */
  public ResolvedCandle resolve(MaterialBook materials) {
    return new ResolvedCandle(
        candle.body(),
        vessel.body(),
        mix.body().resolve(materials),
        finish.body(),
        pour.body().resolve(materials),
        materials);
  }

  /** The combination as a proof for sale compares it. */
  public Proof combination(MaterialBook materials) {
    ResolvedPour resolved = pour.body().resolve(materials);
    List<ResolvedPour.Share> dyes =
        resolved.extras().stream().filter(s -> s.material().kind() == MaterialKind.DYE).toList();
    List<ResolvedPour.Share> additives =
        resolved.extras().stream().filter(s -> s.material().kind() != MaterialKind.DYE).toList();
    String wax = shares(resolved.waxes(), true);
    return new Proof(
        additives.isEmpty() ? wax : wax + " with " + shares(additives, false),
        shares(resolved.fragrances(), true),
        Dose.loadOfTotal(pour.body().load(), pour.body().loadOf()),
        wick(candle.body().wicks()),
        filledVessel(),
        finish.body().coats().stream()
            .map(c -> c.sealer() + " " + c.where().name().toLowerCase(Locale.ROOT))
            .collect(Collectors.joining(", ")),
        shares(dyes, false));
  }

  /** Shares are left out where a material stands alone and they are shares of all. */
  private static String shares(List<ResolvedPour.Share> shares, boolean ofAll) {
    boolean alone = ofAll && shares.size() == 1;
    return shares.stream()
        .map(s -> s.material().code() + (alone ? "" : " " + percent(s.share())))
        .sorted()
        .collect(Collectors.joining(", "));
  }

  private static String percent(double fraction) {
    return String.format(Locale.ROOT, "%.3f", fraction * 100).replaceAll("\\.?0+$", "") + " %";
  }

  private static String wick(WickPlan wicks) {
    String tab = wicks.tab();
    String cut = wicks.cutMm() == 0 ? "" : ", cut to " + millimetres(wicks.cutMm());
    String places =
        wicks.positionsMm().isEmpty()
            ? ""
            : wicks.positionsMm().stream()
                .map(p -> p.stream().map(CandleCards::plain).collect(Collectors.joining("/")))
                .collect(Collectors.joining(", ", ", at ", " mm"));
    return wicks.count() + " × " + wicks.wick() + cut + (tab == null ? "" : ", " + tab) + places;
  }

  private String filledVessel() {
    return vessel.code()
        + " version "
        + vessel.version()
        + " of "
        + mix.code()
        + " version "
        + mix.version()
        + ", filled to "
        + millimetres(candle.body().headspaceMm())
        + " under the rim";
  }

  private static String millimetres(double mm) {
    return plain(mm) + " mm";
  }

  private static String plain(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
  }
}
