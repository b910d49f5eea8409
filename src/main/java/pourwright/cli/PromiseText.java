package pourwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import pourwright.plan.LastDay;
import pourwright.plan.Promise;
import pourwright.work.Wish;

/**
 * When a wish can leave, in a terminal and as JSON. Nothing is promised of a candle that is not
 * proved for sale; when it could be made is said apart from that.
 *
 * @param wish what was asked for
 * @param found what the search found; null where only the quick order of work was asked for
 */
public record PromiseText(Wish wish, @Nullable Promise found) {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("EEE yyyy-MM-dd HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter ISO = DateTimeFormatter.ISO_OFFSET_DATE_TIME;

  /** The minute at which all of it could be made; -1 where no date can be said. */
  private int endMin() {
    if (wish.onTheShelf()) {
      return 0;
    }
    if (found instanceof Promise.Holds holds) {
      return holds.endMin();
    }
    return found instanceof Promise.None ? -1 : wish.quickEndMin();
  }

  private List<String> reasons() {
    return found instanceof Promise.None none ? none.reasons() : wish.work().reasons();
  }

  private String when(DateTimeFormatter form, int minute) {
    return form.format(wish.problem().clock(minute));
  }

  /** True when a date is promised. */
  public boolean promises() {
    return wish.mayBePromised() && endMin() >= 0;
  }

  /** The answer as JSON; {@code leaves_at} is null where no date may be promised. */
  public ObjectNode json() {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    int end = endMin();
    out.put("proved_for_sale", wish.mayBePromised());
    all(out.putArray("not_proved"), wish.notProved());
    all(out.putArray("missing"), wish.missing());
    out.put("leaves_at", promises() ? when(ISO, end) : null);
    out.put("could_be_made_at", end < 0 ? null : when(ISO, end));
    out.put("on_the_shelf", wish.onTheShelf());
    out.put("proven", found instanceof Promise.Holds holds && holds.proven());
    ArrayNode gains = out.putArray("gains");
    if (found instanceof Promise.Holds holds) {
      out.put("limited_by", holds.limitedBy());
      holds
          .gains()
          .forEach(
              g ->
                  gains.addObject().put("with", g.remedy()).put("earlier_min", g.minutesEarlier()));
    }
    all(out.putArray("short_of"), wish.shortOf());
    all(out.putArray("reasons"), end < 0 ? reasons() : List.of());
    LocalDate last = wish.lastDay();
    out.put("last_day_to_cast", last == null ? null : last.toString());
    ArrayNode way = out.putArray("way");
    wish.way().forEach(l -> way.addObject().put("step", l.words()).put("minutes", l.minutes()));
    out.put("way_min", wish.way().stream().mapToLong(LastDay.Leg::minutes).sum());
    return out;
  }

  private static void all(ArrayNode to, List<String> words) {
    words.forEach(to::add);
  }

  /** Prints the answer. */
  public void print(PrintWriter out) {
    int end = endMin();
    String made = end < 0 ? "" : when(WHEN, end);
    if (!wish.mayBePromised()) {
      out.println("No date can be promised before it is proved for sale:");
      wish.notProved().forEach(n -> out.println("  " + n));
      if (!wish.missing().isEmpty()) {
        out.println("Still missing before it may be called proved:");
        wish.missing().forEach(m -> out.println("  " + m));
      }
      out.println(
          end < 0
              ? "No date can be said for the making either."
              : "If the tests pass, the making could be done: " + made);
    } else {
      out.println(end < 0 ? "No date can be said." : "Earliest: " + made);
    }
    if (end < 0) {
      reasons().forEach(r -> out.println("  " + r));
    }
    if (found instanceof Promise.Holds holds) {
      out.println(
          holds.proven()
              ? "Proven: no earlier minute holds while the other dates are kept."
              : "Not proven: at the very best "
                  + when(WHEN, Math.toIntExact(Math.max(0, holds.boundMin()))));
      out.println("What holds it: " + holds.limitedBy());
      holds
          .gains()
          .forEach(
              g ->
                  out.println("  with " + g.remedy() + ": " + g.minutesEarlier() + " min earlier"));
    } else if (end > 0) {
      out.println("By the quick order of work; nothing is proven.");
    }
    if (!wish.shortOf().isEmpty()) {
      out.println("Short for what is open: " + String.join(", ", wish.shortOf()));
    }
    if (wish.parcelDay() != null) {
      out.println(
          "Last day to cast for the parcel of "
              + wish.parcelDay()
              + ": "
              + (wish.lastDay() == null
                  ? "no day of the last half year would do"
                  : wish.lastDay()));
    }
    out.println("The whole way, on a floor with nothing else to do:");
    wish.way().forEach(l -> out.printf("  %8d min  %s%n", l.minutes(), l.words()));
    out.flush();
  }
}
