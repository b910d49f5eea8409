package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.Piece;
import pourwright.stock.Trace;
import pourwright.work.Deed;
import pourwright.work.Hold;
import pourwright.work.HoldBook;
import pourwright.work.PageOf;
import pourwright.work.Subject;

/** Holds in SQL. */
final class HoldSql implements HoldBook {
  private static final String SELECT =
      """
      SELECT h.*, d.at_ms, d.by_whom, x.name AS lifted_by, x.reason AS lift_reason, e.at_ms AS lifted_ms
      FROM hold h JOIN deed d ON d.id = h.deed_id
      LEFT JOIN hold_lift x ON x.hold_id = h.id
        AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = x.deed_id)
      LEFT JOIN deed e ON e.id = x.deed_id
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = h.deed_id)
      """;

  private final Handle handle;

  HoldSql(Handle handle) {
    this.handle = handle;
  }

  private static Hold map(ResultSet row) throws SQLException {
    return new Hold(
        row.getLong("id"),
        DeskSql.subject(row),
        row.getString("reason"),
        Row.at(row, "at_ms"),
        row.getString("by_whom"),
        Row.atOrNull(row, "lifted_ms"),
        row.getString("lifted_by"),
        row.getString("lift_reason"),
        row.getLong("deed_id"));
  }

  @Override
  public long nextId() {
    return Ids.next(handle, "hold");
  }

  @Override
  public Optional<Hold> hold(long id) {
    return handle
        .createQuery(SELECT + " AND h.id = :id")
        .bind("id", id)
        .map((row, ctx) -> map(row))
        .findFirst();
  }

  @Override
  public List<Hold> standing() {
    return handle
        .createQuery(SELECT + " AND x.hold_id IS NULL ORDER BY h.id")
        .map((row, ctx) -> map(row))
        .list();
  }

  @Override
  public List<Hold> on(Subject subject) {
    return handle
        .createQuery(
            SELECT + " AND h.subject_kind = :kind AND h.subject_id = :id ORDER BY h.id DESC")
        .bind("kind", subject.kind().name())
        .bind("id", subject.id())
        .map((row, ctx) -> map(row))
        .list();
  }

  @Override
  public PageOf<Hold> list(@Nullable String after, int limit) {
    return Keys.newestFirst(
        handle.createQuery(SELECT + " AND h.id < :below ORDER BY h.id DESC LIMIT :limit"),
        after,
        limit,
        (row, ctx) -> map(row),
        Hold::id);
  }

  @Override
  public List<Hold> stopping(long piece) {
    List<Hold> standing = standing();
    if (standing.isEmpty()) {
      return standing;
    }
    Set<Subject> touched = touched(piece);
    return standing.stream().filter(h -> touched.contains(h.subject())).toList();
  }

  /** Everything a hold could be on that this piece is made of. */
  private Set<Subject> touched(long id) {
    Set<Subject> touched = new HashSet<>();
    touched.add(Subject.of(Subject.Kind.PIECE, id));
    TraceSql trace = new TraceSql(handle);
    Trace.Reached reached = Trace.walk(new Trace.Node(Trace.Kind.PIECE, id), trace::back, false);
    reached.of(Trace.Kind.LOT).forEach(lot -> touched.add(Subject.of(Subject.Kind.LOT, lot)));
    for (Piece piece : pieces(id, reached)) {
      touched.add(card("vessel", piece.vesselDesign()));
      piece.candle().ifPresent(candle -> touched.add(card("candle", candle)));
    }
    BatchSql batches = new BatchSql(handle);
    for (long batch : reached.of(Trace.Kind.BATCH)) {
      Optional<Batch> found = batches.batch(batch);
      found.ifPresent(
          b ->
              touched.add(
                  card(
                      b.plan().kind() == pourwright.batch.BatchKind.CAST ? "mix" : "pour",
                      b.plan().card())));
    }
    return touched;
  }

  private List<Piece> pieces(long id, Trace.Reached reached) {
    PieceSql pieces = new PieceSql(handle);
    return java.util.stream.Stream.concat(
            java.util.stream.Stream.of(id), reached.of(Trace.Kind.PIECE).stream())
        .flatMap(p -> pieces.piece(p).stream())
        .toList();
  }

