package pourwright.page.pouring;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pourwright.page.Form;
import pourwright.page.board.Drawing;
import pourwright.page.house.MistakesPart;

/**
 * One pour at the bench: finished strings.
 *
 * @param form what was typed
 * @param path this pour's path
 * @param heading what is poured
 * @param open whether it is under way
 * @param cautions what to mind while it is hot
 * @param cooling the cooling clock; empty text when there is nothing to wait for
 * @param coolingFirst whether one waits for the wax now, so that its clock stands above the step
 * @param step the next step
 * @param redose what puts a wrong load right; an empty sentence when the load is right
 * @param fills lines and masses of one of each candle
 * @param taps one-tap records
 * @param mistakes mistakes by name, and grades
 * @param filling vessels that may be filled
 * @param resting until when its candles rest; empty when none does
 * @param left what is left in the pitcher and where it may go
 * @param photos pictures kept with it
 * @param done what was recorded
 */
public record PourPage(
    Form form,
    String path,
    String heading,
    boolean open,
    List<String> cautions,
    Cooling cooling,
    boolean coolingFirst,
    StepCard step,
    Redosing redose,
    List<FillCard> fills,
    Taps taps,
    MistakesPart mistakes,
    Filling filling,
    String resting,
    Left left,
    Photos photos,
    List<DoneStep> done) {

  /**
   * The cooling clock.
   *
   * @param waitsFor what for, as "add the fragrance at 72 °C (68 to 76)"; empty for nothing
   * @param when the time, large
   * @param range earliest and latest
   * @param notes warnings and cautions of the moment
   * @param readings readings it stands on
   * @param reheating how often it was heated again
   */
  public record Cooling(
      String waitsFor,
      String when,
      String range,
      List<String> notes,
      List<String> readings,
      Reheating reheating) {}

  /**
   * Heating a scented pitcher again.
   *
   * @param said how often it was; empty where there is nothing to count
   * @param reasonAsked whether once more asks for a reason
   */
  public record Reheating(String said, boolean reasonAsked) {
    /** Nothing to count yet. */
    static final Reheating NONE = new Reheating("", false);
  }

  /**
   * The next step.
   *
   * @param key its key; empty when all are recorded
   * @param number as "Step 6 of 10"
   * @param sentence what to do
   * @param hints more about it
   * @param templates where wick templates are printed
   * @param weighs what is weighed or counted
   * @param asks what else is asked
   * @param thermometer what the thermometer is held to, empty when it is not needed
   * @param waitMinutes how long to wait, empty when nothing is waited for
   */
  public record StepCard(
      String key,
      String number,
      String sentence,
      List<String> hints,
      List<Print> templates,
      List<Weighing> weighs,
      List<Ask> asks,
      String thermometer,
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

  /** A wick template: where it is printed, and of which candle. */
  public record Print(String link, String name) {}

  /** What puts a wrong load right. */
  public record Redosing(String sentence, String material, String grams) {}

  /** One-tap records. */
  public record Taps(List<Tap> tops, List<Tap> mishaps) {}

  /** A button. */
  public record Tap(String key, String words) {}

  /** A field that belongs to one step alone. */
  public record Ask(String field, String label, String unit, String mode, String hint) {}

  /**
   * How high and how much.
   *
   * @param candle which candle; empty where a pitcher fills one design only
   * @param drawing the section with hot line and set line; null when it cannot be drawn
   * @param lines figures of it, in sentences
   */
  public record FillCard(String candle, @Nullable Drawing drawing, List<String> lines) {}

  /**
   * What may be filled, candle by candle; no group while nothing is filled yet.
   *
   * @param vesselless whether there is nothing to pour into
   */
  public record Filling(List<FillingGroup> groups, boolean vesselless) {
    /** Nothing to fill yet. */
    static final Filling NONE = new Filling(List.of(), true);

    /** Copies. */
    public Filling {
      groups = List.copyOf(groups);
    }
  }

  /**
   * Vessels of the house and bought ones for a candle.
   *
   * @param title as "2 × Bollard, rain"
   * @param field the field of its ticks
   */
  public record FillingGroup(
      String title, String field, List<VesselTick> vessels, List<BoughtLot> bought) {}

  /** A vessel that may be filled, with its mass where it was weighed empty. */
  public record VesselTick(String id, String mark, String empty, boolean ticked) {}

  /** A lot of bought vessels. */
  public record BoughtLot(String field, long lot, String label) {}

  /**
   * What is left in the pitcher.
   *
   * @param asked whether something is poured already
   * @param lines what was written down of it, and why a way is closed
   * @param whither where it may go, by key
   */
  public record Left(boolean asked, List<String> lines, Map<String, String> whither) {
    /** Copies. */
    public Left {
      lines = List.copyOf(lines);
    }
  }

  /** Pictures kept with the pour, and what a new one is kept with. */
  public record Photos(String subject, List<Photo> kept) {}

  /** A picture. */
  public record Photo(String link, String words) {}

  /** A recorded step. */
  public record DoneStep(String what, String when, String with) {}
}
