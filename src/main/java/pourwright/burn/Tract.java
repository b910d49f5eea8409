package pourwright.burn;

import java.util.List;
import pourwright.burn.Layout.Kind;
import pourwright.heat.Box;

/**
 * The part of a {@link Layout} that is computed: all of it, or the half or quarter that mirrors to
 * the whole; and its box of cells, which is kept true as the wax sinks.
 */
final class Tract {
  final Layout of;
  final Box box;

  /** How many times this part makes the whole. */
  final int times;

  final boolean halvedX;
  final boolean halvedY;

  private final int firstX;
  private final int firstY;
  private final Burn burn;

  Tract(Layout layout, Burn burn) {
    this.of = layout;
    this.burn = burn;
    boolean may = burn.fineness().symmetry() && !layout.round;
    halvedX = may && layout.isMirrored(true) && areMirrored(burn.wicks(), -1, 1);
    halvedY = may && layout.isMirrored(false) && areMirrored(burn.wicks(), 1, -1);
    firstX = halvedX ? layout.nx / 2 : 0;
    firstY = halvedY ? layout.ny / 2 : 0;
    times = (halvedX ? 2 : 1) * (halvedY ? 2 : 1);
    int[] cells = {layout.nx - firstX, layout.ny - firstY, layout.nz};
    box = new Box(cells, burn.wax().from(burn.room().celsius()), burn.across(), burn.upright());
    box.sharp = burn.fineness().sharp();
    for (int z = 0; z < layout.nz; z++) {
      fill(z);
    }
    for (int z = 0; z < layout.nz; z++) {
      connect(z, 1);
    }
  }

  private static boolean areMirrored(List<BurningWick> wicks, int wayX, int wayY) {
    return wicks.stream()
        .allMatch(
            w ->
                wicks.stream()
                    .anyMatch(
                        v ->
                            Math.hypot(v.xMm() - wayX * w.xMm(), v.yMm() - wayY * w.yMm()) < 1e-6
                                && v.gramsPerHour() == w.gramsPerHour()));
  }

  /** Columns and rows of this part. */
  int nx() {
    return box.nx;
  }

  int ny() {
    return box.ny;
  }

  double xAt(int x) {
    return of.xAt(x + firstX);
  }

  double yAt(int y) {
    return of.yAt(y + firstY);
  }

  Kind kindAt(int z, int x, int y) {
    return of.kindAt(z, x + firstX, y + firstY);
  }

  double areaAt(int z, int x, int y) {
    return of.area[z][(y + firstY) * of.nx + x + firstX];
  }

  /** Index of a cell of the whole grid, or −1 where it is in a mirrored part. */
  int indexOf(int wholeX, int wholeY) {
    int x = wholeX - firstX;
    int y = wholeY - firstY;
    return x < 0 || y < 0 ? -1 : box.at(x, y);
  }

  private void fill(int z) {
    for (int y = 0; y < ny(); y++) {
      for (int x = 0; x < nx(); x++) {
        int i = box.at(x, y);
        Kind kind = kindAt(z, x, y);
        boolean full = kind == Kind.WAX || kind == Kind.VESSEL;
        Vessel.Stuff stuff = burn.vessel().stuff();
        box.melts[z][i] = kind == Kind.WAX ? 1 : 0;
        box.conductivity[z][i] =
            kind == Kind.WAX ? burn.wax().solid() : full ? stuff.conductivity() : 1;
        box.heatCapacity[z][i] = full ? stuff.density() * stuff.heatCapacity() : 1;
        box.volume[z][i] = full ? areaAt(z, x, y) * of.tall[z] : 0;
        box.tall[z][i] = of.tall[z] / of.cell;
      }
    }
  }

  /**
   * Sets volumes and faces of a plane whose wax stands {@code level} times its height, and the
   * faces to the plane above.
   */
  void connect(int z, double level) {
    for (int y = 0; y < ny(); y++) {
      for (int x = 0; x < nx(); x++) {
        int i = box.at(x, y);
        boolean wax = kindAt(z, x, y) == Kind.WAX;
        if (wax) {
          box.volume[z][i] = areaAt(z, x, y) * of.tall[z] * level;
          box.tall[z][i] = of.tall[z] / of.cell * level;
        }
        box.faceX[z][i] = x + 1 < nx() ? side(z, x, y, new int[] {1, 0}, level) : 0;
        if (box.ny > 1) {
          box.faceY[z][i] = y + 1 < ny() ? side(z, x, y, new int[] {0, 1}, level) : 0;
        }
        box.faceZ[z][i] = z + 1 < of.nz ? above(z, x, y) : 0;
      }
    }
  }

  private double side(int z, int x, int y, int[] to, double level) {
    Kind one = kindAt(z, x, y);
    Kind other = kindAt(z, x + to[0], y + to[1]);
    if (!isFull(one) || !isFull(other)) {
      return 0;
    }
    double share = one == Kind.WAX || other == Kind.WAX ? level : 1;
    double width = of.round ? 2 * Math.PI * (x + 1) * of.cell : of.cell;
    return 2 * width * of.tall[z] * share / of.cell * touching(one, other, of.cell, of.cell);
  }

  private double above(int z, int x, int y) {
    if (!isFull(kindAt(z, x, y)) || !isFull(kindAt(z + 1, x, y))) {
      return 0;
    }
    double touching = touching(kindAt(z, x, y), kindAt(z + 1, x, y), of.tall[z], of.tall[z + 1]);
    return (areaAt(z, x, y) + areaAt(z + 1, x, y)) / of.cell * touching;
  }

  /**
   * By how much a gap lessens what passes between wax and vessel, as a share of the face: the half
   * cells' resistances over those and the gap's, with the wax hard.
   */
  private double touching(Kind one, Kind other, double deepOne, double deepOther) {
    if (Double.isInfinite(burn.contact()) || one == other) {
      return 1;
    }
    double halves = half(one, deepOne) + half(other, deepOther);
    return halves / (halves + 1 / burn.contact());
  }

  private double half(Kind kind, double deep) {
    double k = kind == Kind.WAX ? burn.wax().solid() : burn.vessel().stuff().conductivity();
    return deep / (2 * k);
  }

  private static boolean isFull(Kind kind) {
    return kind == Kind.WAX || kind == Kind.VESSEL;
  }

  /** Makes the wax of a plane into air of the cavity; its heat must have been moved before. */
  void empty(int z) {
    for (int i = 0; i < of.kind[z].length; i++) {
      if (of.kind[z][i] == Kind.WAX) {
        of.kind[z][i] = Kind.CAVITY;
      }
    }
    for (int i = 0; i < box.length; i++) {
      if (box.melts[z][i] > 0) {
        box.enthalpy[z][i] = 0;
        box.loss[z][i] = 0;
        box.source[z][i] = 0;
      }
    }
    fill(z);
    connect(z, 1);
  }
}
