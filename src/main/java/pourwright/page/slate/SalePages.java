package pourwright.page.slate;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/** What the pages of an order's money show: finished strings. */
public final class SalePages {
  private SalePages() {}

  /**
   * Orders to choose from.
   *
   * @param form what was looked for
   * @param orders the newest
   */
  public record Orders(Form form, List<String[]> orders) {}

  /**
   * One order's money.
   *
   * @param lines what is sold
   * @param total sum of the lines
   * @param money what came and went
   * @param open what is still owed
   * @param kinds kinds of money to choose from
   */
  public record Sale(
      Form form,
      String number,
      String path,
      String head,
      List<Line> lines,
      String total,
      List<String> money,
      String open,
      Map<String, String> kinds) {}

  /** A line. */
  public record Line(
      long id, String name, int pieces, String each, String origin, String sum, String typed) {}
}
