package pourwright.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The next cycle of each sample of a burn test: trimmed, weighed and lit by hand, then burning with
 * somebody in the room. What comes after it depends on what is seen, so no further cycle is
 * planned.
 *
 * @param key short name in the plan, such as {@code T5}; no other batch has it
 * @param candle what burns, as it is printed
 * @param samples those that are not at the end of their life, one at least
 */
public record NextBurn(String key, String candle, List<Sample> samples) {
  /** A cycle as the label says it, minutes. */
  public static final int CYCLE_MIN = 240;

  /** So many candles may be lit at once; house. */
  public static final int LIT_MOST = 6;

  static final String BURNER = "burner";

  /** Trim, weigh and light; common practice, no source. */
  private static final int LIGHT_MIN = 5;

  /** A trimmed and weighed candle is lit at once, minutes; house. */
  private static final int WAITS_MOST = 15;

  /**
   * One candle on the test.
   *
   * @param label as it stands on the shelf
   * @param readyMin from when it may be lit again, in minutes from the origin
   * @param litMin when it was lit, below 0, where it burns now; else null
   */
  public record Sample(String label, int readyMin, @Nullable Integer litMin) {
    private boolean isOver() {
      return litMin != null && litMin + CYCLE_MIN <= 0;
    }
  }

  /** Copies. */
  public NextBurn {
    samples = List.copyOf(samples);
  }

  /** Steps and links of a test. */
  record Way(List<Step> steps, List<Link> links) {}

  /**
   * Its way; nothing is lit where nobody is there for a whole cycle in one go.
   *
   * @param presence when somebody is there
   */
  Way way(List<Window> presence) {
    boolean watched = presence.stream().anyMatch(w -> w.toMin() - w.fromMin() >= CYCLE_MIN);
    List<Step> steps = new ArrayList<>();
    List<Link> links = new ArrayList<>();
    for (int i = 0; i < samples.size(); i++) {
      Sample sample = samples.get(i);
      String what = "sample " + sample.label() + " of " + candle;
      Step burn =
          Step.watch(key, "burn-" + (i + 1), "Burn test: " + what, CYCLE_MIN)
              .using(Map.of(BURNER, 1))
              .marked(Set.of("flame"), null);
      if (sample.litMin() != null) {
        if (!sample.isOver()) {
          steps.add(burn.fixedAt(Math.min(-1, sample.litMin())));
        }
      } else if (watched) {
        Step light =
            Step.hands(key, "light-" + (i + 1), "Trim, weigh and light " + what, LIGHT_MIN)
                .notBefore(Math.max(0, sample.readyMin()));
        steps.add(light);
        steps.add(burn);
        links.add(
            new Link(light.key(), burn.key(), 0, WAITS_MOST, "what is trimmed and weighed is lit"));
      }
    }
    return new Way(steps, links);
  }
}
