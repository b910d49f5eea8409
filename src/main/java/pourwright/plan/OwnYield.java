package pourwright.plan;

import pourwright.quantity.Check;

/**
 * How many come out good of what is begun, step by step, as her own pieces tell it; the house's
 * share where fewer than {@link #PIECES_MIN} went through a step.
 *
 * @param demolded castings poured into molds, and those that came out whole
 * @param finished green vessels whose fate is known, and those that became a candle
 * @param poured candles poured, and those that were not thrown away untested
 */
public record OwnYield(Step demolded, Step finished, Step poured) {
  /** House: pieces from which her own share takes the place of the house's. */
  public static final int PIECES_MIN = 10;

  /** House: share of castings that leave the mold whole. */
  private static final double DEMOLDED_HOUSE = 0.97;

  /** Beyond this the plan would grow without end. */
  private static final double REJECT_MOST = 0.9;

  /** Nothing known: the house's shares. */
  public static final OwnYield NONE = new OwnYield(new Step(0, 0), new Step(0, 0), new Step(0, 0));

  /**
   * What went through a step.
   *
   * @param began how many, 0 or more
   * @param good how many of them came out good
   */
  public record Step(int began, int good) {
    /** Checks that no more are good than began. */
    public Step {
      Check.between("began", began, 0, Integer.MAX_VALUE);
      Check.between("good", good, 0, began);
    }

    /** Whether her own pieces are enough to tell. */
    public boolean own() {
      return began >= PIECES_MIN;
    }

    private double share(double house) {
      return own() ? (double) good / began : house;
    }
  }

  /** Share that leaves the mold whole. */
  public double demoldedShare() {
    return demolded.share(DEMOLDED_HOUSE);
  }

  /** Share of green vessels that get through sanding, sealing and proving. */
  public double finishedShare() {
    return finished.share((1 - Habits.HOUSE.vesselReject()) / DEMOLDED_HOUSE);
  }

  /** Share of castings that become a vessel fit for wax. */
  public double vesselShare() {
    return demoldedShare() * finishedShare();
  }

  /** Share of poured candles that are good. */
  public double pouredShare() {
    return poured.share(1 - Habits.HOUSE.candleReject());
  }

  /** Whether any step is told by her own pieces. */
  public boolean own() {
    return demolded.own() || finished.own() || poured.own();
  }

  /** How many castings to begin so that so many vessels are good, to the nearest whole one. */
  public int toCast(int good) {
    return Explosion.withLoss(good, reject(vesselShare()));
  }

  /** How many candles to pour so that so many are good, to the nearest whole one. */
  public int toPour(int good) {
    return Explosion.withLoss(good, reject(pouredShare()));
  }

  /** The same habits with what her own pieces say of losses. */
  public Habits applied(Habits habits) {
    if (!own()) {
      return habits;
    }
    return new Habits(
        reject(vesselShare()),
        reject(pouredShare()),
        habits.piecesPerMixing(),
        habits.pitcherG(),
        habits.hands(),
        habits.waits(),
        habits.shed());
  }

  private static double reject(double share) {
    return Math.min(REJECT_MOST, 1 - share);
  }
}
