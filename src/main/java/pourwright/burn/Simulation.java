package pourwright.burn;

import java.util.ArrayList;
import java.util.List;
import pourwright.burn.Layout.Kind;
import pourwright.heat.Box;
import pourwright.heat.Stepper;
import pourwright.quantity.OutOfRange;
import pourwright.shape.Circle;
import pourwright.shape.Outline;

/**
 * A burning candle in its vessel: melting and conduction by {@code heat}, flames by {@link Glow},
 * the room by {@link Exchange}, the wax sinking evenly as it burns, its level carried inside the
 * topmost row. Maths, range and errors: docs/models/burn.md.
 */
public final class Simulation {
  /** A wick may stand this far from the middle and still be taken as central. */
  private static final double CENTRAL_MM = 0.25;

  private final Burn burn;
  private final Tract tract;
  private final Layout of;
  private final Box box;
  private final Level level;
  private final Exchange exchange;
  private final Glow glow;
  private final PoolGauge gauge;
  private final List<BurnResult.Pool> pool = new ArrayList<>();
  private final double firstKg;
  private double burntKg;
  private double heatInJ;
  private double releasedJ;
  private double returnedJ;
  private double carriedJ;
  private double fullAtH = Double.NaN;
  private double owed;
  private boolean out;

  /** Told how far a run is; says whether to go on. */
  @FunctionalInterface
  public interface Watcher {
    /**
     * @param share of the run that is done, 0 to 1
     * @param frame the surface and a section now
     * @return false to stop the run
     */
    boolean goOn(double share, Frame frame);
  }

  private Simulation(Burn burn) {
    this.burn = burn;
    boolean axis = isAxisymmetric(burn);
    of = new Layout(burn, axis);
    tract = new Tract(of, burn);
    box = tract.box;
    level =
        new Level(
            of.baseRows + of.fillRows - 1,
            burn.fineness().sharp() ? Level.JOIN_BELOW_SHARP : Level.JOIN_BELOW);
    exchange = new Exchange(burn, tract);
    glow = new Glow(burn, tract, exchange.taken);
    gauge = new PoolGauge(burn, tract);
    firstKg = waxKg();
  }

  /** True when two dimensions are enough and wanted. */
  static boolean isAxisymmetric(Burn burn) {
    boolean fits =
        isRound(burn.vessel().cavity().bottom())
            && isRound(burn.vessel().cavity().top())
            && burn.wicks().size() == 1
            && Math.hypot(burn.wicks().get(0).xMm(), burn.wicks().get(0).yMm()) <= CENTRAL_MM;
    return switch (burn.fineness().solver()) {
      case THREE_D -> false;
      case AUTO -> fits;
      case AXISYMMETRIC -> {
        if (!fits) {
          throw new OutOfRange(
              "solver",
              "the axisymmetric solver needs a round cavity and one wick in its middle",
              "use three_d or auto");
        }
        yield true;
      }
    };
  }

  private static boolean isRound(Outline outline) {
    double length = outline.lengthMm();
    double round = Math.PI / 4 * length * length;
    boolean square = Math.abs(length - outline.widthMm()) < 1e-9;
    return outline instanceof Circle || (square && Math.abs(outline.areaMm2() / round - 1) < 1e-9);
  }

  /** Runs to the end. */
  public static BurnResult run(Burn burn) {
    return run(burn, (share, frame) -> true);
  }

  /** Runs until the end or until the watcher says no more; what is known by then is answered. */
  public static BurnResult run(Burn burn, Watcher watcher) {
    return new Simulation(burn).burnDown(watcher);
  }

  private BurnResult burnDown(Watcher watcher) {
    Burn.Fineness fineness = burn.fineness();
    double end = fineness.hours() * 3600;
    int records = (int) Math.max(1, Math.round(end / fineness.recordEveryS()));
    Stepper.Precision precision = of.round ? Stepper.Precision.DOUBLE : fineness.precision();
    int threads = of.round ? 1 : fineness.threads();
    try (Stepper stepper = new Stepper(box, precision, threads)) {
      for (int r = 1; r <= records; r++) {
        double from = end * (r - 1) / records;
        span(stepper, from, end * r / records - from);
        if (!watcher.goOn((double) r / records, gauge.frame(level, end * r / records / 3600))) {
          break;
        }
      }
      return result(stepper);
    }
  }

  private void span(Stepper stepper, double from, double seconds) {
    int steps = (int) Math.ceil(seconds / burn.fineness().stepMaxS() - 1e-9);
    double step = seconds / steps;
    for (int i = 0; i < steps; i++) {
      exchange.refresh(level);
      double power = out ? 0 : glow.refresh(level);
      returnedJ += out ? 0 : glow.toWaxW() * step;
      stepper.reloadExchange();
      stepper.advance(step);
      heatInJ += power * step;
      sink(stepper, step);
      if (Double.isNaN(fullAtH) && gauge.isFull(level)) {
        fullAtH = (from + (i + 1) * step) / 3600;
      }
    }
    exchange.refresh(level);
    pool.add(gauge.pool(level, (from + seconds) / 3600, exchange.wallMaxC, exchange.baseMaxC));
  }

