package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Grade;
import pourwright.batch.Mark;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.PieceLife;
import pourwright.batch.PieceState;
import pourwright.batch.PieceStep;
import pourwright.batch.TrayCard;
import pourwright.work.PageOf;
import pourwright.work.PieceBook;
import pourwright.work.Subject;

/** Pieces and what happened to them, in SQL. */
final class PieceSql implements PieceBook {
  private static final long FIRST_MARK = 101;
  private static final int CHUNK = 500;
  private static final String EDITION =
      Editions.of("batch", "piece", "piece_event", "tray", "tray_mixed");
  private static final String SELECT =
      """
      SELECT p.*, (SELECT MAX(t.tray_id) FROM tray_piece t JOIN tray y ON y.id = t.tray_id
        WHERE t.piece_id = p.id
        AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = y.deed_id)) AS tray_id
      FROM piece p
      """;
  private static final String EVENTS =
      """
      SELECT e.* FROM piece_event e
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id)
      """;

  private final Handle handle;
  private final TraySql trays;
  private final PieceCounts counted;

  PieceSql(Handle handle) {
    this.handle = handle;
    this.trays = new TraySql(handle);
    this.counted = new PieceCounts(handle);
  }

  static void addMark(Handle handle, Mark mark, String kind, long subject, long deed) {
    handle
        .createUpdate(
            """
            INSERT INTO mark (number, subject_kind, subject_id, deed_id)
            VALUES (:number, :kind, :subject, :deed)
            """)
        .bind("number", mark.number())
        .bind("kind", kind)
        .bind("subject", subject)
        .bind("deed", deed)
        .execute();
  }

  /** A piece's row, its life not yet told. */
  private record Bare(
      long id,
      Mark mark,
      String vesselDesign,
      long madeIn,
      @Nullable Long vesselLot,
      @Nullable Long tray,
      @Nullable Long refillOf) {

    Piece standing(PieceLife life) {
      return new Piece(
          id, mark, vesselDesign, madeIn, vesselLot, tray, refillOf, life.grade(), life.state());
    }
  }

  private static Bare bare(ResultSet row) throws SQLException {
    return new Bare(
        row.getLong("id"),
        Mark.ofNumber(row.getLong("mark")),
        row.getString("vessel_design"),
        row.getLong("made_in"),
        Row.longOrNull(row, "vessel_lot"),
        Row.longOrNull(row, "tray_id"),
        Row.longOrNull(row, "refill_of"));
  }

  private static PieceEvent event(ResultSet row) throws SQLException {
    String grade = row.getString("grade");
    return new PieceEvent(
        row.getLong("id"),
        row.getLong("piece_id"),
        PieceStep.valueOf(row.getString("step")),
        Row.at(row, "at_ms"),
        Row.longOrNull(row, "batch_id"),
        Row.longOrNull(row, "order_line_id"),
        grade == null ? null : Grade.valueOf(grade),
        row.getString("design"),
        row.getLong("deed_id"));
  }

  private List<Piece> told(List<Bare> bare) {
    if (bare.isEmpty()) {
      return List.of();
    }
    Map<Long, List<PieceEvent>> events = new LinkedHashMap<>();
    handle
        .createQuery(EVENTS + " AND e.piece_id IN (<pieces>) ORDER BY e.piece_id, e.id")
        .bindList("pieces", bare.stream().map(Bare::id).toList())
        .map((row, ctx) -> event(row))
        .forEach(e -> events.computeIfAbsent(e.piece(), p -> new ArrayList<>()).add(e));
    List<Piece> pieces = new ArrayList<>();
    for (Bare one : bare) {
      List<PieceEvent> life = events.getOrDefault(one.id(), List.of());
      if (!life.isEmpty() && PieceLife.told(life) instanceof PieceLife.Told.Life told) {
        pieces.add(one.standing(told.life()));
      }
    }
    return pieces;
  }

  @Override
  public long nextId() {
    return Ids.next(handle, "piece");
  }

  @Override
  public long nextMark() {
    long number = Math.max(FIRST_MARK, Ids.next(handle, "mark", "number"));
    while (Mark.ofNumber(number).text().endsWith("*")) {
      number++;
    }
    return number;
  }

  @Override
  public Optional<Piece> piece(long id) {
    return Optional.ofNullable(pieces(List.of(id)).get(id));
  }

  @Override
  public Map<Long, Piece> pieces(Collection<Long> ids) {
    List<Long> all = List.copyOf(ids);
    Map<Long, Piece> pieces = new TreeMap<>();
    for (int i = 0; i < all.size(); i += CHUNK) {
      told(handle
              .createQuery(SELECT + "WHERE p.id IN (<ids>)")
              .bindList("ids", all.subList(i, Math.min(all.size(), i + CHUNK)))
              .map((row, ctx) -> bare(row))
              .list())
          .forEach(piece -> pieces.put(piece.id(), piece));
    }
    return pieces;
  }

  @Override
  public Optional<Subject> marked(Mark mark) {
    if (!mark.isNumbered()) {
      return Optional.empty();
    }
    return handle
        .createQuery(
            """
            SELECT m.subject_kind, m.subject_id FROM mark m WHERE m.number = :number
              AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = m.deed_id)
            """)
        .bind("number", mark.number())
        .map(
            (row, ctx) ->
                Subject.of(
                    Subject.Kind.valueOf(row.getString("subject_kind")), row.getLong("subject_id")))
        .findOne();
  }

