package pourwright.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pourwright.quantity.OutOfRange;

/**
 * What is to be planned, with every name looked up and every time in whole minutes that really pass
 * from the origin. Windows were made from clock times in the zone, so a day on which the clocks
 * change has 1380 or 1500 minutes and a 12 h wait is 720 minutes on any day.
 *
 * @param origin minute 0
 * @param zone the studio's clock
 * @param horizonMin no step ends after this minute
 * @param resources people and things, in a fixed order
 * @param steps what is to be done
 * @param links order and waits
 * @param spans things held over several steps
 * @param goals dates to keep
 * @param apart what must not meet
 * @param washings washing between families
 * @param lastHotStartMin no hot step begins in the last this many minutes before everyone has left;
 *     house: 30
 */
public record PlanProblem(
    Instant origin,
    ZoneId zone,
    int horizonMin,
    List<Resource> resources,
    List<Step> steps,
    List<Link> links,
    List<Span> spans,
    List<Goal> goals,
    List<Apart> apart,
    List<Washing> washings,
    int lastHotStartMin) {

  /** House habit: nothing hot or lit is begun in the last half hour. */
  public static final int LAST_HOT_START_MIN = 30;

  /**
   * Copies the lists and checks that every name in them is known.
   *
   * @throws OutOfRange naming what is not known or stands twice
   */
  public PlanProblem {
    resources = List.copyOf(resources);
    steps = List.copyOf(steps);
    links = List.copyOf(links);
    spans = List.copyOf(spans);
    goals = List.copyOf(goals);
    apart = List.copyOf(apart);
    washings = List.copyOf(washings);
    Set<String> things = new HashSet<>();
    for (Resource resource : resources) {
      unique("resource", resource.key(), things);
    }
    Set<String> named = new HashSet<>();
    for (Step step : steps) {
      unique("step", step.key(), named);
      step.uses().keySet().forEach(r -> known("resource", r, things));
      step.people().forEach(r -> known("person", r, things));
    }
    for (Link link : links) {
      known("step", link.before(), named);
      known("step", link.after(), named);
    }
    for (Span span : spans) {
      known("resource", span.resource(), things);
      known("step", span.fromStep(), named);
      known("step", span.toStep(), named);
    }
    goals.forEach(g -> known("step", g.lastStep(), named));
    washings.forEach(w -> known("resource", w.resource(), things));
  }

  private static void unique(String what, String key, Set<String> seen) {
    if (!seen.add(key)) {
      throw new OutOfRange(what, "the " + what + " " + key + " stands twice", "rename one");
    }
  }

  private static void known(String what, String key, Set<String> names) {
    if (!names.contains(key)) {
      throw new OutOfRange(what, "there is no " + what + " " + key, "add it to the problem");
    }
  }

  /** Steps by key. */
  public Map<String, Step> stepsByKey() {
    Map<String, Step> byKey = new HashMap<>();
    steps.forEach(s -> byKey.put(s.key(), s));
    return byKey;
  }

  /** Resources by key. */
  public Map<String, Resource> resourcesByKey() {
    Map<String, Resource> byKey = new HashMap<>();
    resources.forEach(r -> byKey.put(r.key(), r));
    return byKey;
  }

  /** The people, in order. */
  public List<Resource> people() {
    return resources.stream().filter(r -> r.kind() == Resource.Kind.PERSON).toList();
  }

  /** When at least one person is there, merged over all people. */
  public List<Window> presence() {
    return Window.merged(people().stream().flatMap(p -> p.windows().stream()).toList());
  }

  /** The clock time of a minute. */
  public ZonedDateTime clock(int minute) {
    return origin.plus(Duration.ofMinutes(minute)).atZone(zone);
  }

  /** The first minute at or after an instant; negative before the origin. */
  public int minuteOf(Instant instant) {
    long seconds = Duration.between(origin, instant).getSeconds();
    return Math.toIntExact(Math.floorDiv(seconds + 59, 60));
  }
}
