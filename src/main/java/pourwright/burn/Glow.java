package pourwright.burn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pourwright.burn.Layout.Face;
import pourwright.burn.Layout.Kind;
import pourwright.heat.Box;

/**
 * What the flames give back to wax and wall. Each radiates as a point over its wick onto the wax
 * surface and the open inner wall, {@code absorbed·χ·Q·cos θ/(4π·d²)}, and gives the wick root's
 * heat evenly to the wax within 3 mm of the wick down to a fixed depth, part cells by their part.
 */
final class Glow {
  private static final int PARTS = 10;

  private final Burn burn;
  private final Tract tract;
  private final Layout of;
  private final Box box;
  private final double[] taken;
  private double toWaxW;
  private final List<Root> roots = new ArrayList<>();

  /** Columns of the whole grid near one wick and how much of each lies within the root's reach. */
  private record Root(int[] x, int[] y, double[] area) {}

  Glow(Burn burn, Tract tract, double[] taken) {
    this.burn = burn;
    this.taken = taken;
    this.tract = tract;
    this.of = tract.of;
    this.box = tract.box;
    for (BurningWick wick : burn.wicks()) {
      roots.add(root(wick));
    }
  }

  private Root root(BurningWick wick) {
    List<int[]> columns = new ArrayList<>();
    List<Double> areas = new ArrayList<>();
    double reach = Flame.ROOT_RADIUS_MM / 1000;
    for (int y = 0; y < of.ny; y++) {
      for (int x = 0; x < of.nx; x++) {
        double inside = of.round ? ringWithin(x, reach) : squareWithin(x, y, wick, reach);
        if (inside > 0) {
          columns.add(new int[] {x, y});
          areas.add(inside);
        }
      }
    }
    return new Root(
        columns.stream().mapToInt(c -> c[0]).toArray(),
        columns.stream().mapToInt(c -> c[1]).toArray(),
        areas.stream().mapToDouble(a -> a).toArray());
  }

  private double ringWithin(int x, double reach) {
    double from = x * of.cell;
    double to = Math.min(reach, (x + 1) * of.cell);
    return to <= from ? 0 : Math.PI * (to * to - from * from);
  }

  private double squareWithin(int x, int y, BurningWick wick, double reach) {
    double dx = of.xAt(x) - wick.xMm() / 1000;
    double dy = of.yAt(y) - wick.yMm() / 1000;
    if (Math.hypot(dx, dy) > reach + of.cell) {
      return 0;
    }
    int inside = 0;
    for (int p = 0; p < PARTS * PARTS; p++) {
      double px = dx + ((p % PARTS + 0.5) / PARTS - 0.5) * of.cell;
      double py = dy + ((p / PARTS + 0.5) / PARTS - 0.5) * of.cell;
      inside += Math.hypot(px, py) < reach ? 1 : 0;
    }
    return inside * of.cell * of.cell / (PARTS * PARTS);
  }

  /** Sets every cell's source, W, for wax at that level; gives the whole vessel's sum. */
  double refresh(Level level) {
    for (double[] plane : box.source) {
      Arrays.fill(plane, 0);
    }
    for (int w = 0; w < burn.wicks().size(); w++) {
      BurningWick wick = burn.wicks().get(w);
      if (wick.gramsPerHour() > 0) {
        double power =
            burn.flame().absorbed() * burn.flame().radiative() * burn.flame().releaseW(wick);
        shineOnWax(wick, power, level);
        shineOnWall(wick, power, level);
        warmRoot(roots.get(w), level);
      }
    }
    double sum = 0;
    toWaxW = 0;
    for (int z = 0; z < of.nz; z++) {
      for (int i = 0; i < box.length; i++) {
        sum += box.source[z][i];
        toWaxW += box.melts[z][i] > 0 ? box.source[z][i] * tract.times : 0;
      }
    }
    return sum * tract.times;
  }

  /** The part of the last sum that went to wax and wick root, W. */
  double toWaxW() {
    return toWaxW;
  }

  private void shineOnWax(BurningWick wick, double power, Level level) {
    double height = burn.flame().pointMm() / 1000;
    int z = level.plane;
    for (int y = 0; y < tract.ny(); y++) {
      for (int x = 0; x < tract.nx(); x++) {
        if (tract.kindAt(z, x, y) != Kind.WAX) {
          continue;
        }
        double share;
        if (of.round) {
          double scale = tract.areaAt(z, x, y) / of.plainArea(x);
          share = scale * (outside(x * of.cell, height) - outside((x + 1) * of.cell, height)) / 2;
        } else {
          double dx = tract.xAt(x) - wick.xMm() / 1000;
          double dy = tract.yAt(y) - wick.yMm() / 1000;
          double square = dx * dx + dy * dy + height * height;
          share = tract.areaAt(z, x, y) * height / (4 * Math.PI * square * Math.sqrt(square));
        }
        int i = box.at(x, y);
        box.source[z][i] += power * share * (burn.fineness().sharp() ? taken[i] : 1);
      }
    }
  }

  private static double outside(double radius, double height) {
    return height / Math.hypot(radius, height);
  }

  private void shineOnWall(BurningWick wick, double power, Level level) {
    double flameAt = level.surfaceM(of) + burn.flame().pointMm() / 1000;
    for (int z = level.plane; z < of.nz; z++) {
      double open = level.openShare(z, of);
      if (open <= 0) {
        continue;
      }
      double top = of.bottomAt[z] + of.tall[z];
      double up = flameAt - (top - open * of.tall[z] / 2);
      for (Face face : of.inner.get(z)) {
        int i = tract.indexOf(face.x(), face.y());
        if (i >= 0) {
          box.source[z][i] += open * power * seen(face, wick, up);
        }
      }
    }
  }

  private double seen(Face face, BurningWick wick, double up) {
    double dx = (of.round ? 0 : wick.xMm() / 1000) - face.at()[0];
    double dy = (of.round ? 0 : wick.yMm() / 1000) - face.at()[1];
    double square = dx * dx + dy * dy + up * up;
    double toward = dx * face.normal()[0] + dy * face.normal()[1];
    return toward <= 0 ? 0 : face.area() * toward / (4 * Math.PI * square * Math.sqrt(square));
  }

  private void warmRoot(Root root, Level level) {
    double deep = burn.flame().rootDepthMm() / 1000;
    double[] thick = new double[level.plane + 1];
    double volume = 0;
    double left = deep;
    for (int z = level.plane; z >= of.baseRows && left > 0; z--) {
      double here = of.tall[z] * (z == level.plane ? level.share : 1);
      thick[z] = Math.min(left, here);
      left -= thick[z];
      volume += thick[z] * waxArea(root, z);
    }
    if (volume <= 0) {
      return;
    }
    for (int z = level.plane; z >= of.baseRows; z--) {
      for (int c = 0; c < root.area.length && thick[z] > 0; c++) {
        int i = tract.indexOf(root.x[c], root.y[c]);
        if (i >= 0 && of.kindAt(z, root.x[c], root.y[c]) == Kind.WAX) {
          box.source[z][i] += burn.flame().rootW() * thick[z] * root.area[c] / volume;
        }
      }
    }
  }

  private double waxArea(Root root, int z) {
    double sum = 0;
    for (int c = 0; c < root.area.length; c++) {
      sum += of.kindAt(z, root.x[c], root.y[c]) == Kind.WAX ? root.area[c] : 0;
    }
    return sum;
  }
}
