package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.batch.PlannedStep.Care;
import pourwright.card.CardBook;
import pourwright.card.MixCard;
import pourwright.card.ResolvedMix;
import pourwright.card.Vessel;
import pourwright.cast.Maturity;
import pourwright.cast.Mix;
import pourwright.cast.MixAmounts;
import pourwright.cast.MixLimits;
import pourwright.cast.MixSplit;
import pourwright.cast.OwnHands;
import pourwright.cast.Powder;
import pourwright.material.Material;
import pourwright.material.MaterialKind;
import pourwright.material.Property;
import pourwright.quantity.Check;
import pourwright.quantity.Counted;
import pourwright.quantity.FirstOrder;
import pourwright.quantity.Origin;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.stock.Amount;

/** Lays a cast out: amounts for the molds, and the walk from the clean mold to the demolding. */
public final class CastWalk {
  /** Step in which the molds are set out. */
  public static final String MOLDS = "molds";

  /** Step in which the rest of the water of a single ratio is added. */
  public static final String REST_WATER = "rest-water";

  /** Step in which the powder meets the water; the pot life begins. */
  public static final String POWDER = "powder";

  /** Step in which the casting is covered; the wait for demolding begins. */
  public static final String COVER = "cover";

  /** Step in which water between the two ends of a range is added; the maker says how much. */
  public static final String RANGE_WATER = "range-water";

  /** Step in which it is noted when the mix stiffened. */
  public static final String STIFF = "stiff";

  /** First water: the drier end, the rest is added in weighed steps. House: nine tenths. */
  private static final double FIRST_WATER = 0.9;

  /** Usual activation energy for times at another temperature, kJ/mol; portland. */
  private static final double ENERGY = 40;

  /** House: minutes to pour and tap one mold, and from powder to the first mold. */
  private static final double POUR_MIN = 1.5;

  private static final double MIX_MIN = 3;

  private CastWalk() {}

  /**
   * Lays a cast out.
   *
   * @throws OutOfRange when a card is missing, a material's property is missing, or the mix cannot
   *     be
   */
  public static CastSheet sheet(Books books, CastSheet.Ask ask) {
    CardBook book = Drawers.book(books);
    int mixVersion = version(books, Drawers.MIX, ask.mix());
    Check.between("room_c", ask.roomC(), -10, 50);
    Check.between("step", ask.stepG(), 0.001, 100);
    if (ask.pieces() < 1) {
      throw new OutOfRange("count1", "no vessel is to be cast", "say how many of which");
    }
    MixCard card = book.mix(ask.mix());
    ResolvedMix mix = card.resolve(book.materials());
    OwnHands hands = OwnCasts.of(books, ask.mix());
    Mix resolved = hands.applied(card.resolve(book.materials(), ask.waterC()));
    Sourced fresh = freshMl(book, ask);
    MixCard.Losses losses =
        new MixCard.Losses(
            card.losses().wasteFraction(),
            hands.lostG(card.losses().residueG()),
            resolved.airFraction());
    MixAmounts exact = resolved.amounts(fresh.value(), losses.wasteFraction(), losses.residueG());
    MixAmounts rounded = exact.roundedTo(ask.stepG());
    double life = Maturity.timeAt(card.times().potLifeMin(), 20, ask.roomC(), ENERGY);
    double demold = Maturity.timeAt(card.times().demoldFromH(), 20, ask.roomC(), ENERGY);
    List<CastSheet.Line> lines = lines(mix, rounded);
    Mix wettest = hands.applied(card.wettest(book.materials(), ask.waterC()));
    double more =
        Math.rint(
                (wettest.waterToPowder() - resolved.waterToPowder())
                    * rounded.powderG()
                    / ask.stepG())
            * ask.stepG();
    return new CastSheet(
        mix,
        mixVersion,
        ask,
        hands,
        resolved,
        wettest,
        fresh,
        exact,
        rounded,
        ranged(mix, resolved, fresh, exact.powderG() / fresh.value(), true),
        ranged(mix, resolved, fresh, exact.waterG() / fresh.value(), false),
        rounded.waterG() + more,
        lines,
        warnings(resolved, wettest, exact, fresh.value(), losses),
        split(ask, card.times().potLifeMin()),
        life,
        demold,
        new BatchPlan(
            BatchKind.CAST,
            card.code(),
            mixVersion,
            makes(books, book, ask),
            steps(mix, ask, lines, demold, more),
            null));
  }

