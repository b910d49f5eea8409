package pourwright.page;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import pourwright.batch.BatchKind;
import pourwright.work.Books;
import pourwright.work.Deed;
import pourwright.work.Subject;
import pourwright.work.Timer;
import pourwright.work.Undo;

/** What stands around every page, read from the books. */
public final class StudioSurroundings implements Surroundings {
  private static final int RECENT = 20;
  private static final long SECOND_MS = 1_000;
  private static final long MINUTE_S = 60;
  private static final long HOUR_S = 3_600;

  private final Desk desk;

  /** The surroundings at this desk. */
  public StudioSurroundings(Desk desk) {
    this.desk = desk;
  }

  @Override
  public List<Bell> bells(Instant now) {
    return desk.studio().look(books -> bells(books, now));
  }

  private List<Bell> bells(Books books, Instant now) {
    return books.timers().running().stream().map(timer -> bell(timer, now)).toList();
  }

  @Override
  public Around around(Instant now, String requestKey) {
    return desk.studio()
        .look(
            books -> {
              List<Deed> recent = recent(books);
              return new Around(
                  bells(books, now),
                  hot(books),
                  recent.isEmpty() ? Back.NOTHING : back(recent.subList(0, 1)),
                  requestKey.isEmpty() ? Back.NOTHING : back(ofRequest(recent, requestKey)));
            });
  }

  /** The deeds of a request: its own, and those that followed from it under its key. */
  private static List<Deed> ofRequest(List<Deed> recent, String requestKey) {
    return recent.stream()
        .filter(
            d -> d.requestKey().equals(requestKey) || d.requestKey().startsWith(requestKey + "-"))
        .toList();
  }

  private static Back back(List<Deed> deeds) {
    if (deeds.isEmpty()) {
      return Back.NOTHING;
    }
    String numbers = deeds.stream().map(d -> "" + d.id()).collect(Collectors.joining(","));
    return new Back(words(deeds.get(deeds.size() - 1)), numbers);
  }

  private Bell bell(Timer timer, Instant now) {
    long due = timer.dueAt().toEpochMilli();
    return new Bell(
        String.valueOf(timer.id()),
        timer.label(),
        due,
        left(due - now.toEpochMilli()),
        desk.clockTime(timer.dueAt()),
        link(timer.subject()),
        timer.rings(now));
  }

  /** Time left as {@code 12:05} or {@code 1:02:05}; past it, {@code +0:40}. */
  static String left(long millis) {
    boolean late = millis <= 0;
    long s = late ? -millis / SECOND_MS : (millis + SECOND_MS - 1) / SECOND_MS;
    long h = s / HOUR_S;
    long m = s % HOUR_S / MINUTE_S;
    String head = h > 0 ? String.format(Locale.ROOT, "%d:%02d", h, m) : String.valueOf(m);
    return (late ? "+" : "") + head + String.format(Locale.ROOT, ":%02d", s % MINUTE_S);
  }

  private static String link(Subject subject) {
    return switch (subject.kind()) {
      case PIECE -> "/piece/" + subject.id();
      case BATCH -> "/batch/" + subject.id();
      default -> "";
    };
  }

  @Override
  public boolean hot() {
    return desk.studio().look(StudioSurroundings::hot);
  }

  /** Something burns on the test shelf, or a pour is under way. */
  private static boolean hot(Books books) {
    return !books.burns().burning().isEmpty()
        || books.batches().running().stream().anyMatch(b -> b.plan().kind() == BatchKind.POUR);
  }

  @Override
  public String lastDeed() {
    return undoable(desk).map(StudioSurroundings::words).orElse("");
  }

  /** The deed that the Undo button takes back: the newest that still counts and is no undo. */
  public static java.util.Optional<Deed> undoable(Desk desk) {
    return desk.studio().look(StudioSurroundings::undoable);
  }

  private static java.util.Optional<Deed> undoable(Books books) {
    return recent(books).stream().findFirst();
  }

  /** The newest deeds that still count and are no undo. */
  private static List<Deed> recent(Books books) {
    return books.deeds().history(null, RECENT).items().stream()
        .filter(deed -> !deed.undone() && deed.undoes() == null && Undo.serves(deed))
        .toList();
  }

  /** A deed in words: what, by whom. */
  static String words(Deed deed) {
    return deed.verb() + " (" + deed.by() + ")";
  }
}
