package pourwright.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Reads an archive into an empty studio, on either database: all of it or nothing. */
public final class Import {
  private static final int BATCH = 500;

  private Import() {}

  /**
   * Imports.
   *
   * @param archive written by {@link Archive}
   * @param store an open studio in which nothing was ever done
   * @param files where the attached files go
   * @throws StoreTrouble when the archive is not sound, or the studio is not empty; nothing is
   *     changed then
   */
  public static Manifest from(Path archive, Store store, HashedFiles files) {
    try (ZipIn zip = ZipIn.checked(archive, Archive.FORMAT)) {
      for (Manifest.Member member : zip.manifest().members()) {
        if (member.name().startsWith("attachments/")) {
          try (InputStream in = zip.open(member.name())) {
            files.keep(in);
          }
        }
      }
      return store.write(handle -> fill(handle, zip));
    } catch (IOException e) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DISK,
          "the archive could not be read in: " + e.getMessage(),
          "look at the disk and try again; nothing was changed",
          e);
    }
  }

  /**
   * Reads an archive once through without taking anything of it.
   *
   * @throws StoreTrouble when it is not sound, not an archive, or of a newer program
   */
  public static void check(Path archive) {
    try {
      ZipIn.checked(archive, Archive.FORMAT).close();
    } catch (IOException e) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DISK,
          "the archive could not be read: " + e.getMessage(),
          "look at the disk and try again; nothing was changed",
          e);
    }
  }

  /**
   * True for a zip with a list of contents, as archives and backups have and workbooks have not.
   */
  public static boolean isArchive(Path file) {
    try (java.util.zip.ZipFile zip = new java.util.zip.ZipFile(file.toFile())) {
      return zip.getEntry(Manifest.NAME) != null;
    } catch (IOException e) {
      return false;
    }
  }

  private static Manifest fill(Handle handle, ZipIn zip) {
    if (!Tables.isEmpty(handle)) {
      throw new StoreTrouble(
          StoreTrouble.Kind.REFUSED,
          "this studio is not empty",
          "import into a new folder or a new database");
    }
    java.util.Map<String, Long> rows = zip.manifest().rows();
    for (Tables.Table table : Tables.FACTS) {
      if (!rows.containsKey(table.name())) {
        continue; // an archive from before there was such a table
      }
      try (InputStream in = zip.open("tables/" + table.name() + ".jsonl")) {
        table(handle, table.name(), in);
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      } catch (SQLException e) {
        throw StoreTrouble.of(e);
      }
    }
    Kept.rebuild(handle);
    java.util.Map<String, Long> counted = Tables.counts(handle);
    counted.entrySet().removeIf(e -> e.getValue() == 0 && !rows.containsKey(e.getKey()));
    if (!counted.equals(rows)) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DAMAGED,
          "the archive has other rows than its list of contents says",
          "write the archive again; nothing was changed");
    }
    return zip.manifest();
  }

  private static void table(Handle handle, String table, InputStream in)
      throws IOException, SQLException {
    BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    List<String> columns = columns(handle, table);
    String sql =
        "INSERT INTO "
            + table
            + " ("
            + String.join(", ", columns)
            + ") VALUES ("
            + "?, ".repeat(columns.size() - 1)
            + "?)";
    try (PreparedStatement insert = handle.getConnection().prepareStatement(sql)) {
      int waiting = 0;
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        if (!line.isBlank()) {
          bind(insert, columns, Json.mapper().readTree(line), table);
          insert.addBatch();
          waiting++;
        }
        if (waiting == BATCH) {
          insert.executeBatch();
          waiting = 0;
        }
      }
      insert.executeBatch();
    }
  }

  private static List<String> columns(Handle handle, String table) throws SQLException {
    try (java.sql.Statement statement = handle.getConnection().createStatement();
        java.sql.ResultSet none = statement.executeQuery("SELECT * FROM " + table + " LIMIT 0")) {
      return new ArrayList<>(Tables.columns(none).keySet());
    }
  }

  private static void bind(
      PreparedStatement insert, List<String> columns, JsonNode row, String table)
      throws SQLException {
    for (Iterator<String> names = row.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!columns.contains(name)) {
        throw new StoreTrouble(
            StoreTrouble.Kind.DAMAGED,
            "the archive has a column " + name + " in " + table + " that is not known here",
            "use the program that wrote it; nothing was changed");
      }
    }
    for (int i = 0; i < columns.size(); i++) {
      set(insert, i + 1, row.get(columns.get(i)));
    }
  }

  private static void set(PreparedStatement insert, int at, @Nullable JsonNode value)
      throws SQLException {
    if (value == null || value.isNull()) {
      insert.setNull(at, Types.NULL);
    } else if (value.isTextual()) {
      insert.setString(at, value.textValue());
    } else if (value.isIntegralNumber()) {
      insert.setLong(at, value.longValue());
    } else {
      insert.setDouble(at, value.doubleValue());
    }
  }
}
