package pourwright.store;

import pourwright.work.BooksUnavailable;

/** The store cannot be opened or has failed; says in plain words what happened and what to do. */
public final class StoreTrouble extends BooksUnavailable {
  private static final long serialVersionUID = 1L;

  /** PostgreSQL's disk_full, "Appendix A. PostgreSQL Error Codes", class 53. */
  private static final String DISK_FULL = "53100";

  /** What kind of trouble; the program's exit code goes by it. */
  public enum Kind {
    /** What was given is not what is asked for here. */
    REFUSED(2),
    /** Another Pourwright has this folder open. */
    LOCKED(10),
    /** The database was written by a newer Pourwright. */
    NEWER(12),
    /** The file is damaged, or not one of ours. */
    DAMAGED(13),
    /** The disk is full or read-only. */
    DISK(14),
    /** Anything else. */
    OTHER(1);

    private final int exitCode;

    Kind(int exitCode) {
      this.exitCode = exitCode;
    }

    /** The exit code of the program. */
    public int exitCode() {
      return exitCode;
    }
  }

  private final Kind kind;

  /**
   * @param kind which
   * @param message what happened, a sentence
   * @param hint what to do
   */
  public StoreTrouble(Kind kind, String message, String hint) {
    super(kind == Kind.DISK, message, hint);
    this.kind = kind;
  }

  /**
   * @param cause what was thrown below
   */
  public StoreTrouble(Kind kind, String message, String hint, Throwable cause) {
    super(kind == Kind.DISK, message, hint, cause);
    this.kind = kind;
  }

  /** Which kind. */
  public Kind kind() {
    return kind;
  }

  /** What SQLite or PostgreSQL threw, as trouble a person can read. */
  public static StoreTrouble of(Throwable thrown) {
    Throwable at = thrown;
    while (at != null) {
      if (at instanceof StoreTrouble trouble) {
        return trouble;
      }
      if (at instanceof org.sqlite.SQLiteException sqlite) {
        return ofSqlite(sqlite, thrown);
      }
      if (at instanceof java.sql.SQLException sql && DISK_FULL.equals(sql.getSQLState())) {
        return new StoreTrouble(
            Kind.DISK,
            "the disk of the database server is full; nothing of this was saved",
            "free some space there and do it again; everything saved before is safe",
            thrown);
      }
      at = at.getCause();
    }
    return new StoreTrouble(
        Kind.OTHER,
        "the books could not be reached: " + thrown.getMessage(),
        "try again; what was said to be saved is saved",
        thrown);
  }

  private static StoreTrouble ofSqlite(org.sqlite.SQLiteException sqlite, Throwable thrown) {
    return switch (sqlite.getResultCode().code & 0xff) {
      case 13 ->
          new StoreTrouble(
              Kind.DISK,
              "the disk is full; nothing of this was saved",
              "free some space and do it again; everything saved before is safe",
              thrown);
      case 8, 14 ->
          new StoreTrouble(
              Kind.DISK,
              "the data folder cannot be written to",
              "give this account the right to write there, or choose another folder",
              thrown);
      case 11, 26 ->
          new StoreTrouble(
              Kind.DAMAGED,
              "the database file is damaged or is not one",
              "close Pourwright, keep the folder as it is, and restore the newest backup",
              thrown);
      case 5, 6 ->
          new StoreTrouble(
              Kind.LOCKED,
              "another program keeps the database busy",
              "close it and do it again",
              thrown);
      case 10 ->
          new StoreTrouble(
              Kind.DISK,
              "the disk did not take the write; nothing of this was saved",
              "look at the disk and do it again; everything saved before is safe",
              thrown);
      default ->
          new StoreTrouble(
              Kind.OTHER,
              "the books refused that: " + sqlite.getMessage(),
              "nothing of it was saved",
              thrown);
    };
  }
}
