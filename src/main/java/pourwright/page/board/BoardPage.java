package pourwright.page.board;

import java.util.List;

/**
 * The drawing board's first page: finished strings.
 *
 * @param purpose what is done here
 * @param candles candles with their drawings
 * @param vessels vessels with their drawings
 * @param others molds, mixes and finishes
 */
public record BoardPage(
    String purpose, List<Drawn> candles, List<Drawn> vessels, List<Shelf> others) {

  /**
   * A design with its drawing.
   *
   * @param name of the design
   * @param path of its page
   * @param line the figure worth knowing
   * @param drawing section to scale
   */
  public record Drawn(String name, String path, String line, Drawing drawing) {}

  /**
   * Cards of a kind without a drawing.
   *
   * @param title of the list
   * @param newPath where a new one is written
   * @param newWords of the link
   * @param rows the cards
   */
  public record Shelf(String title, String newPath, String newWords, List<Row> rows) {}

  /**
   * A card.
   *
   * @param name of it
   * @param path where it is edited
   * @param line what is on it, shortly
   */
  public record Row(String name, String path, String line) {}

  /** Whether nothing is drawn yet. */
  public boolean isEmpty() {
    return candles.isEmpty() && vessels.isEmpty();
  }
}
