package pourwright.work;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import pourwright.label.FederalHolidays;
import pourwright.label.ReportingClock;
import pourwright.stock.Trace;

/**
 * What a hold sets going: who has the pieces, the days by which it must be looked into and told,
 * and a message to start from.
 *
 * @param hold the hold
 * @param recall the pieces and who has them
 * @param reachBy last day for word to reach who answers for the studio
 * @param investigateBy last day to look into it
 * @param message a draft for buyers
 */
public record HoldNotice(
    Hold hold, Recall recall, LocalDate reachBy, LocalDate investigateBy, String message) {

  /**
   * The notice of a hold.
   *
   * @param what the thing on hold, in words
   * @param learned the day the studio learned of it
   */
  public static HoldNotice of(Books books, Hold hold, String what, LocalDate learned) {
    Recall recall = recall(books, hold.subject(), what);
    Set<LocalDate> holidays = FederalHolidays.between(learned.getYear(), learned.getYear() + 1);
    return new HoldNotice(
        hold,
        recall,
        ReportingClock.reachBy(learned, holidays),
        ReportingClock.investigateBy(learned, holidays),
        message(books, hold, recall));
  }

  private static Recall recall(Books books, Subject subject, String what) {
    Trace.Node node = subject.node();
    if (node != null) {
      return Recall.of(books, what, node);
    }
    int slash = subject.id().indexOf('/');
    String drawer = subject.id().substring(0, Math.max(0, slash));
    String code = subject.id().substring(slash + 1);
    List<Long> pieces = books.recalls().ofCard(drawer, code);
    return Recall.of(books, what, 0, pieces);
  }

  private static String message(Books books, Hold hold, Recall recall) {
    String studio = books.settings().value("studio.name").orElse("our studio");
    List<String> ways = new ArrayList<>();
    for (String key : List.of("maker.web", "maker.phone", "maker.address")) {
      books.settings().value(key).filter(v -> !v.isBlank()).ifPresent(ways::add);
    }
    List<String> marks =
        recall.rows().stream().filter(Recall.Row::out).map(Recall.Row::mark).toList();
    StringBuilder text = new StringBuilder();
    text.append("Please do not burn it\n\n");
    text.append("You bought something from ").append(studio);
    text.append(" that may not be as it should: ").append(hold.reason()).append(".\n\n");
    text.append("Please do not light it, and keep it away from fire and from children. ");
    text.append("If it burns now, put it out with a lid or a snuffer, never with water.\n\n");
    text.append("It carries one of these marks: ");
    text.append(
        marks.isEmpty()
            ? "(none has left the studio)"
            : String.join(", ", marks.subList(0, Math.min(60, marks.size()))));
    text.append(marks.size() > 60 ? " and " + (marks.size() - 60) + " more" : "").append(".\n\n");
    text.append("Write to us and we send you another one or your money back, as you like. ");
    text.append("Tell us if anything happened.\n\n").append(studio);
    ways.forEach(w -> text.append('\n').append(w));
    return text.append('\n').toString();
  }
}
