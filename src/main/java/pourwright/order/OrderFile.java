package pourwright.order;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import pourwright.order.OrderImport.BadLine;
import pourwright.order.OrderImport.Detected;
import pourwright.order.OrderImport.Read;

/**
 * Reads a shop's order file, CSV or XLSX. How it was read is shown; what can be read in two ways
 * stops the reading; one bad line keeps all lines out.
 */
public final class OrderFile {
  /** The largest file that is read. */
  public static final int BYTES_MAX = 50_000_000;

  private static final int TEXT_MAX = 300;

  private final Table table;
  private final Header header;
  private final DesignNames designs;
  private final ImportChoices choices;
  private final List<BadLine> bad = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private OrderFile(Table table, Header header, DesignNames designs, ImportChoices choices) {
    this.table = table;
    this.header = header;
    this.designs = designs;
    this.choices = choices;
  }

  /**
   * Reads the file.
   *
   * @param bytes the file as it is, at most {@link #BYTES_MAX}
   * @param designs what the candles are called
   * @param choices what a person has said about it
   */
  public static OrderImport read(byte[] bytes, DesignNames designs, ImportChoices choices) {
    try {
      Table table = table(bytes, choices);
      if (table.rows().isEmpty()) {
        throw Stop.unreadable("the file is empty", "export the orders again");
      }
      Header header = Header.find(table, choices.map());
      return new OrderFile(table, header, designs, choices).lines();
    } catch (Stop stop) {
      return stop.outcome();
    }
  }

  private static Table table(byte[] bytes, ImportChoices choices) throws Stop {
    if (bytes.length > BYTES_MAX) {
      throw Stop.unreadable("the file is larger than 50 MB", "split it");
    }
    if (bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K') {
      return WorkbookTable.read(bytes, choices, rows -> Header.score(rows, choices.map()));
    }
    if (bytes.length > 3 && (bytes[0] & 0xff) == 0xd0 && (bytes[1] & 0xff) == 0xcf) {
      throw Stop.unreadable(
          "this is an old or a locked workbook", "save it as XLSX without a password, or as CSV");
    }
    Decoding text = Decoding.of(bytes, choices.encoding());
    return CsvTable.read(text, choices, rows -> Header.score(rows, choices.map()));
  }

  private List<Table.Row> body() {
    return table.rows().subList(header.row() + 1, table.rows().size());
  }

  private List<String> texts(ImportField field) {
    Integer column = header.columns().get(field);
    if (column == null) {
      return List.of();
    }
    return body().stream()
        .map(r -> r.cell(column))
        .filter(c -> c instanceof Cell.Text && !c.isBlank())
        .map(Cell::shown)
        .toList();
  }

  private OrderImport lines() throws Stop {
    char mark = Quantities.mark(texts(ImportField.QUANTITY), choices.decimal());
    Dates dates = Dates.of(texts(ImportField.DUE), choices);
    Detected detected =
        new Detected(
            table.format(),
            table.encoding(),
            table.delimiter(),
            mark == 0 ? "none needed" : mark == '.' ? "point" : "comma",
            header.columns().containsKey(ImportField.DUE) ? dates.words() : "no due dates",
            header.names(),
            body().size());
    List<Draft> drafts = new ArrayList<>();
    int width = table.rows().get(header.row()).cells().size();
    for (Table.Row row : body()) {
      try {
        checkWidth(row, width);
        drafts.add(draft(row, mark, dates));
      } catch (Unfit unfit) {
        bad.add(new BadLine(row.lineNumber(), unfit.reason()));
      }
    }
    List<Read> lines = finished(drafts);
    if (!bad.isEmpty()) {
      bad.sort(java.util.Comparator.comparingLong(BadLine::lineNumber));
      return new OrderImport.Bad(detected, List.copyOf(bad));
    }
    if (lines.isEmpty()) {
      throw Stop.unreadable("there is no order below the column names", "export it again");
    }
    return new OrderImport.Ready(detected, lines, List.copyOf(notes), fingerprint(lines));
  }

