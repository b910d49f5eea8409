package pourwright.store;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** The books on a PostgreSQL server. */
class BooksOnPostgresTest extends DeskBooksContract {
  @SuppressWarnings("NullAway.Init")
  private static Postgres server;

  @BeforeAll
  static void start() throws Exception {
    server = Postgres.start();
  }

  @AfterAll
  static void stop() throws Exception {
    server.close();
  }

  @Override
  Bench open() {
    return new Bench(PostgresStore.open(server.freshDatabase()), Bench.freshFolder());
  }
}
