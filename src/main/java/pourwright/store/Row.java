package pourwright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Columns that may be empty, days and moments, read from a row. */
final class Row {
  private Row() {}

  static @Nullable Long longOrNull(ResultSet row, String column) throws SQLException {
    long value = row.getLong(column);
    return row.wasNull() ? null : value;
  }

  static @Nullable Double doubleOrNull(ResultSet row, String column) throws SQLException {
    double value = row.getDouble(column);
    return row.wasNull() ? null : value;
  }

  static @Nullable Boolean flagOrNull(ResultSet row, String column) throws SQLException {
    long value = row.getLong(column);
    return row.wasNull() ? null : value != 0;
  }

  static @Nullable LocalDate dayOrNull(ResultSet row, String column) throws SQLException {
    String value = row.getString(column);
    return value == null ? null : LocalDate.parse(value);
  }

  static LocalDate day(ResultSet row, String column) throws SQLException {
    return LocalDate.parse(row.getString(column));
  }

  static Instant at(ResultSet row, String column) throws SQLException {
    return Instant.ofEpochMilli(row.getLong(column));
  }

  static @Nullable Instant atOrNull(ResultSet row, String column) throws SQLException {
    Long value = longOrNull(row, column);
    return value == null ? null : Instant.ofEpochMilli(value);
  }

  static @Nullable String text(@Nullable Object value) {
    return value == null ? null : value.toString();
  }

  static @Nullable Long flag(@Nullable Boolean value) {
    return value == null ? null : (value ? 1L : 0L);
  }
}
