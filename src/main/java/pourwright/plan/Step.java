package pourwright.plan;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

/**
 * One step of a cast or a pour: begun once, never interrupted.
 *
 * @param key unique, e.g. {@code C3/demold}
 * @param batch the cast or pour it belongs to, e.g. {@code C3}
 * @param words what is done, as it is printed, e.g. {@code Demold 4 Bollards}
 * @param kind hands, watch or wait
 * @param minutes how long it takes, 0 or more
 * @param people for HANDS: keys of the persons who may do it, any one of them; empty means anyone.
 *     For WATCH and WAIT always empty
 * @param uses how much of each thing it takes while it lasts, by resource key (no persons)
 * @param hot hot or lit: only while somebody is there, and not begun shortly before closing
 * @param tags what may not meet another tag, see {@link PlanProblem#apart()}
 * @param family colour or scent; between steps of two families on one thing it is washed, see
 *     {@link PlanProblem#washings()}
 * @param earliestMin not before this minute
 * @param fixedStartMin starts exactly here: below 0 already begun or done, a fact that no rule
 *     judges; from 0 on pinned by hand, and judged like any other
 */
public record Step(
    String key,
    String batch,
    String words,
    StepKind kind,
    int minutes,
    Set<String> people,
    Map<String, Integer> uses,
    boolean hot,
    Set<String> tags,
    @Nullable String family,
    int earliestMin,
    @Nullable Integer fixedStartMin) {

  /** Checks the duration. */
  public Step {
    Check.notNegative("minutes", minutes);
    if (kind != StepKind.HANDS && !people.isEmpty()) {
      throw new OutOfRange("people", words + " needs no hands but names people", "leave them out");
    }
    people = Set.copyOf(people);
    uses = Map.copyOf(uses);
    tags = Set.copyOf(tags);
  }

  /** True when it was begun before the origin. */
  public boolean begun() {
    return fixedStartMin != null && fixedStartMin < 0;
  }

  /** A step that anyone's hands do, at any time. */
  public static Step hands(String batch, String name, String words, int minutes) {
    return plain(batch, name, words, StepKind.HANDS, minutes);
  }

  /** A step that somebody must be there for, hot or lit. */
  public static Step watch(String batch, String name, String words, int minutes) {
    return plain(batch, name, words, StepKind.WATCH, minutes).madeHot();
  }

  /** A step that goes on by itself. */
  public static Step wait(String batch, String name, String words, int minutes) {
    return plain(batch, name, words, StepKind.WAIT, minutes);
  }

  private static Step plain(String batch, String name, String words, StepKind kind, int minutes) {
    return new Step(
        batch + "/" + name,
        batch,
        words,
        kind,
        minutes,
        Set.of(),
        Map.of(),
        false,
        Set.of(),
        null,
        0,
        null);
  }

  /** The same step, hot or lit. */
  public Step madeHot() {
    return new Step(
        key,
        batch,
        words,
        kind,
        minutes,
        people,
        uses,
        true,
        tags,
        family,
        earliestMin,
        fixedStartMin);
  }

  /** The same step using things while it lasts. */
  public Step using(Map<String, Integer> things) {
    return new Step(
        key,
        batch,
        words,
        kind,
        minutes,
        people,
        things,
        hot,
        tags,
        family,
        earliestMin,
        fixedStartMin);
  }

  /** The same step with tags and a family. */
  public Step marked(Set<String> newTags, @Nullable String newFamily) {
    return new Step(
        key,
        batch,
        words,
        kind,
        minutes,
        people,
        uses,
        hot,
        newTags,
        newFamily,
        earliestMin,
        fixedStartMin);
  }

  /** The same step for certain people only. */
  public Step by(Set<String> whom) {
    return new Step(
        key,
        batch,
        words,
        kind,
        minutes,
        whom,
        uses,
        hot,
        tags,
        family,
        earliestMin,
        fixedStartMin);
  }

  /** The same step, not before a minute. */
  public Step notBefore(int minute) {
    return new Step(
        key, batch, words, kind, minutes, people, uses, hot, tags, family, minute, fixedStartMin);
  }

  /** The same step, begun exactly at a minute. */
  public Step fixedAt(@Nullable Integer minute) {
    return new Step(
        key, batch, words, kind, minutes, people, uses, hot, tags, family, earliestMin, minute);
  }
}