  private static void checkWidth(Table.Row row, int width) throws Unfit {
    for (int i = width; i < row.cells().size(); i++) {
      if (!row.cell(i).isBlank()) {
        throw new Unfit(
            row.cells().size()
                + " columns instead of "
                + width
                + "; a delimiter inside a text needs quotation marks around it");
      }
    }
  }

  private record Draft(
      long lineNumber,
      String order,
      String design,
      int quantity,
      @Nullable LocalDate due,
      @Nullable String channel,
      @Nullable String customer,
      @Nullable String note) {}

  private Draft draft(Table.Row row, char mark, Dates dates) throws Unfit {
    String order = text(row, ImportField.ORDER);
    String item = text(row, ImportField.DESIGN);
    if (order == null || item == null) {
      throw new Unfit(order == null ? "there is no order number" : "there is no candle");
    }
    String design = designs.code(item).orElse(null);
    if (design == null) {
      throw new Unfit(designs.unknown(item));
    }
    int quantity = Quantities.read(cell(row, ImportField.QUANTITY), mark);
    Cell due = cell(row, ImportField.DUE);
    return new Draft(
        row.lineNumber(),
        order,
        design,
        quantity,
        due.isBlank() ? null : dates.read(due),
        text(row, ImportField.CHANNEL),
        text(row, ImportField.CUSTOMER),
        text(row, ImportField.NOTE));
  }

  private Cell cell(Table.Row row, ImportField field) {
    Integer column = header.columns().get(field);
    return column == null ? new Cell.Text("") : row.cell(column);
  }

  private @Nullable String text(Table.Row row, ImportField field) throws Unfit {
    Cell cell = cell(row, field);
    if (cell instanceof Cell.Broken broken) {
      throw new Unfit(field.word() + ": " + broken.reason());
    }
    String shown = cell.shown();
    if (shown.length() > TEXT_MAX && field != ImportField.NOTE) {
      throw new Unfit("the " + field.word() + " is longer than " + TEXT_MAX + " letters");
    }
    return shown.isEmpty() ? null : shown;
  }

  /** Numbers the lines of an order, and gives a line without a date that of its order. */
  private List<Read> finished(List<Draft> drafts) {
    Map<String, TreeSet<LocalDate>> dues = new HashMap<>();
    for (Draft draft : drafts) {
      if (draft.due() != null) {
        dues.computeIfAbsent(draft.order(), o -> new TreeSet<>()).add(draft.due());
      }
    }
    boolean dated = header.columns().containsKey(ImportField.DUE);
    Map<String, Integer> seen = new HashMap<>();
    List<Read> lines = new ArrayList<>();
    for (Draft draft : drafts) {
      LocalDate due = draft.due();
      if (due == null && dated) {
        TreeSet<LocalDate> others = dues.getOrDefault(draft.order(), new TreeSet<>());
        if (others.size() != 1) {
          bad.add(new BadLine(draft.lineNumber(), "there is no due date"));
          continue;
        }
        due = others.first();
        notes.add("line " + draft.lineNumber() + " takes the date of its order, " + due);
      }
      int nth = seen.merge(draft.order() + "\n" + draft.design(), 1, Integer::sum);
      if (nth > 1) {
        notes.add(
            "line "
                + draft.lineNumber()
                + ": order "
                + draft.order()
                + " lists "
                + draft.design()
                + " once more; it counts as a further line");
      }
      OrderLine line =
          new OrderLine(draft.order(), draft.design(), nth, draft.quantity(), due, draft.note());
      lines.add(new Read(draft.lineNumber(), line, draft.channel(), draft.customer()));
    }
    return lines;
  }

  private static String fingerprint(List<Read> lines) {
    StringBuilder text = new StringBuilder();
    lines.stream()
        .map(Read::line)
        .sorted(java.util.Comparator.comparing(OrderLine::key))
        .forEach(
            l ->
                text.append(l.order())
                    .append('\t')
                    .append(l.design())
                    .append('\t')
                    .append(l.nth())
                    .append('\t')
                    .append(l.quantity())
                    .append('\t')
                    .append(l.dueOn())
                    .append('\n'));
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256")
              .digest(text.toString().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