  /** Of both ends of a range, each once. */
  private static List<String> warnings(
      Mix driest, Mix wettest, MixAmounts exact, double freshMl, MixCard.Losses losses) {
    List<String> said = new ArrayList<>(MixLimits.warnings(driest, exact));
    MixAmounts wet = wettest.amounts(freshMl, losses.wasteFraction(), losses.residueG());
    Double cement = driest.powder().cementFraction();
    if (cement != null && cement == 0) {
      said.add(
          "A powder without cement, such as plaster: no flame in it without measured evidence of"
              + " its own, and water softens it.");
    }
    for (String warning : MixLimits.warnings(wettest, wet)) {
      if (!said.contains(warning)) {
        said.add(warning);
      }
    }
    return said;
  }

  private static int version(Books books, Drawer<?> drawer, String code) {
    return books.cards().current(drawer, code).map(CardVersion::version).orElse(1);
  }

  private static Sourced freshMl(CardBook book, CastSheet.Ask ask) {
    List<Sourced> each = new ArrayList<>();
    for (CastSheet.Fill fill : ask.fills()) {
      Check.between("count", fill.count(), 1, 1000);
      Sourced one = book.vessel(fill.vessel()).mixMl();
      each.add(new Sourced(one.value() * fill.count(), one.relativeUncertainty(), one.origin()));
    }
    return FirstOrder.of(each, x -> java.util.Arrays.stream(x).sum()).value();
  }

  /** Powder or water with the ranges of volume, grain density and bulk density. */
  private static Sourced ranged(
      ResolvedMix mix, Mix resolved, Sourced fresh, double perMl, boolean powder) {
    Sourced grains = mix.powder().required(Property.PARTICLE_DENSITY_G_PER_ML);
    Optional<Sourced> bulk = mix.powder().property(Property.BULK_DENSITY_G_PER_ML);
    List<Sourced> inputs = new ArrayList<>(List.of(fresh, grains));
    bulk.ifPresent(inputs::add);
    double one = unit(resolved, 1, grains.value(), bulk.map(Sourced::value).orElse(null), powder);
    return FirstOrder.of(
            inputs,
            x ->
                perMl
                    / one
                    * unit(resolved, x[0], x[1], x.length > 2 ? (Double) x[2] : null, powder))
        .value();
  }

  private static double unit(
      Mix mix, double ml, double grains, @Nullable Double bulk, boolean powder) {
    Powder moved = new Powder(grains, bulk, mix.powder().cementFraction(), null, null);
    Mix other = new Mix(moved, mix.ratio(), mix.additions(), null, mix.airFraction(), mix.waterC());
    MixAmounts amounts = other.amounts(ml, 0, 0);
    return powder ? amounts.powderG() : amounts.waterG();
  }

  private static List<CastSheet.Line> lines(ResolvedMix mix, MixAmounts amounts) {
    List<CastSheet.Line> lines = new ArrayList<>();
    lines.add(new CastSheet.Line(mix.powder().code(), mix.powder().name(), amounts.powderG()));
    for (int i = 0; i < mix.parts().size(); i++) {
      Material part = mix.parts().get(i);
      lines.add(new CastSheet.Line(part.code(), part.name(), amounts.additionsG().get(i)));
    }
    lines.add(new CastSheet.Line(CastSheet.WATER, "Water", amounts.waterG()));
    return lines;
  }

  private static @Nullable MixSplit split(CastSheet.Ask ask, double potLife) {
    try {
      return MixSplit.of(ask.pieces(), POUR_MIN, MIX_MIN, potLife, ask.roomC());
    } catch (OutOfRange e) {
      return null;
    }
  }

  private static List<BatchPlan.Makes> makes(Books books, CardBook book, CastSheet.Ask ask) {
    List<BatchPlan.Makes> makes = new ArrayList<>();
    for (CastSheet.Fill fill : ask.fills()) {
      Vessel vessel = book.vessel(fill.vessel());
      String mold =
          book.moldsFor(vessel.code()).stream()
              .filter(m -> m.count() > 0)
              .map(m -> m.code())
              .findFirst()
              .orElse(null);
      int version = version(books, Drawers.VESSEL, vessel.code());
      makes.add(new BatchPlan.Makes(vessel.code(), version, fill.count(), mold));
    }
    return makes;
  }

