package pourwright.plan;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;

/**
 * Who works when, and with what, beside the molds that stand on cards.
 *
 * @param origin minute 0 of the plan
 * @param zone the studio's clock
 * @param days how many days ahead are planned
 * @param hours hours of each person, by initials
 * @param melters how many melters
 * @param racks pieces that the drying rack holds
 * @param post days on which parcels go
 */
public record Floor(
    Instant origin,
    ZoneId zone,
    int days,
    Map<String, WorkHours> hours,
    int melters,
    int racks,
    PostDays post) {
  /** A studio whose post comes every day. */
  public Floor(
      Instant origin, ZoneId zone, int days, Map<String, WorkHours> hours, int melters, int racks) {
    this(origin, zone, days, hours, melters, racks, PostDays.EVERY_DAY);
  }

  /** The same with other days of the post. */
  public Floor with(PostDays other) {
    return new Floor(origin, zone, days, hours, melters, racks, other);
  }

  /** The same seen from another minute 0, so many days ahead. */
  public Floor from(Instant begin, int ahead) {
    return new Floor(begin, zone, ahead, hours, melters, racks, post);
  }

  /** The same with each class taken from the hours of its teacher; from all where unknown. */
  public Floor teaching(List<SeatClass> classes) {
    Map<String, WorkHours> left = new java.util.TreeMap<>(hours);
    for (SeatClass one : classes) {
      WorkHours.Appointment appointment =
          new WorkHours.Appointment(one.day(), new WorkHours.Stretch(one.from(), one.to()));
      left.replaceAll(
          (who, theirs) ->
              who.equals(one.teacher()) || !hours.containsKey(one.teacher())
                  ? theirs.but(appointment)
                  : theirs);
    }
    return new Floor(origin, zone, days, left, melters, racks, post);
  }

  /** House: one person, one melter, 60 pieces on the rack, 180 days ahead. */
  public static Floor house(Instant origin, ZoneId zone, List<String> initials) {
    Map<String, WorkHours> hours = new java.util.TreeMap<>();
    initials.forEach(i -> hours.put(i, WorkHours.house()));
    return new Floor(origin, zone, 180, hours, 1, 60);
  }

  /** Minutes that are planned. */
  public int horizonMin() {
    return days * 1440;
  }
}
