package pourwright.plan;

import java.util.List;

/**
 * A class in the plan.
 *
 * @param key short name in the plan, e.g. {@code K1}
 * @param kit what it needs
 * @param after keys of the casts that its vessels come from
 */
public record ClassJob(String key, ClassKit kit, List<String> after) {
  /** Copies. */
  public ClassJob {
    after = List.copyOf(after);
  }
}
