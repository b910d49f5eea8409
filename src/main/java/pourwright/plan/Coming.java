package pourwright.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Vessels of casts under way, given out one by one, those that are furthest first. */
final class Coming {
  private final List<RunningCast> running;
  private final int[] given;
  private final Set<RunningCast> used = new LinkedHashSet<>();

  Coming(List<RunningCast> running) {
    this.running = running;
    this.given = new int[running.size()];
  }

  /** Key of the cast that the next vessel of a kind comes from; null when there is none. */
  @Nullable String take(VesselKind kind) {
    for (int i = 0; i < given.length; i++) {
      RunningCast cast = running.get(i);
      if (cast.kind().equals(kind) && given[i] < cast.pieces()) {
        given[i]++;
        used.add(cast);
        return cast.key();
      }
    }
    return null;
  }

  /** Casts that gave a vessel, and those that hold a mold all the same. */
  List<RunningCast> used() {
    List<RunningCast> all = new ArrayList<>();
    for (RunningCast cast : running) {
      if (used.contains(cast) || cast.stage() == RunningCast.Stage.SETTING) {
        all.add(cast);
      }
    }
    return all;
  }
}
