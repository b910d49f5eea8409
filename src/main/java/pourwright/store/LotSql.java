package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.EmptyHandling;
import org.jdbi.v3.core.statement.Query;
import org.jspecify.annotations.Nullable;
import pourwright.material.UnitKind;
import pourwright.stock.Amount;
import pourwright.stock.Cause;
import pourwright.stock.FirstExpiredFirstOut;
import pourwright.stock.Lot;
import pourwright.stock.Movement;
import pourwright.stock.Price;
import pourwright.stock.Shelf;
import pourwright.work.Deed;
import pourwright.work.LotBook;
import pourwright.work.PageOf;

/** Lots and movements in SQL. */
final class LotSql implements LotBook {
  private static final String SELECT =
      """
      SELECT l.*, COALESCE(b.units, 0) AS on_hand,
        (SELECT MIN(o.opened_on) FROM lot_opening o WHERE o.lot_id = l.id
          AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = o.deed_id)) AS opened_on,
        EXISTS (SELECT 1 FROM hold h
          WHERE h.subject_kind = 'LOT' AND h.subject_id = CAST(l.id AS TEXT)
          AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = h.deed_id)
          AND NOT EXISTS (SELECT 1 FROM hold_lift x WHERE x.hold_id = h.id
            AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = x.deed_id))) AS held
      FROM lot l LEFT JOIN lot_balance b ON b.lot_id = l.id
      WHERE NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = l.deed_id)
      """;

  /** The same of lots with something left, and of these first: most lots of the years are empty. */
  private static final String LEFT =
      SELECT.replace(
          "lot l LEFT JOIN lot_balance b ON b.lot_id = l.id\nWHERE",
          "lot_balance b CROSS JOIN lot l\nWHERE l.id = b.lot_id AND b.units > 0 AND");

  private static final String MOVEMENTS =
      """
      SELECT m.*, l.unit_kind, d.at_ms FROM movement m
      JOIN lot l ON l.id = m.lot_id JOIN deed d ON d.id = m.deed_id
      """;

  /**
   * The same of one material's later ones, found by their number and not by the material's lots.
   */
  private static final String LATER =
      """
      SELECT m.*, l.unit_kind, d.at_ms FROM movement m CROSS JOIN lot l CROSS JOIN deed d
      WHERE m.id > :after AND l.id = m.lot_id AND d.id = m.deed_id AND l.material = :material
      ORDER BY m.id
      """;

  private final Handle handle;

  LotSql(Handle handle) {
    this.handle = handle;
  }

  private static Shelf shelf(ResultSet row) throws SQLException {
    UnitKind kind = UnitKind.valueOf(row.getString("unit_kind"));
    Long price = Row.longOrNull(row, "price_minor");
    Lot lot =
        new Lot(
            row.getLong("id"),
            row.getString("material"),
            row.getString("code"),
            kind,
            row.getString("supplier"),
            Row.day(row, "received_on"),
            Row.dayOrNull(row, "opened_on"),
            Row.dayOrNull(row, "expires_on"),
            price == null ? null : new Price(price, row.getString("currency")),
            row.getLong("deed_id"));
    return new Shelf(lot, new Amount(kind, row.getLong("on_hand")), row.getBoolean("held"));
  }

  private static Movement movement(ResultSet row) throws SQLException {
    return new Movement(
        row.getLong("id"),
        row.getLong("lot_id"),
        new Amount(UnitKind.valueOf(row.getString("unit_kind")), row.getLong("units")),
        Cause.valueOf(row.getString("cause")),
        Row.longOrNull(row, "batch_id"),
        Row.longOrNull(row, "reverses"),
        Row.at(row, "at_ms"),
        row.getLong("deed_id"));
  }

  @Override
  public long nextId() {
    return Ids.next(handle, "lot");
  }

  @Override
  public Optional<Shelf> shelf(long lot) {
    return handle
        .createQuery(SELECT + " AND l.id = :id")
        .bind("id", lot)
        .map((row, ctx) -> shelf(row))
        .findOne();
  }

