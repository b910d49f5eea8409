package pourwright.sheet;

import java.io.ByteArrayOutputStream;
import java.time.format.DateTimeFormatter;
import java.util.List;
import pourwright.label.LabelStock;
import pourwright.label.LabelText;
import pourwright.quantity.OutOfRange;
import pourwright.sheet.Ink.Pen;
import pourwright.sheet.label.PaperLabels;
import pourwright.work.FolderPrinter;
import pourwright.work.ProofFolder;

/** The house's printer of proof folders: A4, tables, the label true to size at the end. */
public final class FolderPdf implements FolderPrinter {
  private static final Pen HEAD = new Pen(11.5, true, Ink.SLATE);
  private static final Pen CELL = new Pen(8, false, Ink.SLATE);
  private static final double LINE = 4.1;
  private static final double GAP = 3;

  @Override
  public byte[] print(
      ProofFolder folder, Issue issue, LabelText label, double widthMm, double heightMm) {
    byte[] drawn = new PaperLabels().sheets(List.of(label), LabelStock.single(widthMm, heightMm));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Ink ink = new Ink(Paper.A4)) {
      String version = "version " + issue.version();
      String day = DateTimeFormatter.ISO_LOCAL_DATE.format(issue.day());
      ink.title("Proof folder " + folder.name() + ", " + version);
      Leaf leaf = new Leaf(ink, folder.name() + ", " + version, day + " by " + issue.by());
      leaf.chapter("Proof folder: " + folder.name(), version + ", " + day + ", " + issue.by());
      folder.sections().forEach(section -> draw(leaf, section));
      proof(leaf, drawn, widthMm, heightMm);
      leaf.feet();
      ink.save(out);
    }
    return out.toByteArray();
  }

  private static void draw(Leaf leaf, ProofFolder.Section section) {
    leaf.need(24);
    leaf.ink().text(Leaf.LEFT, leaf.y(), section.head(), HEAD);
    leaf.down(6.5);
    if (!section.rows().isEmpty()) {
      table(leaf, section);
    }
    for (String note : section.notes()) {
      leaf.need(LINE * (1 + Math.ceil(leaf.ink().width(note, Pen.BODY) / leaf.width())));
      leaf.to(leaf.ink().wrapped(Leaf.LEFT, leaf.y(), leaf.width(), note, Pen.BODY));
      leaf.down(0.8);
    }
    leaf.down(4.5);
  }

  /** Columns as wide as their words ask for, long ones sharing what is left. */
  private static void table(Leaf leaf, ProofFolder.Section section) {
    double[] at = columns(leaf, section);
    double[] widths = new double[section.columns().size()];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = (i + 1 < widths.length ? at[i + 1] : leaf.right() + GAP) - at[i] - GAP;
    }
    leaf.columns(section.columns(), at);
    for (List<String> row : section.rows()) {
      double high = 0;
      for (int i = 0; i < widths.length; i++) {
        high = Math.max(high, Math.ceil(leaf.ink().width(row.get(i), CELL) / widths[i] + 0.15));
      }
      leaf.need(high * LINE);
      double bottom = leaf.y();
      for (int i = 0; i < widths.length; i++) {
        double end = leaf.ink().wrapped(at[i], leaf.y(), widths[i], row.get(i), CELL);
        bottom = Math.max(bottom, end);
      }
      leaf.to(bottom + 0.4);
    }
    leaf.down(2);
  }

  private static double[] columns(Leaf leaf, ProofFolder.Section section) {
    int count = section.columns().size();
    double[] wanted = new double[count];
    double sum = 0;
    for (int i = 0; i < count; i++) {
      wanted[i] = leaf.ink().width(section.columns().get(i), Pen.SMALL);
      for (List<String> row : section.rows()) {
        wanted[i] = Math.max(wanted[i], leaf.ink().width(row.get(i), CELL));
      }
      sum += wanted[i];
    }
    double room = leaf.width() - GAP * (count - 1);
    double fair = room / count;
    double left = room;
    double wide = 0;
    for (double want : wanted) {
      if (want <= fair) {
        left -= want;
      } else {
        wide += want;
      }
    }
    double[] at = new double[count];
    double x = Leaf.LEFT;
    for (int i = 0; i < count; i++) {
      at[i] = x;
      double width = sum <= room || wanted[i] <= fair ? wanted[i] : left * wanted[i] / wide;
      x += width + GAP;
    }
    return at;
  }

  private static void proof(Leaf leaf, byte[] drawn, double widthMm, double heightMm) {
    double room = leaf.bottom() - Leaf.TOP - 30;
    if (widthMm > leaf.width() || heightMm > room) {
      throw new OutOfRange(
          "height",
          "a label of "
              + Math.round(widthMm)
              + " × "
              + Math.round(heightMm)
              + " mm does not fit on the folder's paper",
          "set it smaller for the folder");
    }
    leaf.need(heightMm + 18);
    leaf.ink().text(Leaf.LEFT, leaf.y(), "The label, true to size", HEAD);
    leaf.down(6);
    leaf.ink().frame(Leaf.LEFT, leaf.y(), widthMm, heightMm, 0.1, Ink.DUST);
    leaf.ink().lay(drawn, Leaf.LEFT, leaf.y());
    leaf.down(heightMm + 6);
  }
}
