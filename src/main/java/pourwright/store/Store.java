package pourwright.store;

import org.jdbi.v3.core.HandleCallback;
import pourwright.work.UnitOfWork;

/** An open database, whichever it is. */
public interface Store extends AutoCloseable {

  /** The studio's transactions. */
  UnitOfWork unitOfWork();

  /** Looks at one moment of the database. */
  <T> T look(HandleCallback<T, RuntimeException> reading);

  /** Runs SQL in one writing transaction; for import, rebuilds and tests. */
  <T> T write(HandleCallback<T, RuntimeException> writing);

  /** Sentences about anything that is not as it should be; empty when sound. */
  java.util.List<String> unsound();

  /** In words, for {@code inspect}. */
  String describe();

  /** True on SQLite. */
  boolean isSqlite();

  @Override
  void close();

  /** Works the kept tables out anew from the ledger and says how many rows were wrong. */
  default long rebuildKept() {
    return write(Kept::rebuild);
  }

  /** How many rows of the kept tables disagree with the ledger. */
  default long keptRowsWrong() {
    return look(Kept::wrong);
  }
}
