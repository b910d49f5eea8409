package pourwright.main;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;

/** A clock that the generated history sets from step to step; it never goes back. */
final class DemoClock extends Clock {
  private final ZoneId zone;
  private Instant now;

  DemoClock(Instant start, ZoneId zone) {
    this.now = start;
    this.zone = zone;
  }

  void set(Instant to) {
    now = to.isAfter(now) ? to : now;
  }

  @Override
  public Instant instant() {
    return now;
  }

  @Override
  public ZoneId getZone() {
    return zone;
  }

  @Override
  public Clock withZone(ZoneId other) {
    return new DemoClock(now, other);
  }
}
