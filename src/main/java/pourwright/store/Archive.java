package pourwright.store;

import com.fasterxml.jackson.core.JsonGenerator;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * Everything that is hers in one zip of open formats: each table as CSV and as JSON lines, each
 * attached file, a list of contents and a page that explains it. docs/data.md says what the tables
 * are for.
 */
public final class Archive {
  /** What an archive's list of contents calls it. */
  public static final String FORMAT = "pourwright-archive";

  /** For whom the CSV files are written. */
  public enum Profile {
    /** For programs: nothing is changed. */
    DATA,
    /** For a spreadsheet: text that one would take for a formula gets an apostrophe before it. */
    SPREADSHEET
  }

  private Archive() {}

  /**
   * Writes an archive; the studio may be in use.
   *
   * @param store an open studio, on either database
   * @param files where the attached files are
   * @param target the zip to write
   * @param profile for whom the CSV files are; the JSON is the same in both
   * @param made the moment and this program's version
   */
  public static Manifest write(
      Store store, HashedFiles files, Path target, Profile profile, Made made) {
    return store.look(
        handle -> {
          try (ZipOut zip = new ZipOut(target)) {
            return fill(zip, handle, files, profile, made);
          } catch (IOException e) {
            throw new StoreTrouble(
                StoreTrouble.Kind.DISK,
                "the archive could not be written: " + e.getMessage(),
                "free some space or choose another place",
                e);
          } catch (SQLException e) {
            throw StoreTrouble.of(e);
          }
        });
  }

  /**
   * When, and by which program.
   *
   * @param at the moment
   * @param program this program's version
   */
  public record Made(Instant at, String program) {}

  private static Manifest fill(
      ZipOut zip, Handle handle, HashedFiles files, Profile profile, Made made)
      throws IOException, SQLException {
    zip.add("README.txt", out -> out.write(README.getBytes(StandardCharsets.UTF_8)));
    for (Tables.Table table : Tables.FACTS) {
      zip.add("tables/" + table.name() + ".csv", out -> csv(handle, table, profile, out));
      zip.add("tables/" + table.name() + ".jsonl", out -> jsonl(handle, table, out));
    }
    for (String hash : new AttachmentSql(handle).hashes()) {
      Path attached = files.place(hash);
      if (Files.exists(attached)) {
        zip.add("attachments/" + hash, attached);
      }
    }
    Manifest manifest =
        new Manifest(
            FORMAT,
            1,
            made.program(),
            Migrations.NEWEST,
            made.at().toString(),
            Tables.counts(handle),
            zip.members());
    zip.finish(manifest);
    return manifest;
  }

  private static void csv(Handle handle, Tables.Table table, Profile profile, OutputStream out)
      throws IOException {
    CsvWriter csv =
        CsvWriter.builder()
            .quoteStrategy(de.siegmar.fastcsv.writer.QuoteStrategies.EMPTY)
            .build(new OutputStreamWriter(new Unclosed(out), StandardCharsets.UTF_8));
    rows(
        handle,
        table,
        (columns, row) -> {
          if (row == null) {
            csv.writeRecord(columns.keySet());
            return;
          }
          List<@Nullable String> cells = new ArrayList<>();
          for (Map.Entry<String, Tables.Holds> column : columns.entrySet()) {
            String cell = row.getString(column.getKey());
            boolean text = column.getValue() == Tables.Holds.TEXT;
            cells.add(text && profile == Profile.SPREADSHEET ? harmless(cell) : cell);
          }
          csv.writeRecord(cells);
        });
    csv.close();
  }

  /** Text that a spreadsheet would work out as a formula gets an apostrophe before it. */
  static @Nullable String harmless(@Nullable String cell) {
    return cell != null && !cell.isEmpty() && "=+-@\t\r\n".indexOf(cell.charAt(0)) >= 0
        ? "'" + cell
        : cell;
  }

  private static void jsonl(Handle handle, Tables.Table table, OutputStream out)
      throws IOException {
    BufferedWriter lines =
        new BufferedWriter(new OutputStreamWriter(new Unclosed(out), StandardCharsets.UTF_8));
    JsonGenerator json = Json.mapper().getFactory().createGenerator(lines);
    json.setRootValueSeparator(new com.fasterxml.jackson.core.io.SerializedString("\n"));
    rows(
        handle,
        table,
        (columns, row) -> {
          if (row != null) {
            object(json, columns, row);
          }
        });
    json.flush();
    lines.newLine();
    lines.flush();
  }

  private static void object(JsonGenerator json, Map<String, Tables.Holds> columns, ResultSet row)
      throws IOException, SQLException {
    json.writeStartObject();
    for (Map.Entry<String, Tables.Holds> column : columns.entrySet()) {
      String name = column.getKey();
      json.writeFieldName(name);
      String text = row.getString(name);
      if (text == null) {
        json.writeNull();
      } else {
        switch (column.getValue()) {
          case TEXT -> json.writeString(text);
          case REAL -> json.writeNumber(row.getDouble(name));
          case WHOLE -> json.writeNumber(row.getLong(name));
        }
      }
    }
    json.writeEndObject();
  }

  /** Takes the columns first, with no row, and then each row. */
  private interface EachRow {
    void take(Map<String, Tables.Holds> columns, @Nullable ResultSet row)
        throws IOException, SQLException;
  }

  private static void rows(Handle handle, Tables.Table table, EachRow each) throws IOException {
    String sql = "SELECT * FROM " + table.name() + " ORDER BY " + table.order();
    try (Statement statement = handle.getConnection().createStatement()) {
      statement.setFetchSize(1000);
      try (ResultSet rows = statement.executeQuery(sql)) {
        Map<String, Tables.Holds> columns = Tables.columns(rows);
        each.take(columns, null);
        while (rows.next()) {
          each.take(columns, rows);
        }
      }
    } catch (SQLException e) {
      throw StoreTrouble.of(e);
    }
  }

  /** Lets a writer be closed without closing the zip below it. */
  private static final class Unclosed extends OutputStream {
    private final OutputStream out;

    Unclosed(OutputStream out) {
      this.out = out;
    }

    @Override
    public void write(int b) throws IOException {
      out.write(b);
    }

    @Override
    public void write(byte[] b, int off, int len) throws IOException {
      out.write(b, off, len);
    }

    @Override
    public void close() throws IOException {
      out.flush();
    }
  }

  private static final String README =
      """
      This is everything in a Pourwright studio, in open formats.

      tables/NAME.jsonl  one JSON object a line, in order; this is what 'import' reads
      tables/NAME.csv    the same rows as CSV (RFC 4180, UTF-8); an empty cell without quotes is
                         'nothing', an empty cell in quotes is an empty text
      attachments/HASH   each attached file under the SHA-256 of its bytes
      manifest.json      what is in here, with the SHA-256 of every part

      Amounts are whole micrograms, nanolitres or pieces; times are milliseconds since 1970 in UTC;
      days are written YYYY-MM-DD; money is in whole cents. If the CSV files were written for a
      spreadsheet, text that begins like a formula has an apostrophe before it.
      The customers stand in tables/customer: leave those two files out when you pass this on.
      """;
}
