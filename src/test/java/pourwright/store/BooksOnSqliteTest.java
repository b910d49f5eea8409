package pourwright.store;

/** The books in one SQLite file. */
class BooksOnSqliteTest extends DeskBooksContract {
  @Override
  Bench open() {
    return Bench.onSqlite();
  }
}