  @Override
  public Optional<Shelf> shelf(String material, String code) {
    return handle
        .createQuery(SELECT + " AND l.material = :material AND l.code = :code")
        .bind("material", material)
        .bind("code", code)
        .map((row, ctx) -> shelf(row))
        .findFirst();
  }

  @Override
  public List<Shelf> coded(String code) {
    return handle
        .createQuery(SELECT + " AND LOWER(l.code) = LOWER(:code) ORDER BY l.id DESC")
        .bind("code", code.strip())
        .map((row, ctx) -> shelf(row))
        .list();
  }

  @Override
  public List<Shelf> shelves(String material) {
    return FirstExpiredFirstOut.inOrder(
        handle
            .createQuery(SELECT + " AND l.material = :material AND b.units > 0")
            .bind("material", material)
            .map((row, ctx) -> shelf(row))
            .list());
  }

  @Override
  public List<Shelf> allShelves() {
    return inDrawingOrder(handle.createQuery(LEFT));
  }

  @Override
  public List<Shelf> toLookAt(LocalDate until, Collection<String> perishable) {
    return inDrawingOrder(
        handle
            .createQuery(
                "SELECT * FROM ("
                    + LEFT
                    + ") s WHERE s.held OR s.opened_on IS NOT NULL"
                    + " OR s.expires_on <= :until"
                    + " OR (s.expires_on IS NULL AND s.material IN (<perishable>))")
            .bind("until", until.toString())
            .bindList(EmptyHandling.NULL_KEYWORD, "perishable", List.copyOf(perishable)));
  }

  private static List<Shelf> inDrawingOrder(Query query) {
    Map<String, List<Shelf>> byMaterial = new TreeMap<>();
    query
        .map((row, ctx) -> shelf(row))
        .forEach(
            s ->
                byMaterial
                    .computeIfAbsent(s.lot().material(), m -> new java.util.ArrayList<>())
                    .add(s));
    return byMaterial.values().stream()
        .flatMap(shelves -> FirstExpiredFirstOut.inOrder(shelves).stream())
        .toList();
  }

  @Override
  public PageOf<Shelf> list(@Nullable String material, @Nullable String after, int limit) {
    String only = material == null ? "" : " AND l.material = :material";
    var query =
        handle.createQuery(SELECT + only + " AND l.id < :below ORDER BY l.id DESC LIMIT :limit");
    if (material != null) {
      query.bind("material", material);
    }
    return Keys.newestFirst(query, after, limit, (row, ctx) -> shelf(row), s -> s.lot().id());
  }

  @Override
  public Map<String, Amount> onHand() {
    return new LotSums(handle).onHand();
  }

  @Override
  public Map<String, Amount> drawable(LocalDate today) {
    return new LotSums(handle).drawable(today);
  }

  @Override
  public long newestMovement() {
    return handle.createQuery("SELECT COALESCE(MAX(id), 0) FROM movement").mapTo(Long.class).one();
  }

  @Override
  public long newestMovement(String material) {
    return handle
        .createQuery(
            """
            SELECT COALESCE(MAX((SELECT MAX(m.id) FROM movement m WHERE m.lot_id = l.id)), 0)
            FROM lot l WHERE l.material = :material
            """)
        .bind("material", material)
        .mapTo(Long.class)
        .one();
  }

