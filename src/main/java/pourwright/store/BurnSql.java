package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.work.BurnBook;
import pourwright.work.BurnTest;
import pourwright.work.Deed;
import pourwright.work.PageOf;

/** Burn tests in SQL; cycles and looks are in {@link FlameSql}. */
final class BurnSql implements BurnBook {
  private static final String SELECT =
      """
      SELECT t.*, d.at_ms, d.by_whom, c.verdict, c.reasons, e.at_ms AS closed_ms,
        e.by_whom AS closed_by
      FROM burn_test t JOIN deed d ON d.id = t.deed_id
      LEFT JOIN burn_test_close c ON c.test_id = t.id
        AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = c.deed_id)
      LEFT JOIN deed e ON e.id = c.deed_id
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = t.deed_id)
      """;

  private static final String EDITION =
      Editions.of(
          "burn_test",
          "burn_test_close",
          "burn_sample",
          "burn_cycle",
          "burn_cycle_end",
          "burn_look",
          "candle_proof");

  private final Handle handle;
  private final @Nullable Recall recall;
  private @Nullable String edition;
  private final FlameSql flames;

  /**
   * @param recall what was worked out of committed facts; null in a transaction that writes
   */
  BurnSql(Handle handle, @Nullable Recall recall) {
    this.handle = handle;
    this.recall = recall;
    this.flames = new FlameSql(handle);
  }

  private static BurnTest map(ResultSet row) throws SQLException {
    String verdict = row.getString("verdict");
    return new BurnTest(
        row.getLong("id"),
        row.getString("candle"),
        row.getInt("candle_version"),
        row.getString("rules"),
        row.getString("purpose"),
        Row.at(row, "at_ms"),
        row.getString("by_whom"),
        verdict == null
            ? null
            : new BurnTest.Closed(
                verdict,
                row.getString("reasons"),
                Row.at(row, "closed_ms"),
                row.getString("closed_by")),
        row.getLong("deed_id"));
  }

  @Override
  public long nextId() {
    return Ids.next(handle, "burn_test");
  }

  @Override
  public Optional<BurnTest> test(long id) {
    return handle
        .createQuery(SELECT + " AND t.id = :id")
        .bind("id", id)
        .map((row, ctx) -> map(row))
        .findFirst();
  }

  @Override
  public PageOf<BurnTest> list(@Nullable String candle, @Nullable String after, int limit) {
    String only = candle == null ? "" : " AND t.candle = :candle";
    var query =
        handle.createQuery(SELECT + only + " AND t.id < :below ORDER BY t.id DESC LIMIT :limit");
    if (candle != null) {
      query.bind("candle", candle);
    }
    return Keys.newestFirst(query, after, limit, (row, ctx) -> map(row), BurnTest::id);
  }

  @Override
  public List<BurnTest> open() {
    return handle
        .createQuery(SELECT + " AND c.test_id IS NULL ORDER BY t.id")
        .map((row, ctx) -> map(row))
        .list();
  }

  @Override
  public List<BurnTest> ofPiece(long piece) {
    return handle
        .createQuery(
            SELECT
                + " AND t.id IN (SELECT s.test_id FROM burn_sample s WHERE s.piece_id = :piece)"
                + " ORDER BY t.id")
        .bind("piece", piece)
        .map((row, ctx) -> map(row))
        .list();
  }

  @Override
  public Extremes extremes(String candle, int candleVersion) {
    return remembered("extremes", flames::extremes)
        .getOrDefault(new OfVersion(candle, candleVersion), new Extremes(null, null, null));
  }

  /** A version of a candle's card. */
  record OfVersion(String candle, int version) {}

  private <T> T remembered(String question, Supplier<T> work) {
    return recall == null ? work.get() : recall.answer("burns: " + question, edition(), work);
  }

  @Override
  public String edition() {
    String known = edition;
    if (known == null || recall == null) {
      known = Editions.read(handle, EDITION);
      edition = known;
    }
    return known;
  }

  @Override
  public List<Long> passedPieces() {
    return handle
        .createQuery(
            """
            SELECT DISTINCT s.piece_id FROM burn_sample s
            JOIN burn_test_close k ON k.test_id = s.test_id AND k.verdict = 'pass'
            WHERE s.piece_id IS NOT NULL
              AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = s.deed_id)
              AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = k.deed_id)
            ORDER BY s.piece_id
            """)
        .mapTo(Long.class)
        .list();
  }

  @Override
  public Set<Long> weighedIntoPassed(Collection<Long> lots) {
    return lots.isEmpty()
        ? Set.of()
        : handle
            .createQuery(
                """
                SELECT m.lot_id FROM burn_sample s
                JOIN burn_test_close k ON k.test_id = s.test_id AND k.verdict = 'pass'
                JOIN piece_event e ON e.piece_id = s.piece_id
                JOIN movement m ON m.batch_id = e.batch_id AND m.lot_id IN (<lots>)
                WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = s.deed_id)
                  AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = k.deed_id)
                  AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id)
                GROUP BY m.lot_id, m.batch_id, e.id, s.id, k.deed_id HAVING SUM(m.units) < 0
                """)
            .bindList("lots", lots)
            .mapTo(Long.class)
            .set();
  }

  @Override
  public Map<String, List<Long>> poursSinceBurnt(@Nullable String candle) {
    return candle != null || recall == null
        ? PoursSql.sinceBurnt(handle, candle)
        : recall.answer(
            "pours since one was burnt",
            edition() + " " + PoursSql.edition(handle),
            () -> PoursSql.sinceBurnt(handle, null));
  }

