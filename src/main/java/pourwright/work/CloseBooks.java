package pourwright.work;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Closes the books up to a day. What stood on every account then is written down; from that moment
 * the books of those days are told as they stood, and whatever is corrected later, an undone draw
 * or a changed price, counts on the first day that is open. A closing is not taken back.
 */
public final class CloseBooks {
  /** What an undo must not take back. */
  static final String VERB = "closed the books";

  /** How the keys of closings begin; the last closed day follows. */
  static final String KEY = "books.closed.";

  private final Doing doing;

  CloseBooks(Doing doing) {
    this.doing = doing;
  }

  /**
   * Closes them.
   *
   * @param last the last day that is closed; it must be over
   */
  public Outcome<LocalDate> run(Act act, LocalDate last) {
    return doing.once(act, VERB, turn -> close(turn, last), (books, deed) -> last);
  }

  private Outcome<LocalDate> close(Turn turn, LocalDate last) {
    if (!last.isBefore(turn.today())) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE,
          last + " is not over",
          "close the books up to a day before today");
    }
    Optional<LocalDate> before = closed(turn.books());
    if (before.isPresent() && !last.isAfter(before.get())) {
      return Outcome.refused(
          Reason.IT_IS_ALREADY_ANSWERED,
          "the books are closed up to " + before.get(),
          "choose a later day");
    }
    StringBuilder text = new StringBuilder();
    Bookkeeping.of(turn.books(), doing.zone())
        .journal()
        .balances(last.plusDays(1))
        .forEach((account, minor) -> text.append(minor).append('\t').append(account).append('\n'));
    Deed deed = turn.deed(new Subject(Subject.Kind.SETTING, KEY + last));
    turn.books().settings().put(KEY + last, text.toString(), deed.id());
    return Turn.done(deed, last);
  }

  /** The last day that is closed; empty while none is. */
  public static Optional<LocalDate> closed(Books books) {
    return closed(books.settings().all());
  }

  /** The same from all settings. */
  static Optional<LocalDate> closed(Map<String, String> settings) {
    return settings.keySet().stream()
        .filter(key -> key.startsWith(KEY))
        .map(CloseBooks::day)
        .flatMap(Optional::stream)
        .max(LocalDate::compareTo);
  }

  /** What stood on the accounts at each closing, by its last day. */
  static Map<LocalDate, Map<String, Long>> all(Books books) {
    Map<LocalDate, Map<String, Long>> all = new TreeMap<>();
    books
        .settings()
        .all()
        .forEach(
            (key, text) -> {
              if (key.startsWith(KEY)) {
                day(key).ifPresent(day -> all.put(day, balances(text)));
              }
            });
    return all;
  }

  private static Optional<LocalDate> day(String key) {
    try {
      return Optional.of(LocalDate.parse(key.substring(KEY.length())));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static Map<String, Long> balances(String text) {
    Map<String, Long> balances = new TreeMap<>();
    for (String line : text.split("\n", -1)) {
      int tab = line.indexOf('\t');
      if (tab > 0) {
        balances.put(line.substring(tab + 1), Long.parseLong(line.substring(0, tab)));
      }
    }
    return balances;
  }

  /** Why nothing may be written on a day, if it is closed. */
  static <T> Optional<Outcome<T>> refusal(Books books, LocalDate day) {
    return closed(books)
        .filter(last -> !day.isAfter(last))
        .map(
            last ->
                Outcome.refused(
                    Reason.DAY_IS_CLOSED,
                    "the books are closed up to " + last,
                    "write it on a later day: a correction counts in the open year"));
  }
}
