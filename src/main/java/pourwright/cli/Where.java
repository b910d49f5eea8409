package pourwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The options of every command that uses a data folder. */
final class Where {
  @Option(
      names = "--data",
      paramLabel = "DIR",
      description = "The data folder; else POURWRIGHT_DATA, the settings file, the usual place.")
  private @Nullable String data;

  @Option(
      names = "--db",
      paramLabel = "URL",
      description = "A PostgreSQL database in place of the file in the data folder.")
  private @Nullable String db;

  Map<String, String> given() {
    Map<String, String> given = new LinkedHashMap<>();
    put(given, "data", data);
    put(given, "db", db);
    return given;
  }

  Doors.Flags flags() {
    return new Doors.Flags(given());
  }

  static void put(Map<String, String> given, String name, @Nullable String value) {
    if (value != null) {
      given.put(name, value);
    }
  }
}
