package pourwright.page;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** The system's clock, set forward or back by hand. */
public final class MovableClock extends Clock {
  private volatile Duration offset = Duration.ZERO;

  /** Sets the clock forward; back when negative. */
  public void move(Duration by) {
    offset = offset.plus(by);
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return this;
  }

  @Override
  public Instant instant() {
    return Clock.systemUTC().instant().plus(offset);
  }
}
