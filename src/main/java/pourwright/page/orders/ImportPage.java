package pourwright.page.orders;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pourwright.order.ImportChanges;
import pourwright.order.OrderImport;
import pourwright.order.OrderLine;
import pourwright.page.Form;
import pourwright.quantity.Counted;
import pourwright.work.AlreadyMade;

/**
 * What the page shows about a file before anything is taken: finished strings.
 *
 * @param form what was said about the file
 * @param file key of the file kept for this dry run, empty before one was chosen
 * @param name its name
 * @param headline what came of reading it
 * @param detected how it was read
 * @param trouble bad lines and questions
 * @param changes what taking it in would change
 * @param ready true when it can be taken
 */
public record ImportPage(
    Form form,
    String file,
    String name,
    String headline,
    List<String> detected,
    List<String> trouble,
    List<String> changes,
    boolean ready) {

  private static final int SHOWN = 200;

  static ImportPage of(Form form, String file, String name, OrderImport outcome) {
    List<String> trouble = new ArrayList<>();
    if (outcome instanceof OrderImport.Bad bad) {
      bad.lines().stream()
          .limit(SHOWN)
          .forEach(l -> trouble.add("Line " + l.lineNumber() + ": " + l.reason()));
      return new ImportPage(
          form,
          file,
          name,
          "Nothing was taken: "
              + Counted.of(bad.lines().size(), "line is bad", "lines are bad")
              + ". Mend it in the shop's file and choose the file again.",
          shown(bad.detected()),
          trouble,
          List.of(),
          false);
    }
    if (outcome instanceof OrderImport.Ambiguous ambiguous) {
      ambiguous
          .questions()
          .forEach(
              q -> trouble.add(q.sentence() + ". It can be: " + String.join(", ", q.answers())));
      return new ImportPage(
          form,
          file,
          name,
          "The file can be read in more than one way. Say below what is meant.",
          List.of(),
          trouble,
          List.of(),
          false);
    }
    OrderImport.Unreadable unreadable = (OrderImport.Unreadable) outcome;
    return new ImportPage(
        form,
        file,
        name,
        "The file cannot be read: " + unreadable.reason() + "; " + unreadable.hint() + ".",
        List.of(),
        List.of(),
        List.of(),
        false);
  }

  static ImportPage ready(
      Form form,
      String file,
      String name,
      OrderImport.Ready ready,
      ImportChanges changes,
      Map<OrderLine.Key, AlreadyMade> already) {
    List<String> lines = new ArrayList<>();
    changes.added().stream()
        .limit(SHOWN)
        .forEach(
            l ->
                lines.add(
                    "new: "
                        + l.key().words()
                        + ", "
                        + Counted.of(l.quantity(), "piece", "pieces")
                        + ", due "
                        + (l.dueOn() == null ? "no day" : l.dueOn())));
    changes
        .edited()
        .forEach(
            e ->
                lines.add(
                    "changed: "
                        + e.after().key().words()
                        + ", "
                        + e.words()
                        + made(already, e.before())));
    changes.cancelled().forEach(l -> lines.add("cancelled: " + l.key().words() + made(already, l)));
    String headline =
        changes.isNothing()
            ? "Nothing would change: "
                + Counted.of(changes.same().size(), "line is", "lines are")
                + " in the book already."
            : Counted.of(changes.added().size(), "line is new, ", "lines are new, ")
                + changes.edited().size()
                + " changed, "
                + changes.cancelled().size()
                + " cancelled, "
                + changes.same().size()
                + " as they are.";
    return new ImportPage(
        form,
        file,
        name,
        headline,
        shown(ready.detected()),
        ready.notes(),
        lines,
        !changes.isNothing());
  }

  private static String made(Map<OrderLine.Key, AlreadyMade> already, OrderLine line) {
    AlreadyMade made = already.get(line.key());
    return made == null ? "" : " (" + made.words() + ")";
  }

  /** How it was read, as far as the reading got. */
  private static List<String> shown(OrderImport.Detected detected) {
    if (detected.encoding().isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        detected.format()
            + ", "
            + detected.encoding()
            + ", "
            + Counted.of(detected.rows(), "line", "lines"));
    lines.add("between columns: " + detected.delimiter());
    lines.add("decimal mark: " + detected.decimal());
    lines.add("dates: " + detected.dates());
    detected.map().forEach((field, column) -> lines.add(field.word() + ": column " + column));
    return lines;
  }
}
