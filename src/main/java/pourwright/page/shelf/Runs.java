package pourwright.page.shelf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import pourwright.burn.Band;
import pourwright.burn.Burn;
import pourwright.burn.BurnResult;
import pourwright.burn.Frame;
import pourwright.burn.Simulation;

/** Simulations in the background, one after the other; the same question is answered once. */
final class Runs {
  private static final int KEPT = 20;
  private static final int BAND_SAMPLES = 24;

  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          task -> {
            Thread thread = new Thread(task, "simulation");
            thread.setDaemon(true);
            return thread;
          });
  private final Map<Long, Run> runs = new LinkedHashMap<>();
  private long last;

  /** One simulation: what was asked, how far it is, what it came to. */
  static final class Run {
    final long id;
    final String question;
    final String title;
    private final List<Frame> frames = new ArrayList<>();
    private volatile double share;
    private volatile boolean cancelled;
    private volatile @Nullable BurnResult result;
    private volatile @Nullable Band band;
    private volatile String trouble = "";

    Run(long id, String question, String title) {
      this.id = id;
      this.question = question;
      this.title = title;
    }

    double share() {
      return share;
    }

    boolean isCancelled() {
      return cancelled;
    }

    void cancel() {
      cancelled = true;
    }

    String trouble() {
      return trouble;
    }

    Optional<BurnResult> result() {
      return Optional.ofNullable(result);
    }

    /** The band round it, of round vessels with one wick, where a run takes a moment. */
    Optional<Band> band() {
      return Optional.ofNullable(band);
    }

    boolean isRunning() {
      return result == null && trouble.isEmpty();
    }

    List<Frame> frames() {
      synchronized (frames) {
        return List.copyOf(frames);
      }
    }

    private boolean keep(double done, Frame frame) {
      synchronized (frames) {
        frames.add(frame);
      }
      share = done;
      return !cancelled;
    }

    private void go(Burn burn) {
      try {
        BurnResult plain = Simulation.run(burn, this::keep);
        if (!cancelled && plain.effort().axisymmetric()) {
          band = Band.of(burn, BAND_SAMPLES, id, () -> !cancelled);
        }
        result = plain;
      } catch (RuntimeException e) {
        trouble = "it could not be computed: " + e.getMessage();
      }
    }
  }

  /** Starts a run, or finds the one that answers the same question. */
  synchronized Run start(String question, String title, Burn burn) {
    for (Run run : runs.values()) {
      if (run.question.equals(question) && !run.isCancelled() && run.trouble().isEmpty()) {
        return run;
      }
    }
    Run run = new Run(++last, question, title);
    runs.put(run.id, run);
    if (runs.size() > KEPT) {
      Long oldest = runs.keySet().iterator().next();
      Run gone = runs.remove(oldest);
      if (gone != null) {
        gone.cancel();
      }
    }
    worker.execute(() -> run.go(burn));
    return run;
  }

  synchronized Optional<Run> run(long id) {
    return Optional.ofNullable(runs.get(id));
  }

  synchronized List<Run> newestFirst() {
    List<Run> all = new ArrayList<>(runs.values());
    java.util.Collections.reverse(all);
    return all;
  }
}
