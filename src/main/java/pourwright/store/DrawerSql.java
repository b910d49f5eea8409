package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import pourwright.work.CardVersion;
import pourwright.work.Drawer;
import pourwright.work.DrawerBook;
import pourwright.work.PageOf;

/** Cards in SQL. */
final class DrawerSql implements DrawerBook {
  private static final String SELECT =
      "SELECT c.*, d.at_ms, d.by_whom FROM card c JOIN deed d ON d.id = c.deed_id ";
  private static final String COUNTS =
      " NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = c.deed_id) ";
  private static final String NEWEST =
      """
       c.version = (SELECT MAX(n.version) FROM card n WHERE n.kind = c.kind AND n.code = c.code
         AND NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = n.deed_id))
      """;

  private final Handle handle;
  private final @Nullable Recall recall;
  private @Nullable String edition;

  /**
   * @param recall what was worked out of committed cards; null in a transaction that writes
   */
  DrawerSql(Handle handle, @Nullable Recall recall) {
    this.handle = handle;
    this.recall = recall;
  }

  /** All newest versions of a kind by code, the retired among them. */
  private record Newest(Drawer<?> kind) {}

  private <T> Map<String, CardVersion<T>> newest(Drawer<T> kind) {
    return remembered(new Newest(kind), () -> readNewest(kind));
  }

  private <T> Map<String, CardVersion<T>> readNewest(Drawer<T> kind) {
    Map<String, CardVersion<T>> newest = new LinkedHashMap<>();
    handle
        .createQuery(SELECT + "WHERE c.kind = :kind AND" + NEWEST + "ORDER BY c.code")
        .bind("kind", kind.name())
        .map((row, ctx) -> map(kind, row))
        .forEach(v -> newest.put(v.code(), v));
    return Collections.unmodifiableMap(newest);
  }

  private <T> T remembered(Object question, Supplier<T> work) {
    return recall == null ? work.get() : recall.answer(question, ownEdition(), work);
  }

  /** The edition, asked once in a transaction that reads: it cannot change under it. */
  private String ownEdition() {
    String known = edition;
    if (known == null) {
      known = readEdition();
      edition = known;
    }
    return known;
  }

  @Override
  public <T> T workedOut(Worked<T> what) {
    return remembered(what, () -> what.work().apply(this));
  }

  private static <T> CardVersion<T> map(Drawer<T> kind, ResultSet row) throws SQLException {
    return new CardVersion<>(
        kind,
        row.getString("code"),
        row.getInt("version"),
        Json.read(row.getString("body"), kind.type()),
        row.getInt("retired") != 0,
        Row.at(row, "at_ms"),
        row.getString("by_whom"),
        row.getLong("deed_id"));
  }

  @Override
  public <T> Optional<CardVersion<T>> current(Drawer<T> kind, String code) {
    if (recall != null) {
      return Optional.ofNullable(newest(kind).get(code));
    }
    return handle
        .createQuery(
            SELECT
                + "WHERE c.kind = :kind AND c.code = :code AND"
                + COUNTS
                + "ORDER BY c.version DESC LIMIT 1")
        .bind("kind", kind.name())
        .bind("code", code)
        .map((row, ctx) -> map(kind, row))
        .findOne();
  }

  @Override
  public <T> Optional<CardVersion<T>> version(Drawer<T> kind, String code, int version) {
    return handle
        .createQuery(SELECT + "WHERE c.kind = :kind AND c.code = :code AND c.version = :version")
        .bind("kind", kind.name())
        .bind("code", code)
        .bind("version", version)
        .map((row, ctx) -> map(kind, row))
        .findOne();
  }

  @Override
  public <T> PageOf<CardVersion<T>> list(Drawer<T> kind, @Nullable String after, int limit) {
    List<CardVersion<T>> rows =
        handle
            .createQuery(
                SELECT
                    + "WHERE c.kind = :kind AND c.code > :above AND c.retired = 0 AND"
                    + NEWEST
                    + "ORDER BY c.code LIMIT :limit")
            .bind("kind", kind.name())
            .bind("above", Keys.above(after))
            .bind("limit", limit + 1)
            .map((row, ctx) -> map(kind, row))
            .list();
    return PageOf.cut(rows, limit, CardVersion::code);
  }

  @Override
  public <T> List<CardVersion<T>> all(Drawer<T> kind) {
    return newest(kind).values().stream().filter(v -> !v.retired()).toList();
  }

  @Override
  public <T> List<CardVersion<T>> putAway(Drawer<T> kind) {
    return newest(kind).values().stream().filter(CardVersion::retired).toList();
  }

  @Override
  public <T> List<CardVersion<T>> history(Drawer<T> kind, String code) {
    return handle
        .createQuery(
            SELECT
                + "WHERE c.kind = :kind AND c.code = :code AND"
                + COUNTS
                + "ORDER BY c.version DESC")
        .bind("kind", kind.name())
        .bind("code", code)
        .map((row, ctx) -> map(kind, row))
        .list();
  }

  @Override
  public String edition() {
    return recall == null ? readEdition() : ownEdition();
  }

  private String readEdition() {
    long newest =
        handle.createQuery("SELECT COALESCE(MAX(deed_id), 0) FROM card").mapTo(Long.class).one();
    List<Long> undone =
        handle
            .createQuery(
                """
                SELECT u.deed_id FROM undone u
                WHERE EXISTS (SELECT 1 FROM card c WHERE c.deed_id = u.deed_id) ORDER BY u.deed_id
                """)
            .mapTo(Long.class)
            .list();
    return newest + " " + undone;
  }

  @Override
  public int lastVersion(Drawer<?> kind, String code) {
    return handle
        .createQuery(
            "SELECT COALESCE(MAX(version), 0) FROM card WHERE kind = :kind AND code = :code")
        .bind("kind", kind.name())
        .bind("code", code)
        .mapTo(Integer.class)
        .one();
  }

  @Override
  public <T> void append(CardVersion<T> version) {
    handle
        .createUpdate(
            """
            INSERT INTO card (kind, code, version, body, retired, deed_id)
            VALUES (:kind, :code, :version, :body, :retired, :deed)
            """)
        .bind("kind", version.kind().name())
        .bind("code", version.code())
        .bind("version", version.version())
        .bind("body", Json.write(version.body(), version.kind().type()))
        .bind("retired", version.retired() ? 1 : 0)
        .bind("deed", version.deed())
        .execute();
  }
}
