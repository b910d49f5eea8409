package pourwright.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/** A PostgreSQL server of our own for tests, on loopback; as root it runs in a namespace. */
public final class Postgres implements AutoCloseable {
  private final EmbeddedPostgres server;
  private int databases;

  private Postgres(EmbeddedPostgres server) {
    this.server = server;
  }

  public static Postgres start() throws IOException {
    Postgres postgres =
        new Postgres(
            EmbeddedPostgres.builder()
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .start());
    postgres.run("CREATE DATABASE pattern");
    PostgresStore.open(postgres.server.getJdbcUrl("postgres", "pattern")).close();
    return postgres;
  }

  private void run(String sql) {
    try (Connection connection = server.getPostgresDatabase().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The URL of a database in which no step was taken yet. */
  public String bareDatabase() {
    databases++;
    run("CREATE DATABASE bare" + databases);
    return server.getJdbcUrl("postgres", "bare" + databases);
  }

  /** The URL of a new empty database. */
  public String freshDatabase() {
    databases++;
    String name = "studio" + databases;
    run("CREATE DATABASE " + name + " TEMPLATE pattern");
    return server.getJdbcUrl("postgres", name);
  }

  @Override
  public void close() throws IOException {
    server.close();
  }
}
