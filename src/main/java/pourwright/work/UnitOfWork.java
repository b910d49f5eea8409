package pourwright.work;

import java.util.function.Function;

/** Runs something on the books in one transaction. */
public interface UnitOfWork {

  /** Looks at one moment of the books; nothing can be written. */
  <T> T look(Function<Books, T> reading);

  /**
   * Writes. One writer at a time; what is done is on the disk when this returns. A refusal leaves
   * nothing written.
   */
  <T> Outcome<T> write(Function<Books, Outcome<T>> writing);

  /**
   * Writes what is no deed and of no ledger, such as a draft; it is on the disk when this returns.
   */
  <T> T aside(Function<Books, T> writing);
}
