package pourwright.plan;

import pourwright.quantity.Check;

/**
 * How this studio works: minutes of hands, sizes, losses. All house values, hers to change.
 *
 * @param vesselReject share of castings that do not become a good vessel
 * @param candleReject share of poured candles that do not become a good one
 * @param piecesPerMixing most pieces that one mixing can fill within its pot life
 * @param pitcherG most wax and fragrance in one pour, in g
 * @param hands minutes of hands
 * @param waits waits that no card knows
 * @param shed how much longer a cast takes where it stands
 */
public record Habits(
    double vesselReject,
    double candleReject,
    int piecesPerMixing,
    double pitcherG,
    Hands hands,
    Waits waits,
    Shed shed) {

  /**
   * How much longer things take in the shed than at 20 °C; 1 for as long.
   *
   * @param harden setting and hardening damp
   * @param dry drying
   */
  public record Shed(double harden, double dry) {
    /** A shed at 20 °C. */
    public static final Shed WARM = new Shed(1, 1);

    /** Checks the range. */
    public Shed {
      Check.between("harden", harden, 0.1, 20);
      Check.between("dry", dry, 0.1, 20);
    }
  }

  /** Habits of a studio whose casts stand at 20 °C. */
  public Habits(
      double vesselReject,
      double candleReject,
      int piecesPerMixing,
      double pitcherG,
      Hands hands,
      Waits waits) {
    this(vesselReject, candleReject, piecesPerMixing, pitcherG, hands, waits, Shed.WARM);
  }

  /** The same with casts in another shed. */
  public Habits in(Shed other) {
    return new Habits(vesselReject, candleReject, piecesPerMixing, pitcherG, hands, waits, other);
  }

  /**
   * Minutes of hands.
   *
   * @param mix weighing and mixing, each mixing
   * @param fill filling a mold, each piece
   * @param demold each piece
   * @param coat one coat, each piece
   * @param test filling with water or emptying, each piece
   * @param wick wicking, each wick
   * @param pour each piece
   * @param trim each piece
   * @param box each box
   * @param stretch longest stretch that is planned in one go; longer work is cut
   */
  public record Hands(
      double mix,
      double fill,
      double demold,
      double coat,
      double test,
      double wick,
      double pour,
      double trim,
      double box,
      int stretch) {
    /** House minutes. */
    public static final Hands HOUSE = new Hands(15, 2, 3, 3, 1, 2.5, 1.5, 1, 4, 120);
  }

  /**
   * Waits that no card knows, in minutes unless named otherwise.
   *
   * @param melt somebody there while the melter warms
   * @param pourWithin most minutes from melt to pour
   * @param setH hours until wax is set
   * @param waterH hours a vessel stands filled with water, where it is tested
   * @param dryAgainH hours until it is dry again after that
   * @param wash washing a pitcher between scents
   */
  public record Waits(
      int melt, int pourWithin, double setH, double waterH, double dryAgainH, int wash) {
    /** House waits. */
    public static final Waits HOUSE = new Waits(60, 45, 12, 24, 48, 15);
  }

  /** House habits. */
  public static final Habits HOUSE = new Habits(0.05, 0.02, 8, 2500, Hands.HOUSE, Waits.HOUSE);

  /** Checks the range. */
  public Habits {
    Check.between("vessel_reject", vesselReject, 0, 0.9);
    Check.between("candle_reject", candleReject, 0, 0.9);
    Check.between("pieces_per_mixing", piecesPerMixing, 1, 1000);
    Check.between("pitcher_g", pitcherG, 50, 1e6);
  }
}