  @Override
  public Map<String, Long> movedSince(long after) {
    return handle
        .createQuery(
            """
            SELECT l.material, MAX(m.id) AS newest FROM movement m CROSS JOIN lot l
            WHERE m.id > :after AND l.id = m.lot_id GROUP BY l.material
            """)
        .bind("after", after)
        .map((row, ctx) -> Map.entry(row.getString("material"), row.getLong("newest")))
        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  @Override
  public List<Movement> ofMaterial(String material, long after) {
    return handle
        .createQuery(
            after > 0
                ? LATER
                : MOVEMENTS + "WHERE l.material = :material AND m.id > :after ORDER BY m.id")
        .bind("material", material)
        .bind("after", after)
        .map((row, ctx) -> movement(row))
        .list();
  }

  @Override
  public Map<Long, Price> prices(String material) {
    return handle
        .createQuery(
            """
            SELECT id, price_minor, currency FROM lot
            WHERE material = :material AND price_minor IS NOT NULL
            """)
        .bind("material", material)
        .map(
            (row, ctx) ->
                Map.entry(
                    row.getLong("id"),
                    new Price(row.getLong("price_minor"), row.getString("currency"))))
        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  @Override
  public PageOf<Movement> movements(long lot, @Nullable String after, int limit) {
    return Keys.newestFirst(
        handle
            .createQuery(
                MOVEMENTS
                    + "WHERE m.lot_id = :lot AND m.id < :below ORDER BY m.id DESC LIMIT :limit")
            .bind("lot", lot),
        after,
        limit,
        (row, ctx) -> movement(row),
        Movement::id);
  }

  @Override
  public PageOf<Movement> movements(@Nullable String after, int limit) {
    return Keys.newestFirst(
        handle.createQuery(MOVEMENTS + "WHERE m.id < :below ORDER BY m.id DESC LIMIT :limit"),
        after,
        limit,
        (row, ctx) -> movement(row),
        Movement::id);
  }

  @Override
  public List<Movement> ofBatch(long batch) {
    return handle
        .createQuery(MOVEMENTS + "WHERE m.batch_id = :batch ORDER BY m.id")
        .bind("batch", batch)
        .map((row, ctx) -> movement(row))
        .list();
  }

  @Override
  public List<Movement> ofDeed(long deed) {
    return handle
        .createQuery(MOVEMENTS + "WHERE m.deed_id = :deed ORDER BY m.id")
        .bind("deed", deed)
        .map((row, ctx) -> movement(row))
        .list();
  }

  @Override
  public void add(Lot lot) {
    Price price = lot.price();
    handle
        .createUpdate(
            """
            INSERT INTO lot (id, material, code, unit_kind, supplier, received_on, expires_on,
              price_minor, currency, deed_id)
            VALUES (:id, :material, :code, :kind, :supplier, :received, :expires,
              :price, :currency, :deed)
            """)
        .bind("id", lot.id())
        .bind("material", lot.material())
        .bind("code", lot.code())
        .bind("kind", lot.kind().name())
        .bind("supplier", lot.supplier())
        .bind("received", lot.receivedOn().toString())
        .bind("expires", Row.text(lot.expiresOn()))
        .bind("price", price == null ? null : (Long) price.minor())
        .bind("currency", price == null ? null : price.currency())
        .bind("deed", lot.deed())
        .execute();
  }

  @Override
  public void open(long lot, LocalDate day, long deed) {
    handle
        .createUpdate(
            "INSERT INTO lot_opening (lot_id, opened_on, deed_id) VALUES (:lot, :day, :deed)")
        .bind("lot", lot)
        .bind("day", day.toString())
        .bind("deed", deed)
        .execute();
  }

  @Override
  public Movement append(long lot, Amount change, Cause cause, @Nullable Long batch, Deed deed) {
    return insert(
        new Movement(
            Ids.next(handle, "movement"), lot, change, cause, batch, null, deed.at(), deed.id()));
  }

  @Override
  public Movement reverse(Movement movement, Deed deed) {
    return insert(
        new Movement(
            Ids.next(handle, "movement"),
            movement.lot(),
            movement.change().negated(),
            Cause.REVERSED,
            movement.batch(),
            movement.id(),
            deed.at(),
            deed.id()));
  }

  private Movement insert(Movement movement) {
    handle
        .createUpdate(
            """
            INSERT INTO movement (id, lot_id, units, cause, batch_id, reverses, deed_id)
            VALUES (:id, :lot, :units, :cause, :batch, :reverses, :deed)
            """)
        .bind("id", movement.id())
        .bind("lot", movement.lot())
        .bind("units", movement.change().units())
        .bind("cause", movement.cause().name())
        .bind("batch", movement.batch())
        .bind("reverses", movement.reverses())
        .bind("deed", movement.deed())
        .execute();
    return movement;
  }
}