  @Override
  public PageOf<Piece> list(Which which, @Nullable String after, int limit) {
    StringBuilder sql = new StringBuilder(SELECT);
    sql.append("JOIN piece_now w ON w.piece_id = p.id WHERE w.piece_id < :below");
    if (which.design() != null) {
      sql.append(" AND w.design = :design");
    }
    if (which.state() != null) {
      sql.append(" AND w.state = :state");
    }
    var query =
        handle
            .createQuery(sql.append(" ORDER BY w.piece_id DESC LIMIT :limit").toString())
            .bind("below", Keys.below(after))
            .bind("limit", limit + 1);
    if (which.design() != null) {
      query.bind("design", which.design());
    }
    if (which.state() != null) {
      query.bind("state", which.state());
    }
    List<Piece> rows = told(query.map((row, ctx) -> bare(row)).list());
    return PageOf.cut(rows, limit, p -> Long.toString(p.id()));
  }

  @Override
  public Map<DesignState, Long> counts() {
    return counted.counts();
  }

  @Override
  public Map<String, Long> inStates(Collection<String> states) {
    return counted.inStates(states);
  }

  @Override
  public String edition() {
    return Editions.read(handle, EDITION);
  }

  @Override
  public Map<String, Fared> fared(Collection<String> designs, int latest) {
    return counted.fared(designs, latest);
  }

  @Override
  public Fates fates(Collection<Long> casts) {
    return counted.fates(casts);
  }

  @Override
  public List<Standing> standing(Collection<String> states) {
    return counted.standing(states);
  }

  @Override
  public List<PieceEvent> events(long piece) {
    return handle
        .createQuery(EVENTS + " AND e.piece_id = :piece ORDER BY e.id")
        .bind("piece", piece)
        .map((row, ctx) -> event(row))
        .list();
  }

  @Override
  public List<Long> touchedBy(long deed) {
    return handle
        .createQuery("SELECT DISTINCT piece_id FROM piece_event WHERE deed_id = :deed ORDER BY 1")
        .bind("deed", deed)
        .mapTo(Long.class)
        .list();
  }

  @Override
  public List<Piece> ofBatch(long batch) {
    return told(
        handle
            .createQuery(
                SELECT
                    + """
                    WHERE p.made_in = :batch OR p.id IN (SELECT e.piece_id FROM piece_event e
                      WHERE e.batch_id = :batch
                      AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = e.deed_id))
                    ORDER BY p.id
                    """)
            .bind("batch", batch)
            .map((row, ctx) -> bare(row))
            .list());
  }

  @Override
  public boolean designHeldWax(String vesselDesign) {
    return handle
        .createQuery(
            "SELECT 1 FROM piece_now WHERE vessel_design = :design AND held_wax = 1 LIMIT 1")
        .bind("design", vesselDesign)
        .mapTo(Long.class)
        .findFirst()
        .isPresent();
  }

  @Override
  public long nextTray() {
    return Ids.next(handle, "tray");
  }

  @Override
  public Optional<TrayCard> tray(long id) {
    return trays.tray(id);
  }

  @Override
  public List<TrayCard> trays() {
    return trays.all();
  }

  @Override
  public TrayCard addTray(String label, List<Long> pieces, long deed) {
    return trays.add(label, pieces, deed);
  }

  @Override
  public void mixUp(long tray, long deed) {
    trays.mixUp(tray, deed);
  }

  @Override
  public void add(Piece piece, PieceEvent first) {
    addMark(handle, piece.mark(), "PIECE", piece.id(), first.deed());
    handle
        .createUpdate(
            """
            INSERT INTO piece (id, mark, vessel_design, made_in, vessel_lot, refill_of, deed_id)
            VALUES (:id, :mark, :design, :batch, :lot, :refill, :deed)
            """)
        .bind("id", piece.id())
        .bind("mark", piece.mark().number())
        .bind("design", piece.vesselDesign())
        .bind("batch", piece.madeIn())
        .bind("lot", piece.vesselLot())
        .bind("refill", piece.refillOf())
        .bind("deed", first.deed())
        .execute();
    append(first);
  }

  @Override
  public void append(PieceEvent event) {
    handle
        .createUpdate(
            """
            INSERT INTO piece_event
              (id, piece_id, step, at_ms, batch_id, order_line_id, grade, design, deed_id)
            VALUES (:id, :piece, :step, :at, :batch, :line, :grade, :design, :deed)
            """)
        .bind("id", Ids.next(handle, "piece_event"))
        .bind("piece", event.piece())
        .bind("step", event.step().name())
        .bind("at", event.at().toEpochMilli())
        .bind("batch", event.batch())
        .bind("line", event.orderLine())
        .bind("grade", Row.text(event.grade()))
        .bind("design", event.design())
        .bind("deed", event.deed())
        .execute();
    retell(List.of(event.piece()));
  }

  @Override
  public void retell(List<Long> pieces) {
    Map<Long, Piece> standing = pieces(pieces);
    for (long id : pieces) {
      handle.createUpdate("DELETE FROM piece_now WHERE piece_id = :id").bind("id", id).execute();
      Piece piece = standing.get(id);
      if (piece != null) {
        keep(piece);
      }
    }
  }

  private void keep(Piece piece) {
    boolean heldWax = events(piece.id()).stream().anyMatch(e -> e.step() == PieceStep.HELD_WAX);
    PieceState state = piece.state();
    handle
        .createUpdate(
            """
            INSERT INTO piece_now
              (piece_id, design, state, vessel_design, held_wax, order_line_id)
            VALUES (:id, :design, :state, :vessel, :wax, :line)
            """)
        .bind("id", piece.id())
        .bind("design", piece.candle().orElse(piece.vesselDesign()))
        .bind("state", state.code())
        .bind("vessel", piece.vesselDesign())
        .bind("wax", heldWax ? 1 : 0)
        .bind("line", PieceState.orderLineOf(state).orElse(null))
        .execute();
  }
}
