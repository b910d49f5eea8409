package pourwright.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pourwright.card.CardBook;
import pourwright.card.Mold;
import pourwright.order.OrderLine;

/**
 * From casts and pours to steps with hands, waits and things. A cast: mix and fill · set · demold ·
 * harden damp · sand · dry · coats · full-dry · fill with water · stand · empty · dry again. A
 * pour: wick · melt · pour · set · trim · rest · box. Steps and waits: docs/models/plan.md.
 */
public final class Routing {
  static final String MELTER = "melter";
  static final String RACK = "rack";

  private final MakePlan make;
  private final CardBook book;
  private final Habits habits;
  private final Floor floor;
  private final List<Step> steps = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final List<Span> spans = new ArrayList<>();
  private final Map<String, String> lastOfCast = new HashMap<>();
  private final Map<String, String> lastOfPour = new HashMap<>();
  private int burners;

  private Routing(MakePlan make, CardBook book, Habits habits, Floor floor) {
    this.make = make;
    this.book = book;
    this.habits = habits;
    this.floor = floor;
  }

  /** Lays out the problem; one goal for each order line that waits for a pour. */
  public static PlanProblem of(MakePlan make, CardBook book, Habits habits, Floor floor) {
    return of(make, List.of(), book, habits, floor);
  }

  /** The same with burn tests to go on with; what is promised comes before them. */
  public static PlanProblem of(
      MakePlan make, List<NextBurn> burns, CardBook book, Habits habits, Floor floor) {
    Routing routing = new Routing(make, book, habits, floor);
    routing.burners = burns.isEmpty() ? 0 : NextBurn.LIT_MOST;
    make.running().forEach(r -> routing.add(r));
    routing.addPoured();
    make.casts().forEach(c -> routing.add(new CastRoute(c, book, habits).lay()));
    make.pours().forEach(p -> routing.add(new PourRoute(p, book, habits).lay()));
    make.classes().forEach(routing::add);
    burns.forEach(routing::add);
    return routing.problem();
  }

  /** The rest of a cast under way; a pour that uses it waits for its last step. */
  private void add(RunningCast cast) {
    Route left = cast.left(book, habits, presence());
    if (!left.steps().isEmpty()) {
      add(left);
    }
  }

  /** The rest of each pour under way; the melter is taken by the first that is molten. */
  private void addPoured() {
    List<Window> opens = make.poured().isEmpty() ? List.of() : presence();
    boolean taken = false;
    boolean others = make.poured().stream().filter(RunningPour::isInHand).count() > 1;
    for (RunningPour pour : make.poured()) {
      add(pour.left(book, habits, opens, !(taken && pour.isMolten()), others));
      taken |= pour.isMolten();
    }
  }

  /** A class as it holds molds or melter; its hands are no hours of work. */
  private void add(ClassJob job) {
    SeatClass of = job.kit().of();
    int start = minute(of);
    ClassDay day = ClassDay.of(of, book, habits, floor);
    boolean cast = of.does() == SeatClass.Does.CAST;
    Map<String, Integer> held = cast ? ClassDay.held(of, book) : Map.of(MELTER, 1);
    String name = book.candle(of.design()).name();
    int end = start + of.minutes();
    if (end > 0 && end <= floor.horizonMin()) {
      Set<String> tags = cast ? Set.of("dust") : Set.of("flame", "open-wax");
      String words = "Class of " + of.seats() + ": " + name;
      steps.add(
          Step.wait(job.key(), "class", words, of.minutes())
              .using(held)
              .marked(tags, null)
              .fixedAt(start));
    }
    int empty = day.sets() ? end : Math.max(end, start + day.workMin() + day.setMin());
    if (cast && empty > end && empty > 0 && empty <= floor.horizonMin()) {
      steps.add(
          Step.wait(job.key(), "set", "Set in class molds: " + name, empty - end)
              .using(held)
              .fixedAt(end));
    }
  }

  private void add(NextBurn burn) {
    NextBurn.Way way = burn.way(presence());
    steps.addAll(way.steps());
    links.addAll(way.links());
  }

  private int minute(SeatClass of) {
    long seconds =
        java.time.Duration.between(
                floor.origin(), of.day().atTime(of.from()).atZone(floor.zone()).toInstant())
            .getSeconds();
    return Math.toIntExact(Math.floorDiv(seconds, 60));
  }

