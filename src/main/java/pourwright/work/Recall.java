package pourwright.work;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import pourwright.batch.Mark;
import pourwright.batch.PieceStep;
import pourwright.stock.Lot;
import pourwright.stock.Trace;

/**
 * Everything that a lot is in and who has it. One step from the lot to every piece, by the trace.
 *
 * @param what the lot, the design or the mark that is called back
 * @param batches how many batches it went into
 * @param rows each piece, those that left the studio first
 */
public record Recall(String what, int batches, List<Row> rows) {
  /** Keeps its own copy. */
  public Recall {
    rows = List.copyOf(rows);
  }

  /**
   * A piece.
   *
   * @param stands where it is, in words
   * @param out whether it left the studio
   * @param since when it came there
   * @param customerRef what the order knows its buyer by, or an empty string
   * @param customer the buyer's name, or an empty string
   */
  public record Row(
      long piece,
      String mark,
      String design,
      String stands,
      boolean out,
      Instant since,
      String order,
      String channel,
      String customerRef,
      String customer) {}

  /** What a lot is in; empty when there is no such lot. */
  public static Optional<Recall> ofLot(Books books, long lot) {
    return books
        .lots()
        .shelf(lot)
        .map(
            shelf -> {
              Lot known = shelf.lot();
              return of(
                  books,
                  known.material() + ", lot " + known.code(),
                  new Trace.Node(Trace.Kind.LOT, lot));
            });
  }

  /** What a thing of the trace is in, itself included where it is a piece. */
  public static Recall of(Books books, String what, Trace.Node start) {
    Trace.Reached reached = Trace.walk(start, books.trace()::onward, true);
    List<Long> pieces = new ArrayList<>(reached.of(Trace.Kind.PIECE));
    if (start.kind() == Trace.Kind.PIECE) {
      pieces.add(start.id());
    }
    return of(books, what, reached.of(Trace.Kind.BATCH).size(), pieces);
  }

  /** Given pieces and who has them. */
  static Recall of(Books books, String what, int batches, List<Long> pieces) {
    List<Row> rows = new ArrayList<>(books.recalls().of(pieces).stream().map(Recall::row).toList());
    rows.sort(java.util.Comparator.comparing((Row r) -> !r.out()).thenComparing(Row::piece));
    return new Recall(what, batches, rows);
  }

  private static Row row(RecallBook.Whereabouts w) {
    PieceStep step = PieceStep.valueOf(w.lastStep());
    boolean withShop = step == PieceStep.PICKED && LeaveWithShop.CHANNEL.equals(w.channel());
    boolean out = withShop || step == PieceStep.SOLD || step == PieceStep.GIVEN;
    return new Row(
        w.piece(),
        Mark.ofNumber(w.mark()).text(),
        w.design(),
        withShop ? "left with a shop" : step.words(),
        out,
        w.lastAt(),
        Objects.requireNonNullElse(w.order(), ""),
        Objects.requireNonNullElse(w.channel(), ""),
        Objects.requireNonNullElse(w.customerRef(), ""),
        Objects.requireNonNullElse(w.customer(), ""));
  }

  /** How many left the studio. */
  public long out() {
    return rows.stream().filter(Row::out).count();
  }
}
