package pourwright.work;

import java.util.ArrayList;
import java.util.List;

/**
 * A proof folder as it was issued; the file itself is kept under its hash and never written again.
 *
 * @param candle code of the candle's card
 * @param candleVersion its version
 * @param riskNotes the maker's words on risks
 * @param label how its label was set
 * @param lines everything that stood in it
 * @param sha256 of the file
 */
public record IssuedFolder(
    String candle,
    int candleVersion,
    String riskNotes,
    Label label,
    List<String> lines,
    String sha256) {

  /**
   * How the label of a folder is set.
   *
   * @param destination {@code eu} or {@code us}
   * @param languages codes
   * @param carrier word of the carrier
   * @param ufi or empty
   * @param mark of a piece or a pour, or empty
   */
  public record Label(
      double widthMm,
      double heightMm,
      String destination,
      List<String> languages,
      String carrier,
      String ufi,
      String mark) {
    /** Copies the list. */
    public Label {
      languages = List.copyOf(languages);
    }
  }

  /** Copies the list. */
  public IssuedFolder {
    lines = List.copyOf(lines);
  }

  /** What a newer reading says and this one does not, and the other way round; empty when alike. */
  public List<String> changes(List<String> now) {
    List<String> changes = new ArrayList<>();
    now.stream().filter(l -> !lines.contains(l)).forEach(l -> changes.add("now: " + l));
    lines.stream().filter(l -> !now.contains(l)).forEach(l -> changes.add("then: " + l));
    if (changes.isEmpty() && !now.equals(lines)) {
      changes.add("the same lines stand in another order or number");
    }
    return changes;
  }
}
