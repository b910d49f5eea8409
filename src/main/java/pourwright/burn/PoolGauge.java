package pourwright.burn;

import pourwright.burn.Layout.Kind;
import pourwright.heat.Box;

/** Reads the melt pool off the cells. */
final class PoolGauge {
  private static final double FULL = 0.99;

  private final Burn burn;
  private final Tract tract;
  private final Layout of;
  private final Box box;
  private final double alongX;
  private final double alongY;

  PoolGauge(Burn burn, Tract tract) {
    this.burn = burn;
    this.tract = tract;
    this.of = tract.of;
    this.box = tract.box;
    double longest = 0;
    double x = 1;
    double y = 0;
    for (BurningWick a : burn.wicks()) {
      for (BurningWick b : burn.wicks()) {
        double far = Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm());
        if (far > longest + 1e-9) {
          longest = far;
          x = (a.xMm() - b.xMm()) / far;
          y = (a.yMm() - b.yMm()) / far;
        }
      }
    }
    alongX = x;
    alongY = y;
  }

  /** True when every cell of the surface is melted. */
  boolean isFull(Level level) {
    int z = level.plane;
    for (int i = 0; i < box.length; i++) {
      if (box.melts[z][i] > 0 && box.liquid(z, i) < FULL) {
        return false;
      }
    }
    return true;
  }

  BurnResult.Pool pool(Level level, double hours, double wallC, double baseC) {
    int z = level.plane;
    double area = 0;
    double whole = 0;
    double[] reach = {0, 0, 0, 0};
    for (int y = 0; y < tract.ny(); y++) {
      for (int x = 0; x < tract.nx(); x++) {
        if (tract.kindAt(z, x, y) != Kind.WAX) {
          continue;
        }
        double liquid = box.liquid(z, box.at(x, y));
        area += liquid * tract.areaAt(z, x, y) * tract.times;
        whole += tract.areaAt(z, x, y) * tract.times;
        if (liquid >= 0.5) {
          extend(reach, tract.xAt(x), tract.yAt(y));
        }
      }
    }
    boolean any = reach[0] < reach[1];
    double[] melt = melt(level);
    return new BurnResult.Pool(
        hours,
        1000 * Math.sqrt(area / Math.PI),
        any ? 1000 * (reach[1] - reach[0]) : 0,
        any ? 1000 * (reach[3] - reach[2]) : 0,
        1000 * deepest(level),
        Math.min(1, area / whole),
        1000 * melt[0],
        melt[1],
        wallC,
        baseC);
  }

  /** Widens the extents by a cell and its mirror images: least and most along, then across. */
  private void extend(double[] reach, double x, double y) {
    double half = of.cell / 2;
    if (of.round) {
      reach[1] = Math.max(reach[1], x + half);
      reach[0] = -reach[1];
      reach[3] = reach[1];
      reach[2] = -reach[1];
      return;
    }
    boolean none = reach[0] == reach[1];
    for (int mirror = 0; mirror < 4; mirror++) {
      if ((mirror % 2 == 1 && !tract.halvedX) || (mirror / 2 == 1 && !tract.halvedY)) {
        continue;
      }
      double px = mirror % 2 == 1 ? -x : x;
      double py = mirror / 2 == 1 ? -y : y;
      double along = px * alongX + py * alongY;
      double across = py * alongX - px * alongY;
      reach[0] = none ? along - half : Math.min(reach[0], along - half);
      reach[1] = none ? along + half : Math.max(reach[1], along + half);
      reach[2] = none ? across - half : Math.min(reach[2], across - half);
      reach[3] = none ? across + half : Math.max(reach[3], across + half);
      none = false;
    }
  }

  private double deepest(Level level) {
    double deepest = 0;
    for (BurningWick wick : burn.wicks()) {
      int x = of.round ? 0 : (int) Math.floor(wick.xMm() / 1000 / of.cell + of.nx / 2.0);
      int y = of.round ? 0 : (int) Math.floor(wick.yMm() / 1000 / of.cell + of.ny / 2.0);
      int i = tract.indexOf(x, y);
      if (i < 0) {
        continue;
      }
      double depth = 0;
      for (int z = of.baseRows; z <= level.plane; z++) {
        depth += box.liquid(z, i) * of.tall[z] * (z == level.plane ? level.share : 1);
      }
      deepest = Math.max(deepest, depth);
    }
    return deepest;
  }

  /** Mass of the liquid in kg and its mean temperature in °C. */
  private double[] melt(Level level) {
    double volume = 0;
    double warm = 0;
    for (int z = of.baseRows; z <= level.plane; z++) {
      for (int i = 0; i < box.length; i++) {
        double liquid = box.liquid(z, i) * box.volume[z][i];
        if (liquid > 0) {
          volume += liquid;
          warm += liquid * box.kelvin(z, i);
        }
      }
    }
    double mean = volume == 0 ? Double.NaN : burn.room().celsius() + warm / volume;
    return new double[] {volume * burn.wax().density() * tract.times, mean};
  }

  /** Surface and section for drawing. */
  Frame frame(Level level, double hours) {
    int rows = of.round ? 2 * of.nx : of.ny;
    int columns = of.round ? 2 * of.nx : of.nx;
    float[][] plan = new float[rows][columns];
    for (int y = 0; y < rows; y++) {
      for (int x = 0; x < columns; x++) {
        plan[y][x] = planAt(level, x, y);
      }
    }
    BurningWick first = burn.wicks().get(0);
    int row = of.round ? 0 : (int) Math.floor(first.yMm() / 1000 / of.cell + of.ny / 2.0);
    float[][] section = new float[of.nz][columns];
    double[] tallMm = new double[of.nz];
    for (int z = 0; z < of.nz; z++) {
      tallMm[z] = 1000 * of.tall[z];
      for (int x = 0; x < columns; x++) {
        int column = of.round ? Math.abs(x < of.nx ? of.nx - 1 - x : x - of.nx) : x;
        section[z][x] = value(z, column, of.round ? 0 : row);
      }
    }
    return new Frame(hours, 1000 * of.cell, plan, section, tallMm);
  }

  private float planAt(Level level, int x, int y) {
    if (!of.round) {
      float value = value(level.plane, x, y);
      return value < 0 ? Float.NaN : value;
    }
    double dx = x + 0.5 - of.nx;
    double dy = y + 0.5 - of.nx;
    int column = (int) Math.floor(Math.hypot(dx, dy));
    float value = column < of.nx ? value(level.plane, column, 0) : Float.NaN;
    return value < 0 ? Float.NaN : value;
  }

  private float value(int z, int x, int y) {
    Kind kind = of.kindAt(z, x, y);
    if (kind != Kind.WAX) {
      return kind == Kind.VESSEL ? -1 : Float.NaN;
    }
    int i = tract.indexOf(x, y);
    if (i < 0) {
      i =
          tract.indexOf(
              tract.halvedX && x < of.nx / 2 ? of.nx - 1 - x : x,
              tract.halvedY && y < of.ny / 2 ? of.ny - 1 - y : y);
    }
    return i < 0 ? Float.NaN : (float) box.liquid(z, i);
  }
}
