package pourwright.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import org.sqlite.JDBC;

/** Copies of a database made by SQLite itself, and the check of one. */
final class SqliteCopy {
  private SqliteCopy() {}

  /**
   * Writes a compact copy, forces it to the disk, opens it again and checks it.
   *
   * @throws StoreTrouble when the copy is not sound; it is then no backup
   */
  static void into(Connection connection, Path target) throws SQLException {
    try (PreparedStatement vacuum = connection.prepareStatement("VACUUM INTO ?")) {
      vacuum.setString(1, target.toAbsolutePath().toString());
      vacuum.execute();
    }
    try {
      StudioFolder.own(target, "rw-------");
      force(target);
      forceFolderOf(target);
    } catch (IOException e) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DISK, "the copy could not be kept: " + e.getMessage(), "free space", e);
    }
    List<String> findings = check(target);
    if (!findings.isEmpty()) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DAMAGED,
          "the copy is not sound: " + String.join("; ", findings),
          "close Pourwright, keep the folder as it is, and restore the newest backup");
    }
  }

  /** Opens a file that nobody else uses, read-only and trusting nothing in it, and checks it. */
  static List<String> check(Path file) throws SQLException {
    Properties properties = new Properties();
    properties.setProperty("open_mode", "1");
    try (Connection copy =
            JDBC.createConnection("jdbc:sqlite:" + file.toAbsolutePath(), properties);
        Statement statement = copy.createStatement()) {
      statement.execute("PRAGMA trusted_schema = 0");
      statement.execute("PRAGMA mmap_size = 0");
      statement.execute("PRAGMA cell_size_check = 1");
      List<String> quick = lines(copy, "PRAGMA quick_check");
      if (!quick.equals(List.of("ok"))) {
        return quick;
      }
      return findings(copy);
    }
  }

  /** What integrity and foreign keys say; empty when all is well. */
  static List<String> findings(Connection connection) throws SQLException {
    List<String> findings = new ArrayList<>(lines(connection, "PRAGMA integrity_check"));
    findings.remove("ok");
    for (String row : lines(connection, "PRAGMA foreign_key_check")) {
      findings.add("a row of " + row + " points at nothing");
    }
    return findings;
  }

  private static List<String> lines(Connection connection, String sql) throws SQLException {
    List<String> lines = new ArrayList<>();
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      while (rows.next()) {
        lines.add(rows.getString(1));
      }
    }
    return lines;
  }

  /** Forces the folder that a file lies in. */
  static void forceFolderOf(Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    if (folder != null) {
      force(folder);
    }
  }

  /** Forces a finished file or a folder to the disk; never the live database. */
  static void force(Path path) throws IOException {
    try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
      channel.force(true);
    }
  }
}
