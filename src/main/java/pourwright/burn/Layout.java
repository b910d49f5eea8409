package pourwright.burn;

import java.util.ArrayList;
import java.util.List;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Solid;

/**
 * Which cell is what: the vessel and its wax cut into cells, before any heat. Planes go from the
 * base up and fit base, fill and rim exactly; across, a cell is what its centre lies in. What a
 * staircase of cells gets wrong is set right by sums: the cells of a plane are given the true area
 * of their section, and the faces of a wall, each weighted by how squarely it looks outward, the
 * wall's true area. Lengths in m; cells without symmetry.
 */
final class Layout {
  /** What a cell is. */
  enum Kind {
    OUTSIDE,
    WAX,
    VESSEL,
    CAVITY
  }

  /**
   * A piece of wall surface.
   *
   * @param x column of the vessel cell, of the whole grid
   * @param y row of it
   * @param area m²
   * @param at where it lies, m from the axis: x and y
   * @param normal pointing into the air
   */
  record Face(int x, int y, double area, double[] at, double[] normal) {}

  private static final double RING_TOLERANCE_MM = 0.01;

  final boolean round;
  final int nx;
  final int ny;
  final int nz;
  final int baseRows;
  final int fillRows;
  final double cell;
  final double[] tall;
  final double[] bottomAt;
  final Kind[][] kind;
  final double[][] area;
  final List<List<Face>> outer = new ArrayList<>();
  final List<List<Face>> inner = new ArrayList<>();

  private final Vessel vessel;

  Layout(Burn burn, boolean round) {
    this.round = round;
    this.vessel = burn.vessel();
    double grid = burn.fineness().gridMm();
    Solid cavity = vessel.cavity();
    baseRows = rows(vessel.baseMm(), grid);
    fillRows = rows(vessel.fillMm(), grid);
    double free = cavity.heightMm() - vessel.fillMm();
    int freeRows = free < 0.25 * grid ? 0 : rows(free, grid);
    nz = baseRows + fillRows + freeRows;
    tall = new double[nz];
    bottomAt = new double[nz];
    for (int z = 0; z < nz; z++) {
      double part = z < baseRows ? vessel.baseMm() / baseRows : vessel.fillMm() / fillRows;
      tall[z] = (z < baseRows + fillRows ? part : free / freeRows) / 1000;
      bottomAt[z] = z == 0 ? 0 : bottomAt[z - 1] + tall[z - 1];
    }
    double[] half = halfExtent(cavity);
    double wall = vessel.wallMm();
    if (round) {
      cell =
          cavity.isStraight()
              ? half[0] / Math.max(1, Math.round(half[0] / grid)) / 1000
              : grid / 1000;
      nx = (int) Math.ceil((half[0] + wall) / 1000 / cell - 1e-9) + 1;
      ny = 1;
    } else {
      cell = grid / 1000;
      nx = 2 * (int) Math.ceil((half[0] + wall) / grid - 1e-9);
      ny = 2 * (int) Math.ceil((half[1] + wall) / grid - 1e-9);
    }
    kind = new Kind[nz][nx * ny];
    area = new double[nz][nx * ny];
    lay(cavity);
  }

  private static int rows(double lengthMm, double gridMm) {
    return Math.max(1, (int) Math.round(lengthMm / gridMm));
  }

  private static double[] halfExtent(Solid cavity) {
    double length = 0;
    double width = 0;
    for (double share : new double[] {0, 0.5, 1}) {
      Ring ring = new Ring(cavity.sectionAt(share * cavity.heightMm(), RING_TOLERANCE_MM));
      length = Math.max(length, ring.halfLength());
      width = Math.max(width, ring.halfWidth());
    }
    return new double[] {length, width};
  }

  private void lay(Solid cavity) {
    double[][] clear = new double[0][];
    for (int z = 0; z < nz; z++) {
      boolean sameAsBelow = z > 0 && (cavity.isStraight() || z < baseRows);
      Ring ring = ringOf(cavity, z);
      if (!sameAsBelow) {
        clear = clearances(ring);
      }
      layPlane(z, clear, ring, cavity);
    }
  }

  private Ring ringOf(Solid cavity, int z) {
    double middle = 1000 * (bottomAt[z] + tall[z] / 2) - vessel.baseMm();
    double at = Math.max(0, Math.min(cavity.heightMm(), middle));
    return new Ring(cavity.sectionAt(at, RING_TOLERANCE_MM));
  }

  /** Distance from the cavity's wall, mm, of every cell's centre. */
  private double[][] clearances(Ring ring) {
    double[][] clear = new double[nx * ny][];
    for (int y = 0; y < ny; y++) {
      for (int x = 0; x < nx; x++) {
        clear[y * nx + x] = clearance(ring, xAt(x), yAt(y));
      }
    }
    return clear;
  }

  private double[] clearance(Ring ring, double x, double y) {
    if (round) {
      return new double[] {ring.halfLength() - 1000 * x, 1, 0};
    }
    return ring.clearance(1000 * x, 1000 * y);
  }

  /** Centre of a column, m from the axis. */
  double xAt(int x) {
    return round ? (x + 0.5) * cell : (x + 0.5 - nx / 2.0) * cell;
  }

  /** Centre of a row, m from the axis. */
  double yAt(int y) {
    return round ? 0 : (y + 0.5 - ny / 2.0) * cell;
  }

