package pourwright.page;

import java.util.function.Function;
import pourwright.work.Books;
import pourwright.work.Outcome;
import pourwright.work.UnitOfWork;

/** For pages that look at no book: whoever opens one learns that there is none. */
final class NoBooks implements UnitOfWork {
  @Override
  public <T> T look(Function<Books, T> reading) {
    throw new UnsupportedOperationException("this test has no books");
  }

  @Override
  public <T> Outcome<T> write(Function<Books, Outcome<T>> writing) {
    throw new UnsupportedOperationException("this test has no books");
  }
}
