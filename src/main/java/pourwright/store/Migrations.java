package pourwright.store;

import java.util.Map;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.output.MigrateResult;

/** Brings a database to the newest step, each step in a transaction of its own. */
final class Migrations {
  /** The newest step there is. */
  static final int NEWEST = 3;

  /** The table in which the steps taken are kept. */
  static final String TABLE = "schema_history";

  private static final Map<String, String> SQLITE =
      Map.of("whole", "INTEGER", "real", "REAL", "strict", "STRICT");
  private static final Map<String, String> POSTGRESQL =
      Map.of("whole", "BIGINT", "real", "DOUBLE PRECISION", "strict", "");

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
            .locations("classpath:db/migration/common", "classpath:db/migration/" + overlay)
            .placeholders(words)
            .table(TABLE)
            .validateMigrationNaming(true)
            .cleanDisabled(true)
            .loggers("slf4j")
            .load()
            .migrate();
    return result.migrationsExecuted;
  }
}
