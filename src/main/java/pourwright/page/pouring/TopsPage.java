package pourwright.page.pouring;

import java.util.List;

/**
 * How tops came out: finished strings.
 *
 * @param lead on how many pours it stands
 * @param tops each top that was seen
 */
public record TopsPage(String lead, List<Row> tops) {
  /** A top: how often, what helps, and the conditions looked at. */
  public record Row(String name, String often, String remedy, String said, List<Look> looks) {}

  /** A condition: with it, without it, odds with their range, corrected chance. */
  public record Look(
      String condition, String with, String without, String odds, String chance, boolean found) {}
}
