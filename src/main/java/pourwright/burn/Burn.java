package pourwright.burn;

import java.util.List;
import pourwright.heat.Melting;
import pourwright.heat.Stepper.Precision;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * A burn to be simulated: what stands where, and how finely to compute it.
 *
 * @param across how many times better than at rest the liquid conducts across the pool
 * @param upright the same from the surface down
 * @param wicks one or more, all inside the cavity
 * @param contact between wax and vessel, W/(m²·K), 1 or more; infinite for wax that lies close.
 *     About 100 for wax that has shrunk from the wall. Exact for hard wax; melted wax, which in
 *     truth wets the wall again, is held apart too, so this bounds what a gap can do
 */
public record Burn(
    Vessel vessel,
    Melting wax,
    double across,
    double upright,
    List<BurningWick> wicks,
    Flame flame,
    Room room,
    Fineness fineness,
    double contact) {

  /** Wax that lies close to wall and base. */
  public static final double CLOSE = Double.POSITIVE_INFINITY;

  /** With wax that lies close to wall and base. */
  public Burn(
      Vessel vessel,
      Melting wax,
      double across,
      double upright,
      List<BurningWick> wicks,
      Flame flame,
      Room room,
      Fineness fineness) {
    this(vessel, wax, across, upright, wicks, flame, room, fineness, CLOSE);
  }

  /** The same with another contact between wax and vessel. */
  public Burn withContact(double wPerM2K) {
    return new Burn(vessel, wax, across, upright, wicks, flame, room, fineness, wPerM2K);
  }

  /** Checks what belongs to no part alone. */
  public Burn {
    wicks = List.copyOf(wicks);
    Check.between("liquid_enhancement_horizontal", across, 1, 1000);
    Check.between("liquid_enhancement_vertical", upright, 1, 1000);
    if (!(contact >= 1)) {
      throw new OutOfRange(
          "contact_w_per_m2_k",
          contact + " is no contact between wax and vessel",
          "give 1 or more, about 100 for wax that has shrunk from the wall");
    }
    if (wax.fromC() <= room.celsius()) {
      throw new OutOfRange(
          "melt_from_c", "the wax would be melted by the room alone", "check both temperatures");
    }
    for (int i = 0; i < wicks.size(); i++) {
      BurningWick wick = wicks.get(i);
      if (!vessel.cavity().contains(wick.xMm(), wick.yMm(), vessel.fillMm())) {
        throw new OutOfRange(
            "wicks/" + i, "this wick stands outside the wax", "x and y count from the centre");
      }
    }
  }

  /** Which solver. */
  public enum Solver {
    /** Round cavity, one wick in its middle: radius and height. */
    AXISYMMETRIC,
    /** Any outline and any wicks. */
    THREE_D,
    /** The first where it fits, else the second. */
    AUTO
  }

  /**
   * How finely and how long.
   *
   * @param hours 0.01 to 48
   * @param gridMm 0.25 to 10
   * @param recordEveryS from 1 s
   * @param symmetry whether halves and quarters may be taken for the whole
   * @param wholeRows wax leaves a whole row of cells at a time, not evenly inside the topmost
   * @param stepMaxS longest time step, s
   * @param sharp beyond the formulation that other programs are compared with: faces within the wax
   *     by the integral of the conductivity, radiation taken up at the surface itself
   */
  public record Fineness(
      double hours,
      double gridMm,
      double recordEveryS,
      Solver solver,
      Precision precision,
      int threads,
      boolean symmetry,
      boolean wholeRows,
      double stepMaxS,
      boolean sharp) {

    /** Checks the ranges. */
    public Fineness {
      Check.between("hours", hours, 0.01, 48);
      Check.between("grid_mm", gridMm, 0.25, 10);
      Check.between("record_every_s", recordEveryS, 1, 48 * 3600);
      Check.between("threads", threads, 1, 64);
      Check.between("step_max_s", stepMaxS, 0.01, 300);
    }

    /** The usual: symmetry used, single precision in three dimensions, steps up to 30 s. */
    public static Fineness of(double hours, double gridMm, double recordEveryS, Solver solver) {
      return new Fineness(
          hours, gridMm, recordEveryS, solver, Precision.SINGLE, 2, true, false, 30, false);
    }

    /** The same with other threads. */
    public Fineness withThreads(int n) {
      return with(precision, n, symmetry, wholeRows, stepMaxS, sharp);
    }

    /** The same with another precision. */
    public Fineness withPrecision(Precision other) {
      return with(other, threads, symmetry, wholeRows, stepMaxS, sharp);
    }

    /** The same with or without symmetry. */
    public Fineness withSymmetry(boolean used) {
      return with(precision, threads, used, wholeRows, stepMaxS, sharp);
    }

    /** The same with wax leaving in whole rows or evenly. */
    public Fineness withWholeRows(boolean whole) {
      return with(precision, threads, symmetry, whole, stepMaxS, sharp);
    }

    /** The same with another longest step. */
    public Fineness withStep(double seconds) {
      return with(precision, threads, symmetry, wholeRows, seconds, sharp);
    }

    /** The same in the plain scheme, or in the one that settles sooner with the grid. */
    public Fineness withSharp(boolean on) {
      return with(precision, threads, symmetry, wholeRows, stepMaxS, on);
    }

    private Fineness with(
        Precision p, int n, boolean used, boolean whole, double step, boolean on) {
      return new Fineness(hours, gridMm, recordEveryS, solver, p, n, used, whole, step, on);
    }
  }
}
