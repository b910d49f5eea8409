package pourwright.cast;

import java.util.List;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * How far a casting has come at the temperatures it had.
 *
 * <p>Sources: ASTM C1074: Nurse–Saul {@code M = Σ(T−T₀)Δt}, what is below the datum counting
 * nothing; Freiesleben Hansen and Pedersen (1977), equivalent age {@code tₑ = Σ
 * exp(−E/R·(1/T−1/Tᵣ))Δt}. For portland; a rapid powder has its own activation energy, to be fitted
 * from two set times.
 */
public final class Maturity {
  /** Molar gas constant, J/(mol·K). Source: CODATA 2018, exact. */
  static final double GAS = 8.314462618;

  private static final double ICE_K = 273.15;

  private Maturity() {}

  /**
   * One line of a temperature log.
   *
   * @param h time, in hours from any start
   * @param celsius temperature until the next line, in °C; not asked for on the last line
   */
  public record Line(double h, double celsius) {}

  /**
   * A log that has been looked through.
   *
   * @param lines at least two, in order of time
   */
  public record Log(List<Line> lines) {

    /** Refuses reversed and doubled times, naming the line. */
    public Log {
      lines = List.copyOf(lines);
      if (lines.size() < 2) {
        throw new OutOfRange(
            "log", "a log needs at least two lines", "the last line says when the log ends");
      }
      for (int i = 0; i < lines.size(); i++) {
        Check.finite("log/" + i + "/h", lines.get(i).h());
        if (i + 1 < lines.size()) {
          Check.between("log/" + i + "/c", lines.get(i).celsius(), -60, 120);
        }
        if (i > 0) {
          refuseOrder(i, lines.get(i).h(), lines.get(i - 1).h());
        }
      }
    }

    private static void refuseOrder(int i, double h, double before) {
      if (h == before) {
        throw new OutOfRange(
            "log/" + i + "/h",
            "line " + (i + 1) + " of the log has the same time as the line before",
            "leave one of the two out");
      }
      if (h < before) {
        throw new OutOfRange(
            "log/" + i + "/h",
            "line " + (i + 1) + " of the log is earlier than the line before",
            "put the lines in order of time");
      }
    }

    /**
     * Refuses stretches without a reading that are longer than {@code hours}.
     *
     * @throws OutOfRange naming the line after the gap
     */
    public Log withoutGapsOver(double hours) {
      for (int i = 1; i < lines.size(); i++) {
        double gap = lines.get(i).h() - lines.get(i - 1).h();
        if (gap > hours * (1 + 1e-9)) {
          throw new OutOfRange(
              "log/" + i + "/h",
              "before line " + (i + 1) + " of the log " + gap + " h have no reading",
              "fill the gap in, or allow a longer one");
        }
      }
      return this;
    }

    /** Hours from the first line to the last. */
    public double hours() {
      return lines.get(lines.size() - 1).h() - lines.get(0).h();
    }

    /** One temperature for so many hours. */
    public static Log steady(double celsius, double hours) {
      return new Log(List.of(new Line(0, celsius), new Line(hours, celsius)));
    }
  }

  /** Nurse–Saul maturity, in °C·h. */
  public static double nurseSaul(Log log, double datumC) {
    double sum = 0;
    for (int i = 0; i + 1 < log.lines().size(); i++) {
      double hours = log.lines().get(i + 1).h() - log.lines().get(i).h();
      sum += Math.max(0, log.lines().get(i).celsius() - datumC) * hours;
    }
    return sum;
  }

  /** Hours at the reference temperature that the log is worth. */
  public static double equivalentAgeH(Log log, double referenceC, double kiloJoulePerMol) {
    double sum = 0;
    for (int i = 0; i + 1 < log.lines().size(); i++) {
      double hours = log.lines().get(i + 1).h() - log.lines().get(i).h();
      sum += ageFactor(log.lines().get(i).celsius(), referenceC, kiloJoulePerMol) * hours;
    }
    return sum;
  }

  /** Hours at the reference temperature that one hour at {@code celsius} is worth. */
  public static double ageFactor(double celsius, double referenceC, double kiloJoulePerMol) {
    Check.between("c", celsius, -60, 120);
    Check.between("reference_c", referenceC, -10, 60);
    Check.between("activation_energy_kj_per_mol", kiloJoulePerMol, 0, 200);
    double inverse = 1 / (celsius + ICE_K) - 1 / (referenceC + ICE_K);
    return Math.exp(-kiloJoulePerMol * 1000 / GAS * inverse);
  }

  /** A time measured at one temperature, at another: longer in the cold. */
  public static double timeAt(
      double time, double measuredC, double celsius, double kiloJoulePerMol) {
    return Check.notNegative("time", time) / ageFactor(celsius, measuredC, kiloJoulePerMol);
  }

  /** Activation energy from two set times of one mix, in kJ/mol. */
  public static double activationEnergy(
      double time1, double celsius1, double time2, double celsius2) {
    Check.positive("time_1", time1);
    Check.positive("time_2", time2);
    if (celsius1 == celsius2) {
      throw new OutOfRange(
          "celsius_2", "both set times are at one temperature", "measure one warmer or colder");
    }
    double inverse = 1 / (celsius1 + ICE_K) - 1 / (celsius2 + ICE_K);
    return GAS * Math.log(time1 / time2) / inverse / 1000;
  }

  /** Activation energy of portland, in kJ/mol, by Freiesleben Hansen and Pedersen (1977). */
  public static double portlandActivationEnergy(double celsius) {
    return 33.5 + 1.47 * Math.max(0, 20 - celsius);
  }
}
