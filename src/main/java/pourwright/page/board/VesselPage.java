package pourwright.page.board;

import java.util.List;

/**
 * A vessel's or candle's page: finished strings.
 *
 * @param name of the design
 * @param root its path
 * @param section along its length
 * @param plan from above
 * @param body its rings, for turning it
 * @param figures what it holds and weighs
 * @param cautions what to know before it is trusted
 * @param canBeWeighed whether water can measure it
 * @param cast where a cast of it begins; empty for a candle and where no mix card is written
 */
public record VesselPage(
    String name,
    String root,
    Drawing section,
    Drawing plan,
    String body,
    List<Figure> figures,
    List<String> cautions,
    boolean canBeWeighed,
    String cast) {

  /**
   * One figure.
   *
   * @param label what it is
   * @param value with unit
   * @param range how far to trust it, or an empty string
   * @param more origin, and what would narrow it
   */
  public record Figure(String label, String value, String range, String more) {}
}
