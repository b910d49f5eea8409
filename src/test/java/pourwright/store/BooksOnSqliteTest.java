package pourwright.store;

/** The books in one SQLite file. */
class BooksOnSqliteTest extends BooksContract {
  @Override
  Bench open() {
    return Bench.onSqlite();
  }
}
