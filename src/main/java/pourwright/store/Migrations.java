package pourwright.store;

import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.ResourceProvider;
import org.flywaydb.core.api.output.MigrateResult;
import org.flywaydb.core.api.resource.LoadableResource;
import org.jspecify.annotations.Nullable;

/** Brings a database to the newest step, each step in a transaction of its own. */
final class Migrations {
  /** The newest step there is. */
  static final int NEWEST = 75;

  /** The table in which the steps taken are kept. */
  static final String TABLE = "schema_history";

  private static final Map<String, String> SQLITE =
      Map.of("whole", "INTEGER", "real", "REAL", "strict", "STRICT");
  private static final Map<String, String> POSTGRESQL =
      Map.of("whole", "BIGINT", "real", "DOUBLE PRECISION", "strict", "");

  /** Every step and the folder it lies in; named here so that no class path is searched. */
  static final Map<String, String> STEPS =
      Map.ofEntries(
          Map.entry("V0001__books.sql", "common"),
          Map.entry("V0002__shelf_and_desk.sql", "common"),
          Map.entry("V0003__guards.sql", ""),
          Map.entry("V0004__still_open.sql", ""),
          Map.entry("V0010__scarce_facts.sql", ""),
          Map.entry("V0029__money.sql", ""),
          Map.entry("V0030__after_sale.sql", ""),
          Map.entry("V0055__poured.sql", ""),
          Map.entry("V0065__carried.sql", ""),
          Map.entry("V0070__step_clock.sql", ""),
          Map.entry("V0075__draft.sql", ""));

  private Migrations() {}

  /** Steps for SQLite. */
  static int onSqlite(DataSource database) {
    return run(database, "sqlite", SQLITE);
  }

  /** Steps for PostgreSQL. */
  static int onPostgres(DataSource database) {
    return run(database, "postgresql", POSTGRESQL);
  }

  private static int run(DataSource database, String overlay, Map<String, String> words) {
    MigrateResult result =
        Flyway.configure(Migrations.class.getClassLoader())
            .dataSource(database)
            .resourceProvider(new Steps(overlay))
            .placeholders(words)
            .table(TABLE)
            .validateMigrationNaming(true)
            .cleanDisabled(true)
            .loggers("slf4j")
            .load()
            .migrate();
    return result.migrationsExecuted;
  }

  /** Finds the steps by name. */
  private record Steps(String overlay) implements ResourceProvider {
    private String path(String name) {
      String folder = STEPS.getOrDefault(name, "common");
      return "/db/migration/" + (folder.isEmpty() ? overlay : folder) + "/" + name;
    }

    @Override
    public @Nullable LoadableResource getResource(String name) {
      return STEPS.containsKey(name) ? new Step(path(name), name) : null;
    }

    @Override
    public Collection<LoadableResource> getResources(String prefix, String[] suffixes) {
      List<LoadableResource> found = new ArrayList<>();
      for (String name : new TreeSet<>(STEPS.keySet())) {
        if (name.startsWith(prefix) && Arrays.stream(suffixes).anyMatch(name::endsWith)) {
          found.add(new Step(path(name), name));
        }
      }
      return found;
    }
  }

  /** One step, read from beside the classes. */
  private static final class Step extends LoadableResource {
    private final String path;
    private final String name;

    Step(String path, String name) {
      this.path = path;
      this.name = name;
    }

    @Override
    public Reader read() {
      InputStream in = Migrations.class.getResourceAsStream(path);
      if (in == null) {
        throw new IllegalStateException("the step " + path + " is missing from the program");
      }
      return new InputStreamReader(in, StandardCharsets.UTF_8);
    }

    @Override
    public String getAbsolutePath() {
      return path;
    }

    @Override
    public String getAbsolutePathOnDisk() {
      return path;
    }

    @Override
    public String getFilename() {
      return name;
    }

    @Override
    public String getRelativePath() {
      return name;
    }
  }
}
