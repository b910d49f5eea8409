package pourwright.work;

import java.util.ArrayList;
import java.util.List;

/**
 * What stands in the proof folder of a candle, in the order of reading: finished words and figures,
 * nothing of the moment at which they are read.
 *
 * @param candle code of its card
 * @param name of the candle
 * @param candleVersion version of its card
 * @param sections in order
 * @param against what stands against issuing it, in words; empty when it may be issued
 */
public record ProofFolder(
    String candle, String name, int candleVersion, List<Section> sections, List<String> against) {

  /**
   * A part of the folder.
   *
   * @param head its heading
   * @param columns heads of the table; empty where there is none
   * @param rows of the table, as many cells as columns
   * @param notes paragraphs under the table
   */
  public record Section(
      String head, List<String> columns, List<List<String>> rows, List<String> notes) {
    /** Copies, and checks that every row has its cells. */
    public Section {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      notes = List.copyOf(notes);
      for (List<String> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException(head + ": a row of " + row.size() + " cells");
        }
      }
    }
  }

  /** Copies the lists. */
  public ProofFolder {
    sections = List.copyOf(sections);
    against = List.copyOf(against);
  }

  /** The whole as lines of text: two folders with the same lines say the same. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Section section : sections) {
      section.rows().forEach(row -> lines.add(section.head() + ": " + String.join(" | ", row)));
      section.notes().forEach(note -> lines.add(section.head() + ": " + note));
    }
    return lines;
  }
}
