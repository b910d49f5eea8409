package pourwright.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import pourwright.plan.Link;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Step;
import pourwright.plan.Washing;
import pourwright.plan.Window;

/** A plan problem with some of its rules left out, and the rules that can be left out. */
final class Relaxed {
  /** What kind of thing a rule is about. */
  enum About {
    LINK,
    COUNT,
    HOURS,
    APART,
    WASHING,
    PINNED,
    EARLIEST,
    HOT
  }

  /** One rule: the kind of thing and its place in the problem's list. */
  record Rule(About about, int index) {}

  private final PlanProblem problem;

  Relaxed(PlanProblem problem) {
    this.problem = problem;
  }

  /** Every rule of the problem, those first that are most often the reason. */
  List<Rule> rules() {
    List<Rule> rules = new ArrayList<>();
    each(problem.steps().size(), About.PINNED, rules, i -> pinned(problem.steps().get(i)));
    each(problem.steps().size(), About.EARLIEST, rules, i -> isLate(problem.steps().get(i)));
    each(problem.resources().size(), About.HOURS, rules, i -> hasHours(problem.resources().get(i)));
    each(problem.resources().size(), About.COUNT, rules, i -> true);
    each(problem.links().size(), About.LINK, rules, i -> true);
    each(problem.apart().size(), About.APART, rules, i -> true);
    each(problem.washings().size(), About.WASHING, rules, i -> true);
    each(problem.lastHotStartMin() > 0 ? 1 : 0, About.HOT, rules, i -> true);
    return rules;
  }

  private static void each(
      int count, About about, List<Rule> rules, java.util.function.IntPredicate holds) {
    IntStream.range(0, count).filter(holds).forEach(i -> rules.add(new Rule(about, i)));
  }

  private static boolean pinned(Step step) {
    return step.fixedStartMin() != null && step.fixedStartMin() >= 0;
  }

  private static boolean isLate(Step step) {
    return step.earliestMin() > 0;
  }

  private static boolean hasHours(Resource resource) {
    return resource.kind() == Resource.Kind.PERSON || !resource.windows().isEmpty();
  }

  /** The problem with these rules alone; steps, their length and the horizon always stay. */
  PlanProblem with(List<Rule> kept) {
    Set<Rule> rules = new HashSet<>(kept);
    return new PlanProblem(
        problem.origin(),
        problem.zone(),
        problem.horizonMin(),
        resources(rules),
        steps(rules),
        keep(problem.links(), About.LINK, rules),
        problem.spans(),
        problem.goals(),
        keep(problem.apart(), About.APART, rules),
        keep(problem.washings(), About.WASHING, rules),
        rules.contains(new Rule(About.HOT, 0)) ? problem.lastHotStartMin() : 0);
  }

  private static <T> List<T> keep(List<T> all, About about, Set<Rule> rules) {
    return IntStream.range(0, all.size())
        .filter(i -> rules.contains(new Rule(about, i)))
        .mapToObj(all::get)
        .toList();
  }

  private List<Resource> resources(Set<Rule> rules) {
    List<Resource> resources = new ArrayList<>();
    int plenty = 1 + problem.steps().stream().mapToInt(Relaxed::most).sum();
    for (int i = 0; i < problem.resources().size(); i++) {
      Resource it = problem.resources().get(i);
      boolean person = it.kind() == Resource.Kind.PERSON;
      List<Window> always = person ? List.of(new Window(0, problem.horizonMin())) : List.of();
      resources.add(
          new Resource(
              it.key(),
              it.words(),
              it.kind(),
              rules.contains(new Rule(About.COUNT, i)) ? it.capacity() : plenty,
              rules.contains(new Rule(About.HOURS, i)) ? it.windows() : always));
    }
    return resources;
  }

  private static int most(Step step) {
    return 1 + step.uses().values().stream().mapToInt(Integer::intValue).sum();
  }

  private List<Step> steps(Set<Rule> rules) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < problem.steps().size(); i++) {
      Step step = problem.steps().get(i);
      if (pinned(step) && !rules.contains(new Rule(About.PINNED, i))) {
        step = step.fixedAt(null);
      }
      if (isLate(step) && !rules.contains(new Rule(About.EARLIEST, i))) {
        step = step.notBefore(0);
      }
      steps.add(step);
    }
    return steps;
  }

  /** The rule as a sentence of the workshop. */
  String sentence(Rule rule) {
    return switch (rule.about()) {
      case LINK -> link(problem.links().get(rule.index()));
      case COUNT -> count(problem.resources().get(rule.index()));
      case HOURS -> "hours of " + problem.resources().get(rule.index()).words();
      case APART -> "never at the same time: " + problem.apart().get(rule.index()).reason();
      case WASHING -> washing(problem.washings().get(rule.index()));
      case PINNED -> pinned(problem.steps().get(rule.index()), "is fixed at");
      case EARLIEST -> pinned(problem.steps().get(rule.index()), "cannot begin before");
      case HOT ->
          "nothing hot or lit is begun in the last " + problem.lastHotStartMin() + " minutes";
    };
  }

  private String link(Link link) {
    String order = words(link.before()) + ", then " + words(link.after());
    String most = link.maxMin() == null ? "" : ", at most " + time(link.maxMin()) + " later";
    String least = link.minMin() == 0 ? "" : ", at least " + time(link.minMin()) + " later";
    return order + least + most + " (" + link.reason() + ")";
  }

  private static String count(Resource resource) {
    return resource.kind() == Resource.Kind.PERSON
        ? resource.words() + " has one pair of hands"
        : resource.words() + ": there are " + resource.capacity();
  }

  private String washing(Washing washing) {
    Resource it = problem.resourcesByKey().get(washing.resource());
    String words = it == null ? washing.resource() : it.words();
    return words + " is washed for " + time(washing.minutes()) + " between colours or scents";
  }

  private String pinned(Step step, String what) {
    Integer fixed = step.fixedStartMin();
    int minute = what.startsWith("is") && fixed != null ? fixed : step.earliestMin();
    return step.words() + " " + what + " " + problem.clock(minute).toLocalDateTime();
  }

  private String words(String step) {
    @Nullable Step it = problem.stepsByKey().get(step);
    return it == null ? step : it.words();
  }

  private static String time(int minutes) {
    if (minutes % 1440 == 0) {
      return minutes / 1440 + " d";
    }
    return minutes % 60 == 0 ? minutes / 60 + " h" : minutes + " min";
  }
}