  @Override
  public Set<Long> stopped() {
    List<Hold> standing = standing();
    Set<Trace.Node> starts = new HashSet<>();
    for (Hold hold : standing) {
      starts.addAll(startsOf(hold.subject()));
    }
    Set<Long> stopped = new TreeSet<>();
    starts.stream().filter(n -> n.kind() == Trace.Kind.PIECE).forEach(n -> stopped.add(n.id()));
    TraceSql trace = new TraceSql(handle);
    stopped.addAll(Trace.walk(starts, trace::onward, true).of(Trace.Kind.PIECE));
    for (Hold hold : standing) { // stops that piece alone, not what it is refilled as
      if (hold.subject().kind() == Subject.Kind.PIECE) {
        stopped.add(hold.subject().number());
      }
    }
    return stopped;
  }

  /** Where the trace of all that a hold stops begins; nothing for a hold on a piece alone. */
  private List<Trace.Node> startsOf(Subject subject) {
    if (subject.kind() == Subject.Kind.LOT) {
      return List.of(new Trace.Node(Trace.Kind.LOT, subject.number()));
    }
    if (subject.kind() != Subject.Kind.CARD) {
      return List.of();
    }
    int slash = subject.id().indexOf('/');
    String code = subject.id().substring(slash + 1);
    return switch (subject.id().substring(0, Math.max(0, slash))) {
      case "vessel" ->
          nodes(
              Trace.Kind.PIECE, "SELECT piece_id FROM piece_now WHERE vessel_design = :code", code);
      case "candle" -> candles(code);
      case "mix" -> batches("CAST", code);
      case "pour" -> batches("POUR", code);
      default -> List.of();
    };
  }

  /** Pieces of a candle; where a vessel has the same code, each is asked whether it was poured. */
  private List<Trace.Node> candles(String code) {
    List<Trace.Node> all =
        nodes(Trace.Kind.PIECE, "SELECT piece_id FROM piece_now WHERE design = :code", code);
    if (!isVessel(code)) {
      return all;
    }
    PieceSql pieces = new PieceSql(handle);
    return all.stream()
        .filter(n -> pieces.piece(n.id()).flatMap(Piece::candle).filter(code::equals).isPresent())
        .toList();
  }

  private boolean isVessel(String code) {
    return handle
        .createQuery("SELECT 1 FROM piece_now WHERE vessel_design = :code LIMIT 1")
        .bind("code", code)
        .mapTo(Long.class)
        .findFirst()
        .isPresent();
  }

  private List<Trace.Node> batches(String kind, String card) {
    return nodes(
        Trace.Kind.BATCH,
        "SELECT b.id FROM batch b WHERE b.card = :code AND b.kind = '"
            + kind
            + "' AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = b.deed_id)",
        card);
  }

  private List<Trace.Node> nodes(Trace.Kind kind, String sql, String code) {
    return handle.createQuery(sql).bind("code", code).mapTo(Long.class).stream()
        .map(id -> new Trace.Node(kind, id))
        .toList();
  }

  private static Subject card(String drawer, String code) {
    return new Subject(Subject.Kind.CARD, drawer + "/" + code);
  }

  @Override
  public void add(Hold hold) {
    handle
        .createUpdate(
            """
            INSERT INTO hold (id, subject_kind, subject_id, reason, deed_id)
            VALUES (:id, :kind, :subject, :reason, :deed)
            """)
        .bind("id", hold.id())
        .bind("kind", hold.subject().kind().name())
        .bind("subject", hold.subject().id())
        .bind("reason", hold.reason())
        .bind("deed", hold.deed())
        .execute();
  }

  @Override
  public void lift(long hold, String name, String reason, Deed deed) {
    handle
        .createUpdate(
            """
            INSERT INTO hold_lift (hold_id, name, reason, deed_id)
            VALUES (:hold, :name, :reason, :deed)
            """)
        .bind("hold", hold)
        .bind("name", name)
        .bind("reason", reason)
        .bind("deed", deed.id())
        .execute();
  }
}
