package pourwright.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.SqlLogger;
import org.jdbi.v3.core.statement.StatementContext;
import pourwright.work.Books;
import pourwright.work.Outcome;
import pourwright.work.UnitOfWork;

/** Transactions over two sets of connections: those that read, and the way to write. */
final class Transactions implements UnitOfWork {
  private final Jdbi readers;
  private final Jdbi writer;
  private final String firstInWrite;
  private final Recall recall = new Recall();

  /**
   * @param firstInWrite SQL that takes the writer's turn, empty where the connection itself does
   */
  Transactions(Jdbi readers, Jdbi writer, String firstInWrite) {
    this.readers = readers;
    this.writer = writer;
    this.firstInWrite = firstInWrite;
  }

  @Override
  public <T> T look(Function<Books, T> reading) {
    return reading(handle -> reading.apply(new SqlBooks(handle, recall)));
  }

  @Override
  public <T> Outcome<T> write(Function<Books, Outcome<T>> writing) {
    return writing(handle -> writing.apply(new SqlBooks(handle, null)));
  }

  @Override
  public <T> T aside(Function<Books, T> writing) {
    return writing(handle -> writing.apply(new SqlBooks(handle, null)));
  }

  <T> T reading(HandleCallback<T, ? extends Exception> reading) {
    try (Handle handle = readers.open()) {
      handle.begin();
      T result = reading.withHandle(handle);
      handle.commit();
      return result;
    } catch (Exception e) {
      throw asTold(e);
    }
  }

  /** Commits, unless the result is a refusal: then nothing is left written. */
  <T> T writing(HandleCallback<T, ? extends Exception> writing) {
    try (Handle handle = writer.open()) {
      handle.begin();
      try {
        if (!firstInWrite.isEmpty()) {
          handle.execute(firstInWrite);
        }
        T result = writing.withHandle(handle);
        if (result instanceof Outcome.Refused) {
          handle.rollback();
        } else {
          handle.commit();
        }
        return result;
      } catch (Exception | Error e) {
        rollBack(handle, e);
        throw e;
      }
    } catch (Exception e) {
      throw asTold(e);
    }
  }

  private static void rollBack(Handle handle, Throwable first) {
    try {
      handle.rollback();
    } catch (RuntimeException e) {
      first.addSuppressed(e);
    }
  }

  /** Lets every statement of those that read be heard; for tests. */
  void listen(Consumer<String> ear) {
    readers.setSqlLogger(
        new SqlLogger() {
          @Override
          public void logBeforeExecution(StatementContext statement) {
            ear.accept(String.valueOf(statement.getRenderedSql()));
          }
        });
  }

  /** A mistake in the program stays what it is; what the database threw is told in plain words. */
  private static RuntimeException asTold(Exception e) {
    if (e instanceof JdbiException || e instanceof SQLException) {
      return StoreTrouble.of(e);
    }
    return e instanceof RuntimeException runtime ? runtime : StoreTrouble.of(e);
  }

  /** Something that must not run inside a transaction. */
  interface Outside {
    /** Does it. */
    void on(Connection connection) throws SQLException;
  }

  void outside(Outside work) {
    try (Handle handle = writer.open()) {
      work.on(handle.getConnection());
    } catch (SQLException | JdbiException e) {
      throw StoreTrouble.of(e);
    }
  }
}
