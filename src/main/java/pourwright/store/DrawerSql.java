package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
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

  DrawerSql(Handle handle) {
    this.handle = handle;
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
    return list(kind, null, Integer.MAX_VALUE - 1).items();
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
