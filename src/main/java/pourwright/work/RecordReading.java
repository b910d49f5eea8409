package pourwright.work;

import java.util.List;
import pourwright.quantity.Check;

/** Writes readings down: temperatures, masses, humidity. */
public final class RecordReading {
  private static final String VERB = "took a reading";
  private final Doing doing;

  RecordReading(Doing doing) {
    this.doing = doing;
  }

  /** Writes them all or none; a reading from the future is refused. */
  public Outcome<List<Reading>> run(Act act, List<Reading> readings) {
    return doing.once(
        act,
        VERB,
        turn -> {
          if (readings.isEmpty()) {
            return Outcome.refused(Reason.INPUT_CANNOT_BE, "no reading is given", "give one");
          }
          for (Reading reading : readings) {
            Check.finite(reading.quantity(), reading.value());
            if (reading.takenAt().isAfter(turn.now().plusSeconds(60))) {
              return Outcome.refused(
                  Reason.INPUT_CANNOT_BE,
                  "a reading from " + reading.takenAt() + " lies in the future",
                  "give the time it was taken");
            }
          }
          Deed deed = turn.deed(readings.get(0).subject());
          return Turn.done(
              deed, readings.stream().map(r -> turn.books().readings().append(r, deed)).toList());
        },
        (books, deed) -> books.readings().ofDeed(deed.id()));
  }
}
