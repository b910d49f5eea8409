package pourwright.burn;

/**
 * Where the wax stands: the topmost plane that holds wax and how high it is filled, from a half to
 * one and a half times its height. Below a half what is left joins the plane underneath.
 */
final class Level {
  /** When a plane's rest joins the one below. */
  static final double JOIN_BELOW = 0.5;

  int plane;
  double share;

  Level(int plane) {
    this.plane = plane;
    this.share = 1;
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
