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

  /**
   * Amounts a scale can weigh, with the ratio kept: the powder goes to a whole number of steps, the
   * rest follows and is rounded to its own steps.
   *
   * @param stepG smallest step of the scale, in g
   */
  public MixAmounts roundedTo(double stepG) {
    double powder = Math.max(stepG, Math.ceil(powderG / stepG - 1e-9) * stepG);
    MixAmounts kept = times(powder / powderG);
    return new MixAmounts(
        powder,
        kept.additionsG.stream().map(g -> Math.rint(g / stepG) * stepG).toList(),
        Math.rint(kept.waterG / stepG) * stepG,
        Math.rint(kept.liquidG / stepG) * stepG,
        kept.volumeMl);
  }
}
