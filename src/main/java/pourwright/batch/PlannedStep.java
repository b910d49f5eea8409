package pourwright.batch;

import java.util.List;

/**
 * One step of a batch as it was planned: a sentence to read at the bench.
 *
 * @param key short name, unique in its batch, as {@code powder}
 * @param sentence what to do
 * @param care how it is watched over
 * @param minutes how long it takes or how long to wait, zero or more
 * @param amounts what is weighed or counted in it
 * @param takesTemperature true when a thermometer reading belongs to it
 */
public record PlannedStep(
    String key,
    String sentence,
    Care care,
    double minutes,
    List<PlannedAmount> amounts,
    boolean takesTemperature) {

  /** How much of a person a step takes. */
  public enum Care {
    /** Both hands. */
    HANDS,
    /** A person near, hands free: something is hot or lit. */
    WATCH,
    /** Nobody. */
    WAIT
  }

  /** Keeps its own copy. */
  public PlannedStep {
    amounts = List.copyOf(amounts);
  }

  /** A step of hands alone. */
  public static PlannedStep hands(String key, String sentence, double minutes) {
    return new PlannedStep(key, sentence, Care.HANDS, minutes, List.of(), false);
  }

  /** A step in which something is weighed or counted. */
  public static PlannedStep weigh(String key, String sentence, List<PlannedAmount> amounts) {
    return new PlannedStep(key, sentence, Care.HANDS, 2, amounts, false);
  }

  /** A wait that nobody has to stand beside. */
  public static PlannedStep waiting(String key, String sentence, double minutes) {
    return new PlannedStep(key, sentence, Care.WAIT, minutes, List.of(), false);
  }
}
