package pourwright.page.casting;

import java.util.List;

/**
 * What goes with a defect, in her own casts: finished strings.
 *
 * @param defect its words
 * @param causes what usually brings it about
 * @param remedy what usually helps
 * @param said what the counts carry, in a sentence
 * @param choices the defects, with how many casts had each
 * @param rows conditions, the likeliest first
 * @param looked how many conditions were looked at
 */
public record DefectsPage(
    String defect,
    String causes,
    String remedy,
    String said,
    List<Choice> choices,
    List<Row> rows,
    int looked) {

  /**
   * A defect to look at.
   *
   * @param path of its page
   * @param words and count
   * @param here whether it is the one shown
   */
  public record Choice(String path, String words, boolean here) {}

  /**
   * A condition.
   *
   * @param condition in words
   * @param with casts under it that had the defect
   * @param without other casts that had it
   * @param odds odds ratio with its 95 % interval
   * @param chance p corrected for all conditions looked at
   * @param found whether it is a finding
   */
  public record Row(
      String condition, String with, String without, String odds, String chance, boolean found) {}
}
