package pourwright.page.stockroom;

import java.util.List;
import pourwright.page.Form;

/** What the pages of goods left with shops show: finished strings. */
public final class ShopPages {
  private ShopPages() {}

  /**
   * All shops with goods, and leaving more.
   *
   * @param form what was typed
   * @param candles what may be left: code, name, how many there are
   * @param left what was left, newest first
   */
  public record All(Form form, List<Candle> candles, List<Left> left) {}

  /** A candle on the shelf. */
  public record Candle(String code, String name, int there) {}

  /**
   * Goods at one shop.
   *
   * @param state how many are there still
   */
  public record Left(String path, String name, String state) {}

  /**
   * One of them.
   *
   * @param open whether anything is still there
   * @param lines candle by candle
   * @param facts what is known of it
   * @param papers where its prices and papers are
   */
  public record One(
      Form form,
      String name,
      String path,
      boolean open,
      List<Line> lines,
      List<String> facts,
      String papers) {}

  /**
   * A candle at the shop.
   *
   * @param line number of the order line
   * @param price agreed for one, or an empty string
   */
  public record Line(long line, String name, String price, int left, int sold, int still) {}
}
