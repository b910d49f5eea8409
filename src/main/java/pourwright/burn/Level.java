package pourwright.burn;

/**
 * Where the wax stands: the topmost plane that holds wax and how high it is filled, a share of its
 * height that sinks as the wax burns. Below a least share what is left joins the plane underneath.
 */
final class Level {
  /**
   * When a plane's rest joins the one below in the plain scheme. Rows thinner than a cell let the
   * pool reach the wall by a jump there, so they are joined early.
   */
  static final double JOIN_BELOW = 0.85;

  /** The same in the sharp scheme, where thin rows do no harm and thick ones blur the surface. */
  static final double JOIN_BELOW_SHARP = 0.5;

  /** Less than this share of the lowest row and the candle is out. */
  static final double LEAST = 0.25;

  final double joinBelow;
  int plane;
  double share;

  Level(int plane, double joinBelow) {
    this.plane = plane;
    this.share = 1;
    this.joinBelow = joinBelow;
  }

  /** Share of a plane's height that is open to the air, 0 to 1. */
  double openShare(int z, Layout of) {
    if (z < plane) {
      return 0;
    }
    double top = of.bottomAt[plane] + share * of.tall[plane];
    double open = (of.bottomAt[z] + of.tall[z] - top) / of.tall[z];
    return Math.max(0, Math.min(1, open));
  }

  /** Height of the surface above the ground, m. */
  double surfaceM(Layout of) {
    return of.bottomAt[plane] + share * of.tall[plane];
  }
}
