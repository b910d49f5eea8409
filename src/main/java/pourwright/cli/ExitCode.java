package pourwright.cli;

/** The program's own states, told to whoever started it. */
public final class ExitCode {
  /** Done. */
  public static final int OK = 0;

  /** Something went wrong that has no number of its own. */
  public static final int ERROR = 1;

  /** Usage or refused input. */
  public static final int USAGE = 2;

  /** Computed, but a limit is exceeded and {@code --strict} was asked for. */
  public static final int WARNED = 3;

  /** This data folder is open in another Pourwright. */
  public static final int LOCKED = 10;

  /** No port is free. */
  public static final int PORT = 11;

  /** The database was written by a newer Pourwright. */
  public static final int NEWER = 12;

  /** The data are damaged. */
  public static final int DAMAGED = 13;

  /** The disk is full or may not be written. */
  public static final int DISK = 14;

  /** What each number means, one a line, for {@code --help}. */
  public static final String[] MEANINGS = {
    " 0:done",
    " 1:error",
    " 2:usage, or input that was refused",
    " 3:computed, with --strict: a limit is exceeded",
    "10:this data folder is open in another Pourwright",
    "11:no port is free",
    "12:the database was written by a newer Pourwright",
    "13:the data are damaged",
    "14:the disk is full or may not be written"
  };

  private ExitCode() {}
}
