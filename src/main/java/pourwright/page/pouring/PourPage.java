package pourwright.page.pouring;

import java.util.List;
import pourwright.page.Form;

/**
 * One pour at the bench: finished strings.
 *
 * @param form what was typed
 * @param path this pour's path
 * @param heading what is poured
 * @param open whether it is under way
 * @param cautions what to mind while it is hot
 * @param cooling the cooling clock; empty text when there is nothing to wait for
 * @param step the next step
 * @param redose what puts a wrong load right; an empty sentence when the load is right
 * @param taps one-tap records
 * @param vessels vessels that may be filled
 * @param resting until when its candles rest; empty when none does
 * @param done what was recorded
 */
public record PourPage(
    Form form,
    String path,
    String heading,
    boolean open,
    List<String> cautions,
    Cooling cooling,
    StepCard step,
    Redosing redose,
    Taps taps,
    List<VesselTick> vessels,
    String resting,
    List<DoneStep> done) {

  /**
   * The cooling clock.
   *
   * @param waitsFor what for, as "add the fragrance at 72 °C (68 to 76)"; empty for nothing
   * @param when the time, large
   * @param range earliest and latest
   * @param notes warnings and cautions of the moment
   * @param readings readings it stands on
   */
  public record Cooling(
      String waitsFor, String when, String range, List<String> notes, List<String> readings) {}

  /**
   * The next step.
   *
   * @param key its key; empty when all are recorded
   * @param number as "Step 6 of 10"
   * @param sentence what to do
   * @param hint more about it, or empty
   * @param template where the wick template is printed, or empty
   * @param weighs what is weighed or counted
   * @param takesTemperature whether a thermometer reading belongs to it
   * @param waitMinutes how long to wait, empty when nothing is waited for
   */
  public record StepCard(
      String key,
      String number,
      String sentence,
      String hint,
      String template,
      List<Weighing> weighs,
      boolean takesTemperature,
      String waitMinutes) {}

  /**
   * Something to weigh.
   *
   * @param field the field's name
   * @param name the material
   * @param figure grams or pieces, large
   * @param unit g or pcs
   * @param lot the lot it is drawn from
   * @param load the load it makes and of what, empty for all but fragrance
   */
  public record Weighing(
      String field, String name, String figure, String unit, String lot, String load) {}

  /** What puts a wrong load right. */
  public record Redosing(String sentence, String material, String grams) {}

  /** One-tap records. */
  public record Taps(List<Tap> tops, List<Tap> mishaps) {}

  /** A button. */
  public record Tap(String key, String words) {}

  /** A vessel that may be filled. */
  public record VesselTick(String id, String mark, boolean ticked) {}

  /** A recorded step. */
  public record DoneStep(String what, String when, String with) {}
}
