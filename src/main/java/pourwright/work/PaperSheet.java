package pourwright.work;

import java.util.List;

/**
 * A sheet to be printed: finished strings in blocks, one under the other.
 *
 * @param studio who prints it
 * @param printed when, as it stands in the foot
 * @param title at the head of every page
 * @param note small, beside the title
 * @param blocks in order
 */
public record PaperSheet(
    String studio, String printed, String title, String note, List<Block> blocks) {
  /** Keeps its own copy. */
  public PaperSheet {
    blocks = List.copyOf(blocks);
  }

  /** A part of a sheet. */
  public sealed interface Block {
    /** A line or more of text; strong for what matters. */
    record Text(String text, boolean strong) implements Block {}

    /** Rows under column heads. */
    record Grid(List<Column> columns, List<List<String>> rows) implements Block {
      /** Keeps its own copies. */
      public Grid {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
      }
    }

    /** Large lines in a frame, to be read from a step away. */
    record Sign(List<String> lines) implements Block {
      /** Keeps its own copy. */
      public Sign {
        lines = List.copyOf(lines);
      }
    }
  }

  /**
   * A column of a grid.
   *
   * @param name its head
   * @param share of the width, against the other columns
   * @param how where its text stands, or whether it is left to be written in
   */
  public record Column(String name, double share, How how) {
    /** Text from the left. */
    public static Column of(String name, double share) {
      return new Column(name, share, How.LEFT);
    }
  }

  /** How a column is filled. */
  public enum How {
    /** From the left; cut short where it is too long. */
    LEFT,
    /** From the left, on as many lines as it takes: for what must not be cut short. */
    WRAP,
    /** Against the right. */
    RIGHT,
    /** A box to tick before the text. */
    TICK,
    /** Boxes to tally in, as many as the number says, at most ten. */
    TALLY,
    /** A line to write on. */
    WRITE
  }
}
