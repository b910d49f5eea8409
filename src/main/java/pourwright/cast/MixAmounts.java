package pourwright.cast;

import java.util.List;

/**
 * The parts of one mixing, by mass; not rounded.
 *
 * @param powderG powder, in g
 * @param additionsG the additions in the order of the mix, in g
 * @param waterG water to be added beside what the liquid colour brings, in g
 * @param liquidG liquid colour, in g
 * @param volumeMl fresh volume with its air, in ml
 */
public record MixAmounts(
    double powderG, List<Double> additionsG, double waterG, double liquidG, double volumeMl) {

  /** Keeps the list as it is. */
  public MixAmounts {
    additionsG = List.copyOf(additionsG);
  }

  /** All parts together, in g. */
  public double totalG() {
    return powderG + additionsG.stream().mapToDouble(Double::doubleValue).sum() + waterG + liquidG;
  }

  /** Mass of a fresh millilitre with its air, in g/ml. */
  public double freshGPerMl() {
    return totalG() / volumeMl;
  }

  /** Every part and the volume times a factor. */
  public MixAmounts times(double factor) {
    return new MixAmounts(
        powderG * factor,
        additionsG.stream().map(g -> g * factor).toList(),
        waterG * factor,
        liquidG * factor,
        volumeMl * factor);
  }

  /** Sum of the additions of a kind, in g. */
  public double of(Mix mix, Addition.Kind kind) {
    double sum = 0;
    for (int i = 0; i < additionsG.size(); i++) {
      sum += mix.additions().get(i).kind() == kind ? additionsG.get(i) : 0;
    }
    return sum;
  }

  /** House: how much more than needed is mixed at most, to round without changing the ratio. */
  private static final double MORE = 0.03;

  /**
   * Amounts a scale can weigh: of all whole steps of powder up to 3 % more than needed, the one at
   * which rounding the other parts changes the ratio least.
   *
   * @param stepG smallest step of the scale, in g
   */
  public MixAmounts roundedTo(double stepG) {
    long from = Math.max(1, (long) Math.ceil(powderG / stepG - 1e-9));
    long to = Math.max(from, (long) Math.floor(powderG * (1 + MORE) / stepG));
    MixAmounts best = weighable(from, stepG);
    double least = off(best);
    for (long steps = from + 1; steps <= Math.min(to, from + 2000) && least > 1e-9; steps++) {
      MixAmounts tried = weighable(steps, stepG);
      double off = off(tried);
      if (off < least - 1e-9) {
        best = tried;
        least = off;
      }
    }
    return best;
  }

  private MixAmounts weighable(long steps, double stepG) {
    double powder = round(steps * stepG, stepG);
    MixAmounts kept = times(powder / powderG);
    return new MixAmounts(
        powder,
        kept.additionsG.stream().map(g -> round(g, stepG)).toList(),
        round(kept.waterG, stepG),
        round(kept.liquidG, stepG),
        kept.volumeMl);
  }

  private static double round(double grams, double stepG) {
    double steps = Math.rint(grams / stepG);
    return stepG < 1 ? steps / Math.rint(1 / stepG) : steps * stepG;
  }

  /** Largest change of a part's share by the rounding. */
  private double off(MixAmounts rounded) {
    double factor = rounded.powderG / powderG;
    double off = share(rounded.waterG, waterG * factor);
    off = Math.max(off, share(rounded.liquidG, liquidG * factor));
    for (int i = 0; i < additionsG.size(); i++) {
      off = Math.max(off, share(rounded.additionsG.get(i), additionsG.get(i) * factor));
    }
    return off;
  }

  private static double share(double is, double should) {
    return should == 0 ? 0 : Math.abs(is / should - 1);
  }
}
