package pourwright.sheet;

import java.io.ByteArrayOutputStream;
import java.util.List;
import pourwright.sheet.Ink.Pen;
import pourwright.work.PaperPrinter;
import pourwright.work.PaperSheet;
import pourwright.work.PaperSheet.Block;
import pourwright.work.PaperSheet.Column;
import pourwright.work.PaperSheet.How;

/** Sheets of blocks as PDF: recall sheets, stall sheets, invoices, packing slips. */
public final class PaperSheets implements PaperPrinter {
  private static final double ROW = 6.2;
  private static final int TALLY_MOST = 10;

  @Override
  public byte[] pdf(PaperSheet sheet, String paper) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Ink ink = new Ink(Paper.of(paper))) {
      ink.title(sheet.title());
      Leaf leaf = new Leaf(ink, sheet.studio(), sheet.printed());
      leaf.chapter(sheet.title(), sheet.note());
      sheet.blocks().forEach(block -> block(leaf, block));
      leaf.feet();
      ink.save(out);
    }
    return out.toByteArray();
  }

  private static void block(Leaf leaf, Block block) {
    if (block instanceof Block.Text text) {
      leaf.need(8);
      Pen pen = text.strong() ? Pen.STRONG : Pen.BODY;
      leaf.to(leaf.ink().wrapped(Leaf.LEFT, leaf.y(), leaf.width(), text.text(), pen) + 1.4);
    } else if (block instanceof Block.Grid grid) {
      grid(leaf, grid);
    } else if (block instanceof Block.Sign sign) {
      sign(leaf, sign.lines());
    }
  }

  private static void sign(Leaf leaf, List<String> lines) {
    Pen large = new Pen(15, true, Ink.SLATE);
    double height = 6 + lines.size() * 8.5;
    leaf.need(height + 4);
    double top = leaf.y() - 3;
    leaf.ink().frame(Leaf.LEFT, top, leaf.width(), height, 0.5, Ink.EMBER);
    for (int i = 0; i < lines.size(); i++) {
      double y = top + 8.5 + i * 8.5;
      leaf.ink().within(Leaf.LEFT + 5, y, leaf.width() - 10, lines.get(i), large);
    }
    leaf.to(top + height + 8);
  }

  private static void grid(Leaf leaf, Block.Grid grid) {
    double[] at = new double[grid.columns().size() + 1];
    double all = grid.columns().stream().mapToDouble(Column::share).sum();
    at[0] = Leaf.LEFT;
    for (int i = 0; i < grid.columns().size(); i++) {
      at[i + 1] = at[i] + leaf.width() * grid.columns().get(i).share() / all;
    }
    leaf.down(1);
    leaf.need(3 * ROW);
    heads(leaf, grid, at);
    for (List<String> row : grid.rows()) {
      double height = height(leaf.ink(), grid, at, row);
      if (leaf.y() + height > leaf.bottom()) {
        leaf.next();
        heads(leaf, grid, at);
      }
      for (int i = 0; i < row.size(); i++) {
        cell(leaf, grid.columns().get(i).how(), at[i], at[i + 1] - 2, row.get(i));
      }
      double under = leaf.y() + height - ROW + 1.7;
      leaf.ink().line(Leaf.LEFT, under, leaf.right(), under, 0.1, Ink.DUST);
      leaf.down(height);
    }
    leaf.down(2);
  }

  /** As high as its longest wrapped cell. */
  private static double height(Ink ink, Block.Grid grid, double[] at, List<String> row) {
    int lines = 1;
    for (int i = 0; i < row.size(); i++) {
      if (grid.columns().get(i).how() == How.WRAP) {
        lines = Math.max(lines, ink.lines(at[i + 1] - 2 - at[i], row.get(i), Pen.BODY).size());
      }
    }
    return ROW + (lines - 1) * Ink.lineMm(Pen.BODY);
  }

  private static void heads(Leaf leaf, Block.Grid grid, double[] at) {
    for (int i = 0; i < grid.columns().size(); i++) {
      String name = grid.columns().get(i).name();
      if (grid.columns().get(i).how() == How.RIGHT) {
        leaf.ink().right(at[i + 1] - 2, leaf.y(), name, Pen.SMALL);
      } else {
        leaf.ink().text(at[i], leaf.y(), name, Pen.SMALL);
      }
    }
    leaf.ink().line(Leaf.LEFT, leaf.y() + 1.6, leaf.right(), leaf.y() + 1.6, 0.25, Ink.SLATE);
    leaf.down(ROW);
  }

  private static void cell(Leaf leaf, How how, double left, double right, String text) {
    Ink ink = leaf.ink();
    double y = leaf.y();
    switch (how) {
      case LEFT -> ink.within(left, y, right - left, text, Pen.BODY);
      case WRAP -> ink.wrapped(left, y, right - left, text, Pen.BODY);
      case RIGHT -> ink.right(right, y, text, Pen.BODY);
      case TICK -> {
        ink.tick(left, y);
        ink.within(left + 5.5, y, right - left - 5.5, text, Pen.BODY);
      }
      case TALLY -> {
        int boxes = text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : 0;
        for (int i = 0; i < Math.min(TALLY_MOST, boxes); i++) {
          ink.tick(left + i * 4.6, y);
        }
        if (boxes > TALLY_MOST) {
          ink.text(left + TALLY_MOST * 4.6 + 1, y, "+ " + (boxes - TALLY_MOST), Pen.SMALL);
        }
      }
      case WRITE -> {
        ink.within(left, y, right - left, text, Pen.BODY);
        if (text.isEmpty()) {
          ink.line(left, y + 0.8, right, y + 0.8, 0.2, Ink.SLATE);
        }
      }
    }
  }
}
