package pourwright.heat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;

/** A breach on purpose: the craft opening a file and talking of SQL. */
public final class SeededBreachReadsAFile {
  String read(Path file) throws IOException, SQLException {
    return Files.readString(file);
  }
}
