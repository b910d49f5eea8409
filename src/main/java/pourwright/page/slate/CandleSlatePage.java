package pourwright.page.slate;

import java.util.List;
import pourwright.page.Form;

/**
 * One candle's slate: finished strings.
 *
 * @param form the price as it was typed
 * @param name the candle
 * @param path this page
 * @param cost cost of one good piece
 * @param costRange its range, or that it is exact
 * @param lines what it is made of
 * @param channels what is left where
 * @param movers what moves the margin most
 * @param minutes hands by step, planned and recorded
 * @param discount what is left when something is taken off the price; empty where nobody asked
 * @param notes what is guessed or missing
 * @param marketDay how many pay for a market day
 */
public record CandleSlatePage(
    Form form,
    String name,
    String path,
    String cost,
    String costRange,
    List<Line> lines,
    List<Channel> channels,
    List<Mover> movers,
    List<Minutes> minutes,
    List<String> discount,
    List<String> notes,
    String marketDay) {

  /** Hands in a step. */
  public record Minutes(String step, String planned, String recorded) {}

  /** A line of the cost. */
  public record Line(String what, String money, String origin) {}

  /** What is left in a channel. */
  public record Channel(
      String name, String price, String margin, String range, String ofPrice, String ofCost) {}

  /** An input that moves the margin. */
  public record Mover(String what, String byTenPercent, String byItsRange) {}
}
