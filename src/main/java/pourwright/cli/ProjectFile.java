package pourwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import pourwright.plan.Goal;
import pourwright.plan.Link;
import pourwright.plan.PlanProblem;
import pourwright.plan.Resource;
import pourwright.plan.Step;
import pourwright.plan.StepKind;

/**
 * Reads a published project scheduling instance as a plan problem: PSPLIB {@code .sm} (R. Kolisch,
 * A. Sprecher, European Journal of Operational Research 96, 1997, 205-216) and ProGen/max {@code
 * .sch} with minimum and maximum lags (C. Schwindt). Activities become waits that use things; one
 * unit of time is one minute; the end of the last activity is due at minute 0, so that weighted
 * tardiness is the makespan.
 */
final class ProjectFile {
  private final String name;
  private final List<int[]> lines;

  private ProjectFile(String name, List<int[]> lines) {
    this.name = name;
    this.lines = lines;
  }

  /** Reads by the file's ending. */
  static PlanProblem read(Path file) throws IOException {
    String name = String.valueOf(file.getFileName());
    List<String> text = Files.readAllLines(file, StandardCharsets.ISO_8859_1);
    return name.toLowerCase(Locale.ROOT).endsWith(".sm")
        ? new ProjectFile(name, numbers(text)).basic()
        : new ProjectFile(name, numbers(text)).withLags();
  }

  /** The whole numbers of each line that starts with one. */
  private static List<int[]> numbers(List<String> text) {
    List<int[]> lines = new ArrayList<>();
    for (String line : text) {
      String plain = line.replace('[', ' ').replace(']', ' ').strip();
      if (plain.matches("-?\\d+(\\s+-?\\d+)*")) {
        lines.add(Arrays.stream(plain.split("\\s+", -1)).mapToInt(Integer::parseInt).toArray());
      }
    }
    return lines;
  }

  /**
   * {@code .sm}: a line of the project's data; for each job its number, modes, successors; for each
   * job number, mode, duration, demands; capacities.
   */
  private PlanProblem basic() {
    int jobs = (lines.size() - 2) / 2;
    List<int[]> order = lines.subList(1, 1 + jobs);
    List<int[]> work = lines.subList(1 + jobs, 1 + 2 * jobs);
    int[] capacities = lines.get(1 + 2 * jobs);
    List<Link> links = new ArrayList<>();
    for (int[] job : order) {
      for (int s = 0; s < job[2]; s++) {
        links.add(new Link(key(job[0]), key(job[3 + s]), 0, null, "order of jobs"));
      }
    }
    int horizon = work.stream().mapToInt(w -> w[2]).sum();
    return problem(work, capacities, links, horizon);
  }

  /**
   * {@code .sch}: activities and kinds of resources; for each activity with its source and sink
   * number, modes, successors and their lags from start to start; durations and demands;
   * capacities.
   */
  private PlanProblem withLags() {
    int all = lines.get(0)[0] + 2;
    List<int[]> order = lines.subList(1, 1 + all);
    List<int[]> work = lines.subList(1 + all, 1 + 2 * all);
    int[] capacities = lines.get(1 + 2 * all);
    List<Link> links = new ArrayList<>();
    int horizon = 0;
    for (int[] activity : order) {
      int minutes = work.get(activity[0])[2];
      int longest = minutes;
      for (int s = 0; s < activity[2]; s++) {
        int lag = activity[3 + activity[2] + s];
        longest = Math.max(longest, lag);
        links.add(
            new Link(key(activity[0]), key(activity[3 + s]), lag - minutes, null, "time lag"));
      }
      horizon += longest;
    }
    return problem(work, capacities, links, horizon);
  }

  private PlanProblem problem(List<int[]> work, int[] capacities, List<Link> links, int horizon) {
    List<Resource> resources = new ArrayList<>();
    for (int r = 0; r < capacities.length; r++) {
      resources.add(
          Resource.always("R" + (r + 1), "R" + (r + 1), Resource.Kind.EQUIPMENT, capacities[r]));
    }
    List<Step> steps = new ArrayList<>();
    for (int[] activity : work) {
      Map<String, Integer> uses = new LinkedHashMap<>();
      for (int r = 0; r < capacities.length; r++) {
        if (activity[3 + r] > 0) {
          uses.put("R" + (r + 1), activity[3 + r]);
        }
      }
      steps.add(step(activity[0], activity[2], uses));
    }
    String last = steps.get(steps.size() - 1).key();
    return new PlanProblem(
        Instant.EPOCH,
        ZoneOffset.UTC,
        horizon,
        resources,
        steps,
        links,
        List.of(),
        List.of(new Goal(name, name, last, 0, 1)),
        List.of(),
        List.of(),
        0);
  }

  private static Step step(int number, int minutes, Map<String, Integer> uses) {
    return new Step(
        key(number),
        "project",
        key(number),
        StepKind.WAIT,
        minutes,
        Set.of(),
        uses,
        false,
        Set.of(),
        null,
        0,
        null);
  }

  private static String key(int number) {
    return "a" + number;
  }
}
