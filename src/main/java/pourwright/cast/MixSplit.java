package pourwright.cast;

import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * How a cast is split into mixings that can be poured within the pot life.
 *
 * @param mixings number of mixings, at least one
 * @param moldsEach molds in the fullest of them
 * @param potLifeMin pot life at today's temperature, in min
 */
public record MixSplit(int mixings, int moldsEach, double potLifeMin) {

  /**
   * Splits a cast.
   *
   * @param molds how many molds are to be filled
   * @param minutesPerMold to pour and tap one
   * @param mixMinutes from water to powder until the first mold
   * @param potLifeAt20Min pot life at 20 °C
   * @param celsius of the room today
   * @throws OutOfRange when not even one mold can be filled in time
   */
  public static MixSplit of(
      int molds, double minutesPerMold, double mixMinutes, double potLifeAt20Min, double celsius) {
    Check.between("molds", molds, 1, 10_000);
    Check.positive("minutes_per_mold", minutesPerMold);
    Check.notNegative("mix_minutes", mixMinutes);
    double life = Maturity.timeAt(Check.positive("pot_life_min", potLifeAt20Min), 20, celsius, 40);
    int most = (int) Math.floor((life - mixMinutes) / minutesPerMold + 1e-9);
    if (most < 1) {
      throw new OutOfRange(
          "pot_life_min",
          "at " + celsius + " °C the mix stiffens before one mold is filled",
          "use cooler water, a retarder by the powder's sheet, or a second pair of hands");
    }
    int mixings = (molds + most - 1) / most;
    return new MixSplit(mixings, (molds + mixings - 1) / mixings, life);
  }
}