  @Override
  public List<BurnTest.Sample> samples(long test) {
    return handle
        .createQuery(
            """
            SELECT s.* FROM burn_sample s WHERE s.test_id = :test
              AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = s.deed_id) ORDER BY s.id
            """)
        .bind("test", test)
        .map(
            (row, ctx) ->
                new BurnTest.Sample(
                    row.getLong("id"),
                    row.getLong("test_id"),
                    row.getString("label"),
                    Row.longOrNull(row, "piece_id")))
        .list();
  }

  @Override
  public List<BurnTest.Cycle> cycles(long sample) {
    return flames.cycles(sample);
  }

  @Override
  public Optional<BurnTest.Cycle> cycle(long id) {
    return flames.cycle(id);
  }

  @Override
  public long testOfCycle(long cycle) {
    return handle
        .createQuery(
            """
            SELECT s.test_id FROM burn_cycle c JOIN burn_sample s ON s.id = c.sample_id
            WHERE c.id = :cycle
            """)
        .bind("cycle", cycle)
        .mapTo(Long.class)
        .one();
  }

  @Override
  public List<BurnTest.Cycle> burning() {
    return flames.burning();
  }

  @Override
  public List<BurnTest.Seen> seen(long cycle) {
    return flames.seen(cycle);
  }

  @Override
  public List<BurnTest.Seen> ofDeed(long deed) {
    return flames.ofDeed(deed);
  }

  @Override
  public Optional<BurnTest.Proof> proof(String candle, int candleVersion) {
    return Optional.ofNullable(
        remembered("proofs", this::proofs).get(new OfVersion(candle, candleVersion)));
  }

  /** The newest word on each version that has one. */
  private Map<OfVersion, BurnTest.Proof> proofs() {
    Map<OfVersion, BurnTest.Proof> newest = new LinkedHashMap<>();
    handle
        .createQuery(
            """
            SELECT p.*, d.at_ms, d.by_whom FROM candle_proof p JOIN deed d ON d.id = p.deed_id
            WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = p.deed_id) ORDER BY p.id
            """)
        .map((row, ctx) -> proof(row))
        .forEach(p -> newest.put(new OfVersion(p.candle(), p.candleVersion()), p));
    return Collections.unmodifiableMap(newest);
  }

  private static BurnTest.Proof proof(ResultSet row) throws SQLException {
    return new BurnTest.Proof(
        row.getLong("id"),
        row.getString("candle"),
        row.getInt("candle_version"),
        Row.longOrNull(row, "test_id"),
        row.getInt("proved") != 0,
        row.getString("statement"),
        Row.at(row, "at_ms"),
        row.getString("by_whom"),
        row.getLong("deed_id"));
  }

  @Override
  public void add(BurnTest test) {
    handle
        .createUpdate(
            """
            INSERT INTO burn_test (id, candle, candle_version, rules, purpose, deed_id)
            VALUES (:id, :candle, :version, :rules, :purpose, :deed)
            """)
        .bind("id", test.id())
        .bind("candle", test.candle())
        .bind("version", test.candleVersion())
        .bind("rules", test.rules())
        .bind("purpose", test.purpose())
        .bind("deed", test.deed())
        .execute();
  }

  @Override
  public BurnTest.Sample addSample(long test, String label, @Nullable Long piece, long deed) {
    long id = Ids.next(handle, "burn_sample");
    handle
        .createUpdate(
            """
            INSERT INTO burn_sample (id, test_id, label, piece_id, deed_id)
            VALUES (:id, :test, :label, :piece, :deed)
            """)
        .bind("id", id)
        .bind("test", test)
        .bind("label", label)
        .bind("piece", piece)
        .bind("deed", deed)
        .execute();
    return new BurnTest.Sample(id, test, label, piece);
  }

  @Override
  public BurnTest.Cycle light(long sample, Instant at, long deed) {
    return flames.light(sample, at, deed);
  }

  @Override
  public BurnTest.Seen append(long cycle, BurnTest.Look look, Deed deed) {
    return flames.append(cycle, look, deed);
  }

  @Override
  public void end(long cycle, String how, Instant at, long deed) {
    flames.end(cycle, how, at, deed);
  }

  @Override
  public void close(long test, BurnTest.Closed closed, long deed) {
    handle
        .createUpdate(
            """
            INSERT INTO burn_test_close (test_id, verdict, reasons, deed_id)
            VALUES (:test, :verdict, :reasons, :deed)
            """)
        .bind("test", test)
        .bind("verdict", closed.verdict())
        .bind("reasons", closed.reasons())
        .bind("deed", deed)
        .execute();
  }

  @Override
  public BurnTest.Proof append(BurnTest.Proof proof) {
    long id = Ids.next(handle, "candle_proof");
    handle
        .createUpdate(
            """
            INSERT INTO candle_proof
              (id, candle, candle_version, test_id, proved, statement, deed_id)
            VALUES (:id, :candle, :version, :test, :proved, :statement, :deed)
            """)
        .bind("id", id)
        .bind("candle", proof.candle())
        .bind("version", proof.candleVersion())
        .bind("test", proof.test())
        .bind("proved", proof.proved() ? 1 : 0)
        .bind("statement", proof.statement())
        .bind("deed", proof.deed())
        .execute();
    return new BurnTest.Proof(
        id,
        proof.candle(),
        proof.candleVersion(),
        proof.test(),
        proof.proved(),
        proof.statement(),
        proof.at(),
        proof.by(),
        proof.deed());
  }
}
