package pourwright.store;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import pourwright.work.SettingBook;

/** Settings in SQL: the newest value whose deed counts. */
final class SettingSql implements SettingBook {
  private static final String COUNTS =
      " NOT EXISTS (SELECT 1 FROM undone u WHERE u.deed_id = s.deed_id) ";

  private final Handle handle;

  SettingSql(Handle handle) {
    this.handle = handle;
  }

  @Override
  public Optional<String> value(String key) {
    return handle
        .createQuery(
            "SELECT s.value FROM setting s WHERE s.key = :key AND"
                + COUNTS
                + "ORDER BY s.deed_id DESC LIMIT 1")
        .bind("key", key)
        .mapTo(String.class)
        .findOne();
  }

  @Override
  public Map<String, String> all() {
    Map<String, String> all = new TreeMap<>();
    handle
        .createQuery("SELECT s.key, s.value FROM setting s WHERE" + COUNTS + "ORDER BY s.deed_id")
        .map((row, ctx) -> Map.entry(row.getString("key"), row.getString("value")))
        .forEach(e -> all.put(e.getKey(), e.getValue()));
    return all;
  }

  @Override
  public void put(String key, String value, long deed) {
    handle
        .createUpdate("INSERT INTO setting (key, value, deed_id) VALUES (:key, :value, :deed)")
        .bind("key", key)
        .bind("value", value)
        .bind("deed", deed)
        .execute();
  }
}