  /** Takes away what burnt in a step, from the whole surface evenly. */
  private void sink(Stepper stepper, double seconds) {
    if (out) {
      return;
    }
    double rate = burn.wicks().stream().mapToDouble(BurningWick::gramsPerHour).sum() / 3.6e6;
    releasedJ += rate * burn.flame().heatOfCombustion() * seconds;
    double volume = rate * seconds / burn.wax().density();
    double row = waxArea(level.plane) * of.tall[level.plane];
    double down = volume / row;
    if (level.plane == of.baseRows && level.share - owed - down < Level.LEAST) {
      out = true;
      for (double[] plane : box.source) {
        java.util.Arrays.fill(plane, 0);
      }
      return;
    }
    burntKg += rate * seconds;
    if (burn.fineness().wholeRows()) {
      owed += down;
      if (owed >= 1 && level.plane > of.baseRows) {
        dropRow(stepper, row);
      }
      return;
    }
    carriedJ += carried(level.plane, down);
    level.share -= down;
    if (level.share < level.joinBelow && level.plane > of.baseRows) {
      join(stepper);
    } else {
      tract.connect(level.plane, level.share);
      stepper.reload(level.plane);
    }
  }

  /** The whole topmost row leaves with its heat; what is owed beyond it is owed by the next. */
  private void dropRow(Stepper stepper, double row) {
    carriedJ += carried(level.plane, 1);
    tract.empty(level.plane);
    stepper.reload(level.plane);
    level.plane--;
    owed = (owed - 1) * row / (waxArea(level.plane) * of.tall[level.plane]);
    tract.connect(level.plane, 1);
    stepper.reload(level.plane);
  }

  private double waxArea(int z) {
    double sum = 0;
    for (int i = 0; i < of.area[z].length; i++) {
      sum += of.kind[z][i] == Kind.WAX ? of.area[z][i] : 0;
    }
    return sum;
  }

  private double carried(int z, double down) {
    double sum = 0;
    for (int i = 0; i < box.length; i++) {
      if (box.melts[z][i] > 0) {
        sum += box.enthalpy[z][i] * box.volume[z][i] / level.share * down;
      }
    }
    return sum * tract.times;
  }

  /** What is left of the topmost row joins the one below, with its heat. */
  private void join(Stepper stepper) {
    int z = level.plane;
    tract.connect(z, level.share);
    double volume = waxArea(z) * of.tall[z] * level.share / tract.times;
    double below = waxArea(z - 1) * of.tall[z - 1] / tract.times;
    double heat = 0;
    for (int i = 0; i < box.length; i++) {
      heat += box.melts[z][i] > 0 ? box.enthalpy[z][i] * box.volume[z][i] : 0;
    }
    double added = volume / below;
    double given = 0;
    for (int i = 0; i < box.length; i++) {
      if (box.melts[z - 1][i] > 0 && box.melts[z][i] > 0) {
        double own = box.volume[z - 1][i] * added * box.enthalpy[z][i];
        given += own;
        box.enthalpy[z - 1][i] += own / box.volume[z - 1][i];
      }
    }
    double rest = (heat - given) / below;
    for (int i = 0; i < box.length; i++) {
      if (box.melts[z - 1][i] > 0) {
        box.enthalpy[z - 1][i] = (box.enthalpy[z - 1][i] + rest) / (1 + added);
      }
    }
    tract.empty(z);
    level.plane = z - 1;
    level.share = 1 + added;
    tract.connect(z - 1, level.share);
    stepper.reload(z);
    stepper.reload(z - 1);
  }

  private double waxKg() {
    double sum = 0;
    for (int z = 0; z < of.nz; z++) {
      for (int i = 0; i < box.length; i++) {
        sum += box.melts[z][i] > 0 ? box.volume[z][i] : 0;
      }
    }
    return sum * burn.wax().density() * tract.times;
  }

  private BurnResult result(Stepper stepper) {
    double owedKg = owed * waxArea(level.plane) * of.tall[level.plane] * burn.wax().density();
    double error = (firstKg - burntKg - (waxKg() - owedKg)) / firstKg;
    BurnResult.Balance balance =
        new BurnResult.Balance(
            heatInJ, stepper.lostJ() * tract.times, carriedJ, box.storedJ() * tract.times, error);
    BurnResult.Effort effort =
        new BurnResult.Effort(box.cells(), stepper.stages(), tract.times, of.round);
    double share = releasedJ == 0 ? 0 : returnedJ / releasedJ;
    BurnResult plain =
        new BurnResult(
            List.copyOf(pool),
            fullAtH,
            exchange.wallMaxC,
            exchange.baseMaxC,
            (firstKg - burntKg) * 1000,
            share,
            balance,
            effort,
            List.of());
    return Doubts.with(burn, plain, out);
  }
}
