package pourwright.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jdbi.v3.core.ConnectionFactory;

/** A few open connections that are handed out one at a time and come back. */
final class Lanes implements ConnectionFactory, AutoCloseable {
  private static final long PATIENCE_S = 20;
  private final List<Connection> all;
  private final BlockingQueue<Connection> free;

  Lanes(List<Connection> connections) {
    this.all = new ArrayList<>(connections);
    this.free = new ArrayBlockingQueue<>(connections.size(), true, connections);
  }

  /** Every connection, handed out or not; for checks. */
  List<Connection> all() {
    return List.copyOf(all);
  }

  @Override
  public Connection openConnection() throws SQLException {
    try {
      Connection connection = free.poll(PATIENCE_S, TimeUnit.SECONDS);
      if (connection == null) {
        throw new SQLException("the books were busy for " + PATIENCE_S + " s");
      }
      return connection;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new SQLException("interrupted while waiting for the books", e);
    }
  }

  @Override
  public void closeConnection(Connection connection) {
    free.add(connection);
  }

  @Override
  public void close() throws SQLException {
    for (Connection connection : all) {
      connection.close();
    }
  }
}
