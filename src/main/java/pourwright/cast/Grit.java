package pourwright.cast;

import java.util.List;
import java.util.Map;
import pourwright.quantity.OutOfRange;

/**
 * Sanding grits and the size of their grains. The two scales agree only up to 220, so the scale is
 * kept with the number. Source: ISO 6344 (P) and CAMI tables.
 *
 * @param scale P or CAMI
 * @param number as printed on the back
 */
public record Grit(Scale scale, int number) {

  /** How the number is meant. */
  public enum Scale {
    /** FEPA, printed with a P. */
    P,
    /** CAMI, printed without. */
    CAMI
  }

  private static final Map<Integer, double[]> MICROMETRES =
      Map.ofEntries(
          Map.entry(60, new double[] {269, 265}),
          Map.entry(80, new double[] {201, 190}),
          Map.entry(100, new double[] {162, 140}),
          Map.entry(120, new double[] {125, 115}),
          Map.entry(150, new double[] {100, 92}),
          Map.entry(180, new double[] {82, 82}),
          Map.entry(220, new double[] {68, 68}),
          Map.entry(240, new double[] {58.5, 53}),
          Map.entry(320, new double[] {46.2, 36}),
          Map.entry(400, new double[] {35, 23}),
          Map.entry(600, new double[] {25.8, 16}),
          Map.entry(800, new double[] {21.8, 12.6}));

  /** Refuses numbers that are not in the table. */
  public Grit {
    if (!MICROMETRES.containsKey(number)) {
      throw new OutOfRange("grit", "grit " + number + " is not in the table", "use 60 to 800");
    }
  }

  /** Average grain, in µm. */
  public double micrometres() {
    double[] sizes = MICROMETRES.getOrDefault(number, new double[] {Double.NaN, Double.NaN});
    return sizes[scale == Scale.P ? 0 : 1];
  }

  /** The steps of a sequence that are coarser than two to one, where scratches would stay. */
  public static List<Grit> tooFarAfter(List<Grit> sequence) {
    return java.util.stream.IntStream.range(1, sequence.size())
        .filter(i -> sequence.get(i - 1).micrometres() > 2.05 * sequence.get(i).micrometres())
        .mapToObj(sequence::get)
        .toList();
  }
}
