package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pourwright.stock.Trace;
import pourwright.work.Books;
import pourwright.work.PieceBook;

/**
 * Five years of a busy studio: 200 materials, 4,000 lots, 250,000 movements, 30,000 pieces. Nothing
 * that a page asks for takes long. The limits are wide, for a machine with other work to do; the
 * figures themselves are printed.
 */
class StoreSizeTest {
  private static final long PATIENCE_MS = 100;

  @SuppressWarnings("NullAway.Init")
  private static Bench bench;

  @BeforeAll
  static void fill() {
    bench = Bench.onSqlite();
    bench.store.write(
        h -> {
          StoreSizeTest.rows(h);
          return true;
        });
    bench.store.write(h -> h.execute("ANALYZE"));
  }

  @AfterAll
  static void close() {
    bench.close();
  }

  private static final String COUNT =
      "WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < %d) ";

  private static void run(Handle handle, int count, String insert) {
    handle.execute(String.format(java.util.Locale.ROOT, COUNT, count) + insert);
  }

  private static void rows(Handle h) {
    run(
        h,
        60_000,
        "INSERT INTO deed SELECT i, 1600000000000 + i * 2000000, 'mk', 'recorded a step',"
            + " 'BATCH', CAST(i / 10 AS TEXT), 'k' || i, NULL, '' FROM n");
    run(
        h,
        4_000,
        "INSERT INTO lot SELECT i, 'material-' || (i % 200), 'L' || i, 'MASS', NULL,"
            + " '2024-01-01', NULL, 1000, 'EUR', i FROM n");
    run(
        h,
        4_000,
        "INSERT INTO movement SELECT i, i, 100000000000, 'RECEIVED', NULL, NULL, i FROM n");
    run(
        h,
        36_000,
        "INSERT INTO mark SELECT i + 100, CASE WHEN i <= 6000 THEN 'BATCH' ELSE"
            + " 'PIECE' END, CASE WHEN i <= 6000 THEN i ELSE i - 6000 END, i FROM n");
    String plan =
        Json.write(Bench.castPlan("bollard", 5), pourwright.batch.BatchPlan.class)
            .replace("'", "''");
    run(
        h,
        6_000,
        "INSERT INTO batch SELECT i, 'CAST', i + 100, 'rapid-grey', 1, '" + plan + "', i FROM n");
    run(h, 5_990, "INSERT INTO batch_finish SELECT i, i FROM n");
    run(
        h,
        246_000,
        "INSERT INTO movement SELECT 4000 + i, 1 + i % 4000, -1000 - i % 977, 'DRAWN',"
            + " 1 + (i / 41) % 6000, NULL, 1 + i % 60000 FROM n");
    run(
        h,
        30_000,
        "INSERT INTO piece SELECT i, i + 6100, 'vessel-' || (i % 12), 1 + (i - 1) / 5, NULL,"
            + " NULL, i FROM n");
    run(
        h,
        90_000,
        "INSERT INTO piece_event SELECT i, 1 + (i - 1) % 30000,"
            + " CASE (i - 1) / 30000 WHEN 0 THEN 'CAST' WHEN 1 THEN 'HARDENED' ELSE 'DRIED' END,"
            + " 1600000000000 + i, NULL, NULL, NULL, NULL, 1 + i % 60000 FROM n");
    run(
        h,
        30_000,
        "INSERT INTO piece_now SELECT i, 'vessel-' || (i % 12), 'Dry', 'vessel-' || (i % 12),"
            + " 0, NULL FROM n");
    run(
        h,
        20_000,
        "INSERT INTO reading SELECT i, 'BATCH', CAST(1 + i % 6000 AS TEXT), 'wax_c', 70.5,"
            + " 1600000000000 + i, NULL, '', i FROM n");
    run(h, 12_000, "INSERT INTO timer SELECT i, 'set', 'BATCH', '1', 1600000000000, i FROM n");
    run(h, 11_995, "INSERT INTO timer_answer SELECT i, i FROM n");
  }

  private static void quick(String what, Function<Books, Object> reading) {
    List<Double> millis = new ArrayList<>();
    for (int i = 0; i < 15; i++) {
      long start = System.nanoTime();
      bench.studio.look(reading);
      millis.add((System.nanoTime() - start) / 1e6);
    }
    Collections.sort(millis);
    System.err.printf(
        java.util.Locale.ROOT, "%-28s median %.1f ms%n", what, millis.get(millis.size() / 2));
    assertThat(millis.get(millis.size() / 2)).as(what).isLessThan(PATIENCE_MS);
  }

  @Test
  void whatPagesAskForIsQuick() {
    quick("shelves of a material", b -> b.lots().shelves("material-7"));
    quick("one lot", b -> b.lots().shelf(1234).orElseThrow());
    quick("all on hand", b -> b.lots().onHand());
    quick("movements of a lot", b -> b.lots().movements(1234, null, 50));
    quick("newest movements", b -> b.lots().movements(null, 50));
    quick("history", b -> b.deeds().history(null, 50));
    quick("pieces of a design", b -> b.pieces().list(which(), null, 50));
    quick("pieces deep in the list", b -> b.pieces().list(which(), "700", 50));
    quick("pieces counted", b -> b.pieces().counts());
    quick("batches running", b -> b.batches().running());
    quick("batches", b -> b.batches().list(null, null, 50));
    quick("timers running", b -> b.timers().running());
    quick("holds on a piece", b -> b.holds().stopping(1234));
    quick("readings of a batch", b -> b.readings().of(batch()));
    quick("a mark", b -> b.pieces().marked(pourwright.batch.Mark.ofNumber(7234)));
  }

  private static PieceBook.Which which() {
    return new PieceBook.Which("vessel-3", "Dry");
  }

  private static pourwright.work.Subject batch() {
    return pourwright.work.Subject.of(pourwright.work.Subject.Kind.BATCH, 77);
  }

  @Test
  void aLotIsTracedBothWaysQuickly() {
    quick("trace a lot onward", b -> walk(b, new Trace.Node(Trace.Kind.LOT, 1234), true));
    quick("trace a piece back", b -> walk(b, new Trace.Node(Trace.Kind.PIECE, 777), false));
  }

  private static Object walk(Books books, Trace.Node from, boolean onward) {
    Trace.Reached reached =
        onward
            ? Trace.walk(from, books.trace()::onward, true)
            : Trace.walk(from, books.trace()::back, false);
    assertThat(reached.nodes()).isNotEmpty();
    return reached;
  }

  @Test
  void whatIsLeftOfALotIsTheSumOfItsMovements() {
    long wrong =
        bench.store.look(
            h ->
                h.createQuery(
                        "SELECT COUNT(*) FROM lot_balance b WHERE b.units <>"
                            + " (SELECT SUM(m.units) FROM movement m WHERE m.lot_id = b.lot_id)")
                    .mapTo(Long.class)
                    .one());
    assertThat(wrong).isZero();
  }
}