  private List<Window> presence() {
    return Window.merged(
        resources().stream()
            .filter(r -> r.kind() == Resource.Kind.PERSON)
            .flatMap(r -> r.windows().stream())
            .toList());
  }

  private void add(Route route) {
    steps.addAll(route.steps());
    links.addAll(route.links());
    spans.addAll(route.spans());
    String last = steps.get(steps.size() - 1).key();
    if (route.job() instanceof CastJob cast) {
      lastOfCast.put(cast.key(), last);
    } else if (route.job() instanceof PourJob pour) {
      lastOfPour.put(pour.key(), last);
      String first = route.steps().get(0).key();
      for (String cast : pour.after()) {
        String ready = lastOfCast.get(cast);
        if (ready != null) { // else a cast under way that is at the end of its way
          links.add(new Link(ready, first, 0, null, "a vessel is wicked when it is tight and dry"));
        }
      }
    }
  }

  private PlanProblem problem() {
    return new PlanProblem(
        floor.origin(),
        floor.zone(),
        floor.horizonMin(),
        resources(),
        steps,
        links,
        spans,
        goals(),
        List.of(
            new Apart("solvent", "flame", "a coat that gives off vapour near a warm melter"),
            new Apart("dust", "open-wax", "dust from dry powder near open wax"),
            new Apart("dust", "wet-coat", "dust from dry powder near a wet coat")),
        List.of(new Washing(MELTER, habits.waits().wash())),
        PlanProblem.LAST_HOT_START_MIN);
  }

  private List<Resource> resources() {
    List<Resource> all = new ArrayList<>();
    floor
        .hours()
        .forEach(
            (initials, hours) ->
                all.add(
                    Resource.person(
                        "hands:" + initials,
                        initials,
                        hours.windows(floor.origin(), floor.zone(), floor.horizonMin()))));
    for (Mold mold : book.all(Mold.class)) {
      if (mold.count() > 0) {
        all.add(
            Resource.always(
                "mold:" + mold.code(),
                mold.name(),
                Resource.Kind.MOLD,
                mold.count() * mold.piecesPerCast()));
      }
    }
    all.add(Resource.always(MELTER, "Melter", Resource.Kind.EQUIPMENT, floor.melters()));
    if (burners > 0) {
      all.add(Resource.always(NextBurn.BURNER, "Test places", Resource.Kind.EQUIPMENT, burners));
    }
    all.add(Resource.always(RACK, "Drying rack", Resource.Kind.PLACE, floor.racks()));
    return all;
  }

  private List<Goal> goals() {
    List<Goal> goals = new ArrayList<>();
    for (MakePlan.Served served : make.served()) {
      OrderLine line = served.line();
      for (String pour : served.pours()) {
        goals.add(
            new Goal(
                line.key().words() + " / " + pour,
                "Order " + line.order() + ": " + book.candle(line.design()).name(),
                lastOfPour.getOrDefault(pour, ""),
                dueMin(line.dueOn()),
                1));
      }
    }
    for (ClassJob job : make.classes()) {
      SeatClass of = job.kit().of();
      for (String cast : job.after()) {
        String ready = lastOfCast.get(cast);
        if (ready != null) {
          goals.add(
              new Goal(
                  of.order() + " / " + cast,
                  "Class " + of.order() + ": vessels of " + book.candle(of.design()).name(),
                  ready,
                  Math.max(-floor.horizonMin(), Math.min(floor.horizonMin(), minute(of))),
                  1));
        }
      }
    }
    return goals;
  }

  /** The end of the last day on which the parcel can go; the horizon where no day was promised. */
  private int dueMin(@org.jspecify.annotations.Nullable LocalDate dueOn) {
    if (dueOn == null) {
      return floor.horizonMin();
    }
    long seconds =
        java.time.Duration.between(
                floor.origin(),
                floor.post().onOrBefore(dueOn).plusDays(1).atStartOfDay(floor.zone()).toInstant())
            .getSeconds();
    return (int) Math.max(-floor.horizonMin(), Math.min(floor.horizonMin(), seconds / 60));
  }
}
