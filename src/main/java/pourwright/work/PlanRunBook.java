package pourwright.work;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Runs of the planner. */
public interface PlanRunBook {

  /** The newest run. */
  Optional<PlanRun> newest();

  /** Runs newest first. */
  PageOf<PlanRun> list(@Nullable String after, int limit);

  /** A run by number. */
  Optional<PlanRun> run(long id);

  /** The run that a deed wrote. */
  Optional<PlanRun> ofDeed(long deed);

  /** Adds a run and gives it back with its number. Only inside a write. */
  PlanRun append(PlanRun run, Deed deed);
}
