package pourwright.solve;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import pourwright.plan.Apart;
import pourwright.plan.Goal;
import pourwright.plan.Link;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Resource.Kind;
import pourwright.plan.Span;
import pourwright.plan.Step;
import pourwright.plan.Washing;
import pourwright.plan.Window;

/** Invented studios: the same seed gives the same studio. Lengths of time are house values. */
final class Studios {
  static final int DAY = 1440;
  private static final ZoneId ZONE = ZoneId.of("Europe/Rome");

  private final Random random;
  private final int days;
  private final ZonedDateTime origin;
  private final List<Resource> resources = new ArrayList<>();
  private final List<Step> steps = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final List<Span> spans = new ArrayList<>();
  private final List<Goal> goals = new ArrayList<>();

  private Studios(long seed, int days) {
    this.random = new Random(seed);
    this.days = days;
    this.origin = LocalDate.of(2026, 1, 5).plusDays(random.nextInt(300)).atStartOfDay(ZONE);
  }

  /** A studio with so many lines to make, in so many kinds of molds, with one or two people. */
  static PlanProblem studio(long seed, int lines, int moldKinds, int people) {
    Studios studio = new Studios(seed, 75);
    studio.people(people);
    for (int m = 0; m < moldKinds; m++) {
      studio.thing("mold:" + m, Kind.MOLD, 1 + studio.random.nextInt(2));
    }
    studio.thing("melter", Kind.EQUIPMENT, 1);
    studio.thing("drying", Kind.PLACE, 3 + lines / 4);
    for (int line = 0; line < lines; line++) {
      studio.line(line, "mold:" + studio.random.nextInt(moldKinds));
    }
    return studio.problem();
  }

  private void people(int count) {
    for (int p = 0; p < count; p++) {
      List<Window> hours = new ArrayList<>();
      int opens = 8 + random.nextInt(3);
      for (int d = 0; d < days; d++) {
        ZonedDateTime day = origin.plusDays(d);
        if (day.getDayOfWeek().getValue() <= 5 && random.nextInt(12) > 0) {
          hours.add(window(day, opens, opens + 4));
          hours.add(window(day, opens + 5, opens + 8));
        }
      }
      resources.add(Resource.person("hands:" + p, "Hands " + p, hours));
    }
  }

  private Window window(ZonedDateTime day, int fromHour, int toHour) {
    return new Window(minute(day.withHour(fromHour)), minute(day.withHour(toHour)));
  }

  private int minute(ZonedDateTime at) {
    return (int) ((at.toEpochSecond() - origin.toEpochSecond()) / 60);
  }

  private void thing(String key, Kind kind, int count) {
    resources.add(Resource.always(key, key, kind, count));
  }

  private void line(int number, String mold) {
    String cast = "C" + number;
    String scent = "scent " + random.nextInt(4);
    int pieces = 1 + random.nextInt(4);
    Step mix = add(Step.hands(cast, "mix", "Mix and fill " + cast, 15 + 4 * pieces));
    Step set = add(Step.wait(cast, "set", "Set " + cast, 60 + random.nextInt(120)));
    Step demold = add(Step.hands(cast, "demold", "Demold " + cast, 5 + 3 * pieces));
    Step harden = add(Step.wait(cast, "harden", "Harden " + cast, DAY));
    Step sand =
        add(Step.hands(cast, "sand", "Sand " + cast, 8 * pieces).marked(Set.of("dust"), null));
    Step dry = add(Step.wait(cast, "dry", "Dry " + cast, (2 + random.nextInt(3)) * DAY));
    Step seal =
        add(Step.hands(cast, "seal", "Seal " + cast, 6 * pieces).marked(Set.of("solvent"), null));
    Step full = add(Step.wait(cast, "full-dry", "Full-dry " + cast, 3 * DAY));
    after(mix, set, 0, 0, "the set begins when the mold is full");
    after(set, demold, 0, 20 * 60, "demold while it lets go");
    after(demold, harden, 0, 0, "hardening begins at the demold");
    after(harden, sand, 0, null, "sand when it is hard");
    after(sand, dry, 0, 0, "drying begins after the sanding");
    after(dry, seal, 0, null, "seal when it is dry");
    after(seal, full, 0, 0, "the sealer dries");
    spans.add(new Span(mold, 1, mix.key(), demold.key()));
    spans.add(new Span("drying", 1, demold.key(), seal.key()));
    pour("P" + number, scent, pieces, full);
  }

  private void pour(String pour, String scent, int pieces, Step full) {
    Step wick = add(Step.hands(pour, "wick", "Wick " + pour, 5 * pieces));
    Step melt =
        add(
            Step.watch(pour, "melt", "Melt " + pour, 40)
                .using(Map.of("melter", 1))
                .marked(Set.of("hot"), scent));
    Step fill =
        add(
            Step.hands(pour, "pour", "Pour " + pour, 5 + 3 * pieces)
                .madeHot()
                .using(Map.of("melter", 1))
                .marked(Set.of("hot"), scent));
    Step cool = add(Step.wait(pour, "cool", "Cool " + pour, 4 * 60));
    Step trim = add(Step.hands(pour, "trim", "Trim " + pour, 2 * pieces));
    Step rest = add(Step.wait(pour, "rest", "Rest " + pour, (5 + random.nextInt(10)) * DAY));
    Step pack = add(Step.hands(pour, "pack", "Pack " + pour, 4 * pieces));
    after(full, wick, 0, null, "wick a vessel that is full-dry");
    after(wick, melt, 0, null, "melt when the vessels stand ready");
    after(melt, fill, 0, 15, "pour while the wax is in its window");
    after(fill, cool, 0, 0, "it cools from the pour");
    after(cool, trim, 0, null, "trim when it is cold");
    after(fill, rest, 0, 0, "rest counts from the pour");
    after(trim, pack, 0, null, "pack when it is trimmed");
    after(rest, pack, 0, null, "pack when it is rested");
    int due = (14 + random.nextInt(35)) * DAY + 17 * 60;
    goals.add(new Goal(pour, "order of " + pour, pack.key(), due, 1));
  }

  private Step add(Step step) {
    steps.add(step);
    return step;
  }

  private void after(
      Step before,
      Step after,
      int min,
      @org.jspecify.annotations.Nullable Integer max,
      String why) {
    links.add(new Link(before.key(), after.key(), min, max, why));
  }

  private PlanProblem problem() {
    return new PlanProblem(
        Instant.ofEpochSecond(origin.toEpochSecond()),
        ZONE,
        minute(origin.plusDays(days)),
        resources,
        steps,
        links,
        spans,
        goals,
        List.of(
            new Apart("solvent", "hot", "a solvent coat near melter or flame"),
            new Apart("dust", "solvent", "sanding near a wet coat"),
            new Apart("dust", "hot", "dry sanding near open wax")),
        List.of(new Washing("melter", 15)),
        PlanProblem.LAST_HOT_START_MIN);
  }
}
