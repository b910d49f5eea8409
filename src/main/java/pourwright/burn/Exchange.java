package pourwright.burn;

import java.util.Arrays;
import java.util.List;
import pourwright.burn.Layout.Face;
import pourwright.burn.Layout.Kind;
import pourwright.heat.Box;
import pourwright.heat.Correlations;

/**
 * Convection and radiation from every open surface to the room, each through the half cell behind
 * it: {@code U = 1/(1/h + Δ/(2k))} with {@code h = convection + ε·σ·(T² + T₀²)·(T + T₀)} at the
 * cell's temperature, held over one time step. On the way it takes the means that the answer needs.
 */
final class Exchange {
  private final Burn burn;
  private final Tract tract;
  private final Layout of;
  private final Box box;
  private double waxMean;
  private double outerMean;
  private double baseMean;

  /** Share of the radiation on the wax that goes down into it; the rest leaves at once. */
  final double[] taken;

  /** Warmest mean round the outer wall so far, and warmest cell of the base; °C. */
  double wallMaxC;

  double baseMaxC;

  Exchange(Burn burn, Tract tract) {
    this.burn = burn;
    this.tract = tract;
    this.of = tract.of;
    this.box = tract.box;
    this.taken = new double[box.length];
    this.waxMean = burn.room().celsius();
    this.outerMean = waxMean;
    this.baseMean = waxMean;
    this.wallMaxC = waxMean;
    this.baseMaxC = waxMean;
  }

  private record Films(double wax, double outer, double inner, double base) {}

  private Films films() {
    Room.Convection given = burn.room().convection();
    if (!given.correlated()) {
      return new Films(given.wax(), given.outer(), given.inner(), given.base());
    }
    double room = burn.room().celsius();
    Vessel vessel = burn.vessel();
    double height = (vessel.cavity().heightMm() + vessel.baseMm()) / 1000;
    double cavity = Math.sqrt(vessel.cavity().areaAtMm2(0) / Math.PI) / 500;
    double across = cavity + 2 * vessel.wallMm() / 1000;
    return new Films(
        Correlations.level(waxMean, room, cavity / 4, true),
        Correlations.side(outerMean, room, height, across),
        given.inner(),
        Correlations.level(baseMean, room, across / 4, false));
  }

  /** Sets every cell's loss, W/K, from its present temperature. */
  void refresh(Level level) {
    Films films = films();
    for (double[] plane : box.loss) {
      Arrays.fill(plane, 0);
    }
    double emissivity = burn.vessel().stuff().emissivity();
    double half = of.cell / 2 / burn.vessel().stuff().conductivity();
    double warm = 0;
    double area = 0;
    for (int z = 0; z < of.nz; z++) {
      double[] sum = lose(z, of.outer.get(z), 1, new double[] {films.outer, emissivity, half});
      warm += sum[0];
      area += sum[1];
      if (sum[1] > 0) {
        wallMaxC = Math.max(wallMaxC, burn.room().celsius() + sum[0] / sum[1]);
      }
      double open = level.openShare(z, of);
      if (open > 0) {
        lose(z, of.inner.get(z), open, new double[] {films.inner, emissivity, half});
      }
    }
    outerMean = burn.room().celsius() + warm / area;
    loseLevel(of.nz - 1, Kind.VESSEL, new double[] {films.outer, emissivity}, 1);
    loseLevel(0, Kind.VESSEL, new double[] {films.base, 0}, 1);
    waxMean =
        loseLevel(
            level.plane,
            Kind.WAX,
            new double[] {films.wax, burn.room().waxEmissivity()},
            level.share);
    watchBase();
  }

  /** Losses of a plane's wall faces; the sums of area times temperature and of area. */
  private double[] lose(int z, List<Face> faces, double open, double[] film) {
    double room = burn.room().celsius();
    double warm = 0;
    double area = 0;
    for (Face face : faces) {
      int i = tract.indexOf(face.x(), face.y());
      if (i < 0) {
        continue;
      }
      double kelvin = box.kelvin(z, i);
      double h = film[0] + Correlations.radiation(film[1], room + kelvin, room);
      box.loss[z][i] += open * face.area() / (1 / Math.max(h, 1e-12) + film[2]);
      warm += face.area() * kelvin;
      area += face.area();
    }
    return new double[] {warm, area};
  }

  /** Losses of a level surface; its mean temperature, °C. */
  private double loseLevel(int z, Kind kind, double[] film, double share) {
    double room = burn.room().celsius();
    double warm = 0;
    double area = 0;
    for (int y = 0; y < tract.ny(); y++) {
      for (int x = 0; x < tract.nx(); x++) {
        if (tract.kindAt(z, x, y) != kind) {
          continue;
        }
        int i = box.at(x, y);
        double kelvin = box.kelvin(z, i);
        double h = film[0] + Correlations.radiation(film[1], room + kelvin, room);
        double half = of.tall[z] * share / 2 / uprightConductivity(z, i);
        double cell = tract.areaAt(z, x, y);
        double outward = 1 / Math.max(h, 1e-12);
        box.loss[z][i] += cell / (outward + half);
        if (kind == Kind.WAX) {
          taken[i] = outward / (outward + half);
        }
        warm += cell * kelvin;
        area += cell;
      }
    }
    return area == 0 ? room : room + warm / area;
  }

  private double uprightConductivity(int z, int i) {
    double solid = box.conductivity[z][i];
    return solid + box.liquid(z, i) * (burn.wax().liquid() * burn.upright() - solid);
  }

  private void watchBase() {
    double room = burn.room().celsius();
    double warm = 0;
    double area = 0;
    for (int i = 0; i < box.length; i++) {
      if (box.volume[0][i] > 0) {
        baseMaxC = Math.max(baseMaxC, room + box.kelvin(0, i));
        warm += box.volume[0][i] * box.kelvin(0, i);
        area += box.volume[0][i];
      }
    }
    baseMean = room + warm / area;
  }
}
