package pourwright.plan;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/** Small studios with casts, coats and pours, made from a seed. */
final class RandomStudios {
  static final Instant MONDAY = Instant.parse("2026-03-16T08:00:00Z");
  static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
  static final int HORIZON = 90 * 1440;

  private final Random random;
  private final List<Step> steps = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final List<Span> spans = new ArrayList<>();
  private final List<Goal> goals = new ArrayList<>();

  private RandomStudios(long seed) {
    this.random = new Random(seed);
  }

  static PlanProblem problem(long seed) {
    return new RandomStudios(seed).make();
  }

  private int between(int low, int high) {
    return low + random.nextInt(high - low + 1);
  }

  private PlanProblem make() {
    List<Resource> resources = new ArrayList<>();
    WorkHours hours = WorkHours.house();
    int people = between(1, 2);
    for (int i = 1; i <= people; i++) {
      resources.add(
          Resource.person("hands:" + i, "Person " + i, hours.windows(MONDAY, ZONE, HORIZON)));
    }
    int molds = between(1, 3);
    for (int i = 1; i <= molds; i++) {
      resources.add(Resource.always("mold:" + i, "Mold " + i, Resource.Kind.MOLD, between(1, 4)));
    }
    resources.add(Resource.always("melter", "Melter", Resource.Kind.EQUIPMENT, 1));
    resources.add(Resource.always("rack", "Rack", Resource.Kind.PLACE, between(2, 6)));
    int batches = between(2, 7);
    for (int i = 1; i <= batches; i++) {
      cast("C" + i, "mold:" + between(1, molds));
      pour("P" + i, "C" + i, "scent" + between(1, 3));
      int due = between(20, 60) * 1440;
      goals.add(new Goal("order " + i, "Order " + i, "P" + i + "/rest", due, between(1, 3)));
    }
    return new PlanProblem(
        MONDAY,
        ZONE,
        HORIZON,
        resources,
        steps,
        links,
        spans,
        goals,
        List.of(
            new Apart("solvent", "flame", "a solvent coat near a warm melter"),
            new Apart("dust", "open-wax", "dust in open wax")),
        List.of(new Washing("melter", 20)),
        PlanProblem.LAST_HOT_START_MIN);
  }

  private void cast(String c, String mold) {
    steps.add(Step.hands(c, "cast", "Cast " + c, between(15, 40)).marked(Set.of("dust"), null));
    steps.add(Step.wait(c, "set", "Set " + c, between(60, 300)));
    steps.add(Step.hands(c, "demold", "Demold " + c, between(10, 30)));
    steps.add(Step.wait(c, "harden", "Harden " + c, between(240, 4000)));
    steps.add(Step.hands(c, "sand", "Sand " + c, between(10, 60)));
    steps.add(Step.wait(c, "dry", "Dry " + c, between(1440, 5000)));
    steps.add(Step.hands(c, "seal", "Seal " + c, 20).marked(Set.of("solvent"), null));
    steps.add(Step.hands(c, "coat", "Second coat " + c, 20).marked(Set.of("solvent"), null));
    steps.add(Step.wait(c, "full", "Full-dry " + c, between(1440, 9000)));
    links.add(new Link(c + "/cast", c + "/set", 0, 0, "it sets at once"));
    links.add(new Link(c + "/set", c + "/demold", 0, 1440 * 4, "demold before it sticks"));
    links.add(new Link(c + "/demold", c + "/harden", 0, 0, "kept damp at once"));
    links.add(new Link(c + "/harden", c + "/sand", 0, null, "sand after hardening"));
    links.add(new Link(c + "/sand", c + "/dry", 0, null, "dry after sanding"));
    links.add(new Link(c + "/dry", c + "/seal", 0, null, "seal when dry"));
    links.add(new Link(c + "/seal", c + "/coat", 120, 1440, "second coat within a day"));
    links.add(new Link(c + "/coat", c + "/full", 0, 0, "full-dry"));
    spans.add(new Span(mold, 1, c + "/cast", c + "/demold"));
    spans.add(new Span("rack", 1, c + "/harden", c + "/dry"));
  }

  private void pour(String p, String c, String scent) {
    steps.add(Step.hands(p, "wick", "Wick " + p, between(5, 30)));
    steps.add(
        Step.watch(p, "melt", "Melt " + p, between(40, 90))
            .using(Map.of("melter", 1))
            .marked(Set.of("flame"), scent));
    steps.add(
        Step.hands(p, "pour", "Pour " + p, between(10, 30))
            .madeHot()
            .marked(Set.of("open-wax"), null));
    steps.add(Step.wait(p, "rest", "Rest " + p, between(3, 14) * 1440));
    links.add(new Link(c + "/full", p + "/wick", 0, null, "wick when full-dry"));
    links.add(new Link(p + "/wick", p + "/melt", 0, null, "melt after wicking"));
    links.add(new Link(p + "/melt", p + "/pour", 0, 10, "pour before it cools"));
    links.add(new Link(p + "/pour", p + "/rest", 0, 0, "rest"));
  }
}