  private void layPlane(int z, double[][] clear, Ring ring, Solid cavity) {
    Kind inside = z < baseRows ? Kind.VESSEL : z < baseRows + fillRows ? Kind.WAX : Kind.CAVITY;
    for (int i = 0; i < clear.length; i++) {
      boolean wall = clear[i][0] > -vessel.wallMm() - 1e-9;
      kind[z][i] = clear[i][0] > 1e-9 ? inside : wall ? Kind.VESSEL : Kind.OUTSIDE;
    }
    if (z >= baseRows) {
      closeThinWall(z, inside);
    }
    double section = meanSection(cavity, z);
    double perimeter = ring.perimeter() / 1000;
    double wall = vessel.wallMm() / 1000;
    double band = perimeter * wall + Math.PI * wall * wall;
    share(z, inside, z < baseRows ? section + band : section);
    if (z >= baseRows) {
      share(z, Kind.VESSEL, band);
    }
    double slope = z < baseRows ? 1 : slope(cavity, z, perimeter);
    outer.add(faces(z, ring, true, (perimeter + 2 * Math.PI * wall) * tall[z] * slope));
    inner.add(z < baseRows ? List.of() : faces(z, ring, false, perimeter * tall[z] * slope));
  }

  /** A wall thinner than a cell still stands between the wax and the air. */
  private void closeThinWall(int z, Kind inside) {
    for (int y = 0; y < ny; y++) {
      for (int x = 0; x < nx; x++) {
        if (kindAt(z, x, y) == inside) {
          for (int[] to : SIDES) {
            if (kindAt(z, x + to[0], y + to[1]) == Kind.OUTSIDE && isInGrid(x + to[0], y + to[1])) {
              kind[z][(y + to[1]) * nx + x + to[0]] = Kind.VESSEL;
            }
          }
        }
      }
    }
  }

  private static final int[][] SIDES = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};

  private boolean isInGrid(int x, int y) {
    return x >= 0 && x < nx && y >= 0 && y < ny;
  }

  /** What stands in a cell of the whole grid; outside beyond its edge. */
  Kind kindAt(int z, int x, int y) {
    boolean axis = round && x < 0;
    return axis ? kind[z][0] : isInGrid(x, y) ? kind[z][y * nx + x] : Kind.OUTSIDE;
  }

  private double meanSection(Solid cavity, int z) {
    if (z < baseRows || cavity.isStraight()) {
      return cavity.areaAtMm2(0) * 1e-6;
    }
    double low = 1000 * bottomAt[z] - vessel.baseMm();
    double high = Math.min(cavity.heightMm(), low + 1000 * tall[z]);
    double volume = cavity.volumeBelowMl(high) - cavity.volumeBelowMl(Math.max(0, low));
    return volume * 1e-6 / tall[z];
  }

  private double slope(Solid cavity, int z, double perimeter) {
    if (cavity.isStraight()) {
      return 1;
    }
    double low = Math.max(0, 1000 * bottomAt[z] - vessel.baseMm());
    double high = Math.min(cavity.heightMm(), low + 1000 * tall[z]);
    double change = (cavity.areaAtMm2(high) - cavity.areaAtMm2(low)) * 1e-6;
    return Math.hypot(1, change / (tall[z] * perimeter));
  }

  /** Gives the cells of a kind in a plane the true area together. */
  private void share(int z, Kind of, double trueArea) {
    double sum = 0;
    for (int i = 0; i < kind[z].length; i++) {
      if (kind[z][i] == of) {
        area[z][i] = plainArea(i % nx);
        sum += area[z][i];
      }
    }
    if (sum == 0) {
      throw new OutOfRange("grid_mm", "the grid is too coarse for this vessel", "take a finer one");
    }
    for (int i = 0; i < kind[z].length; i++) {
      area[z][i] *= kind[z][i] == of ? trueArea / sum : 1;
    }
  }

  /** Area of a column seen from above, before the sums are set right. */
  double plainArea(int x) {
    return round ? Math.PI * (2 * x + 1) * cell * cell : cell * cell;
  }

  private List<Face> faces(int z, Ring ring, boolean outward, double trueArea) {
    List<Face> found = new ArrayList<>();
    double sum = 0;
    for (int y = 0; y < ny; y++) {
      for (int x = 0; x < nx; x++) {
        if (kindAt(z, x, y) != Kind.VESSEL) {
          continue;
        }
        for (int[] to : SIDES) {
          Kind beside = kindAt(z, x + to[0], y + to[1]);
          boolean wanted =
              outward
                  ? beside == Kind.OUTSIDE && !(round && to[1] != 0)
                  : beside == Kind.WAX || beside == Kind.CAVITY;
          if (wanted) {
            Face face = face(ring, x, y, to);
            found.add(face);
            sum += face.area;
          }
        }
      }
    }
    List<Face> scaled = new ArrayList<>();
    for (Face f : found) {
      scaled.add(new Face(f.x, f.y, f.area * trueArea / sum, f.at, f.normal));
    }
    return scaled;
  }

  private Face face(Ring ring, int x, int y, int[] to) {
    double px = xAt(x) + to[0] * cell / 2;
    double py = yAt(y) + to[1] * cell / 2;
    double[] clear = clearance(ring, px, py);
    double square = Math.abs(clear[1] * to[0] + clear[2] * to[1]);
    double way = clear[1] * to[0] + clear[2] * to[1] < 0 ? -1 : 1;
    double weight = Math.max(square, 1e-6);
    return new Face(
        x, y, weight, new double[] {px, py}, new double[] {way * clear[1], way * clear[2]});
  }

  /** True when the cells and their areas are the same left and right, or front and back. */
  boolean isMirrored(boolean left) {
    for (int z = 0; z < nz; z++) {
      for (int y = 0; y < ny; y++) {
        for (int x = 0; x < nx; x++) {
          int mirror = left ? y * nx + nx - 1 - x : (ny - 1 - y) * nx + x;
          if (kind[z][y * nx + x] != kind[z][mirror]) {
            return false;
          }
        }
      }
    }
    return !round;
  }
}
