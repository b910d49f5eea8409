package pourwright.page.casting;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;
import pourwright.page.house.MistakesPart;

/**
 * A cast at the bench, one step a screen: finished strings.
 *
 * @param heading mark and what is cast
 * @param path of the cast
 * @param form what was entered
 * @param step the step to be done, null once all are
 * @param demold what came out, for the end
 * @param done steps that were recorded
 * @param photos files that were kept with it
 * @param subject what a photo belongs to
 * @param finished whether the cast is closed
 * @param ripening how far it is on its way to demolding, null before it is covered
 * @param mistakes mistakes by name, and grades
 * @param water all water of the cast as one sum, or an empty string
 */
public record CastPage(
    String heading,
    String path,
    Form form,
    @org.jspecify.annotations.Nullable Step step,
    List<Demold> demold,
    List<String> done,
    Map<String, String> photos,
    String subject,
    boolean finished,
    @org.jspecify.annotations.Nullable Wait ripening,
    MistakesPart mistakes,
    String water) {

  /**
   * The wait for demolding.
   *
   * @param age so far and wanted, digits only
   * @param when it may be demolded
   * @param origin what this rests on
   */
  public record Wait(String age, String when, String origin) {}

  /**
   * The step to be done.
   *
   * @param key of it
   * @param number such as "step 3 of 9"
   * @param sentence what to do
   * @param caution what to mind, or an empty string
   * @param weighs what is weighed
   * @param takesTemperature whether a thermometer belongs to it
   * @param molds the molds to choose from, where they are set
   * @param takesRest whether the rest and a cup of the mix may be weighed
   */
  public record Step(
      String key,
      String number,
      String sentence,
      String caution,
      List<Weigh> weighs,
      boolean takesTemperature,
      List<MoldTick> molds,
      boolean takesRest) {}

  /**
   * A mold to be filled.
   *
   * @param value card and number
   * @param label name, number and the casts it has served
   * @param take whether it is its turn
   */
  public record MoldTick(String value, String label, boolean take) {}

  /**
   * Something to weigh.
   *
   * @param field of the form
   * @param name as it is read
   * @param figure the amount, digits only
   * @param unit of it
   * @param isMost whether it is only the most, so that the amount is asked for
   * @param scale which scale it takes, where it is too fine for the coarsest; or an empty string
   */
  public record Weigh(
      String field, String name, String figure, String unit, boolean isMost, String scale) {}

  /**
   * Castings of a vessel that come out of their molds.
   *
   * @param design code
   * @param name as it is read
   * @param cast how many were cast
   */
  public record Demold(String design, String name, int cast) {}

  /** The defects by the name of their field. */
  public Map<String, String> defects() {
    Map<String, String> defects = new java.util.LinkedHashMap<>();
    for (pourwright.cast.Defect defect : pourwright.cast.Defect.values()) {
      defects.put(defect.reading(), defect.words());
    }
    return defects;
  }
}