  private static List<PlannedStep> steps(
      ResolvedMix mix, CastSheet.Ask ask, List<CastSheet.Line> lines, double demoldH, double more) {
    List<PlannedStep> steps = new ArrayList<>();
    steps.add(
        PlannedStep.hands(
            MOLDS,
            "Set "
                + Counted.of(ask.pieces(), "clean mold", "clean molds")
                + " level. Release agent only if the mold's sheet"
                + " asks for it.",
            4));
    double water = lines.get(lines.size() - 1).grams();
    double first = more > 0 ? water : Math.rint(FIRST_WATER * water / ask.stepG()) * ask.stepG();
    steps.add(weigh("water", "Weigh the first water into the bucket.", List.of(water(first))));
    addWeighed(
        steps,
        "colour",
        "Stir the colour into the water until nothing floats.",
        amounts(mix, lines, true));
    List<PlannedAmount> dry = new ArrayList<>();
    dry.add(planned(lines.get(0)));
    dry.addAll(amounts(mix, lines, false));
    steps.add(
        weigh(
            POWDER,
            "Mask and gloves on. Powder into the water, never water onto powder. Let it soak a"
                + " minute, then mix until it is smooth.",
            dry));
    steps.add(
        more > 0
            ? weigh(
                RANGE_WATER,
                "Add water in small weighed steps until it pours, at most this much. Write down"
                    + " what you added.",
                List.of(water(more)))
            : weigh(
                REST_WATER,
                "Add the rest of the water in small weighed steps until it pours. Note what you"
                    + " really used.",
                List.of(water(water - first))));
    steps.add(
        PlannedStep.hands(
            "pour",
            "Pour low, in a thin stream, at one corner; let it rise by itself.",
            1.5 * ask.pieces()));
    steps.add(
        PlannedStep.hands(
            "tap", "Tap and shake until no more bubbles rise. Level the core.", ask.pieces()));
    steps.add(
        PlannedStep.hands(
            COVER,
            "Cover it. Never add water to a mix that stiffens. Slurry settles in the bucket and"
                + " goes to the bin, not down a drain.",
            2));
    steps.add(
        new PlannedStep(
            STIFF,
            "Press Done when a fingernail leaves no mark: that is when it stiffened.",
            Care.WATCH,
            0,
            List.of(),
            true));
    steps.add(
        PlannedStep.waiting(
            "demold",
            String.format(Locale.ROOT, "Wait. Demold from about %.1f h after covering.", demoldH),
            60 * demoldH));
    return steps;
  }

  private static PlannedStep weigh(String key, String sentence, List<PlannedAmount> amounts) {
    return PlannedStep.weigh(key, sentence, amounts);
  }

  private static void addWeighed(
      List<PlannedStep> steps, String key, String sentence, List<PlannedAmount> amounts) {
    if (!amounts.isEmpty()) {
      steps.add(weigh(key, sentence, amounts));
    }
  }

  private static PlannedAmount water(double grams) {
    return new PlannedAmount(CastSheet.WATER, Amount.ofGrams(grams));
  }

  private static PlannedAmount planned(CastSheet.Line line) {
    return new PlannedAmount(line.material(), Amount.ofGrams(line.grams()));
  }

  /** What goes into the water first, or what goes in with the powder. */
  private static List<PlannedAmount> amounts(
      ResolvedMix mix, List<CastSheet.Line> lines, boolean intoWater) {
    List<PlannedAmount> found = new ArrayList<>();
    for (int i = 0; i < mix.parts().size(); i++) {
      MaterialKind kind = mix.parts().get(i).kind();
      boolean wet =
          kind == MaterialKind.PIGMENT
              || kind == MaterialKind.LIQUID_COLOUR
              || kind == MaterialKind.ADMIXTURE;
      if (wet == intoWater && lines.get(i + 1).grams() > 0) {
        found.add(planned(lines.get(i + 1)));
      }
    }
    return found;
  }

  /** Origin of the bulk density, in words, or an empty string where there is none. */
  public static String bulkOrigin(Material powder) {
    return powder
        .property(Property.BULK_DENSITY_G_PER_ML)
        .map(Sourced::origin)
        .map(Origin::words)
        .orElse("");
  }
}
