package pourwright.main;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import pourwright.work.Books;
import pourwright.work.Deed;
import pourwright.work.Outcome;
import pourwright.work.UnitOfWork;

/**
 * Many deeds in one transaction: what the use cases ask of the store inside is given the same
 * books. Any refusal inside is a bug of the generator and takes the whole stretch back.
 */
final class DemoBatch implements UnitOfWork {
  private final UnitOfWork store;
  private @Nullable Books open;
  private @Nullable Deed last;

  DemoBatch(UnitOfWork store) {
    this.store = store;
  }

  /** Runs a stretch of history in one transaction. */
  void stretch(Runnable history) {
    store.<String>write(
        books -> {
          open = books;
          last = null;
          history.run();
          open = null;
          Deed deed = last;
          return deed == null
              ? Outcome.refused(pourwright.work.Reason.NOT_ON_FILE, "nothing happened", "go on")
              : new Outcome.Done<>(deed, "", false);
        });
  }

  @Override
  public <T> T look(Function<Books, T> reading) {
    Books books = open;
    return books == null ? store.look(reading) : reading.apply(books);
  }

  @Override
  public <T> T aside(Function<Books, T> writing) {
    Books books = open;
    return books == null ? store.aside(writing) : writing.apply(books);
  }

  @Override
  public <T> Outcome<T> write(Function<Books, Outcome<T>> writing) {
    Books books = open;
    Outcome<T> outcome = books == null ? store.write(writing) : writing.apply(books);
    if (outcome instanceof Outcome.Done<T> done) {
      last = done.deed();
    } else if (outcome instanceof Outcome.Refused<T> refused) {
      throw new IllegalStateException(refused.sentence() + "; " + refused.hint());
    }
    return outcome;
  }
}
