package pourwright.shape;

/**
 * One ruled part of a body's height.
 *
 * @param fromMm where it begins above the body's bottom
 * @param highMm its height
 * @param joined its wall
 * @param bottomMm2 area of its lower section
 * @param mixedMm2 mixed area of its two ends
 * @param topMm2 area of its upper section
 */
record Tier(
    double fromMm, double highMm, Joined joined, double bottomMm2, double mixedMm2, double topMm2) {

  static Tier between(double fromMm, double highMm, Outline bottom, Outline top) {
    Joined joined = Joined.of(bottom, top);
    double mixed = joined.mixedMm2();
    return new Tier(fromMm, highMm, joined, bottom.areaMm2(), mixed, top.areaMm2());
  }

  double areaMm2(double s) {
    return (1 - s) * (1 - s) * bottomMm2 + 2 * s * (1 - s) * mixedMm2 + s * s * topMm2;
  }

  double volumeMm3(double s) {
    double linear = 2 * (mixedMm2 - bottomMm2);
    double square = bottomMm2 - 2 * mixedMm2 + topMm2;
    return highMm * s * (bottomMm2 + s * (linear / 2 + s * square / 3));
  }

  /** First moment of the volume up to a share, about the body's bottom, in mm⁴. */
  double momentMm4(double s) {
    double linear = 2 * (mixedMm2 - bottomMm2);
    double square = bottomMm2 - 2 * mixedMm2 + topMm2;
    double own = s * s * (bottomMm2 / 2 + s * (linear / 3 + s * square / 4));
    return highMm * highMm * own + fromMm * volumeMm3(s);
  }

  /** Share of this tier's height that lies below a height of the body. */
  double share(double zMm) {
    return Math.max(0, Math.min(1, (zMm - fromMm) / highMm));
  }
}
