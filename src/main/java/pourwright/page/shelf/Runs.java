package pourwright.page.shelf;

import java.util.ArrayList;
import java.util.Comparator;
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
import pourwright.work.KeptResults;

/**
 * Simulations in the background, one after the other; the same question is answered once, also
 * after the studio was closed and opened again.
 */
final class Runs {
  private static final int KEPT = 20;

  /** Part of every question: raised whenever the same question gets another answer. */
  private static final String MODEL = "model 2: ";

  private static final int BAND_SAMPLES = 24;

  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          task -> {
            Thread thread = new Thread(task, "simulation");
            thread.setDaemon(true);
            return thread;
          });
  private final Map<Long, Run> runs = new LinkedHashMap<>();
  private final KeptResults kept;
  private boolean known;
  private long last;

  Runs(KeptResults kept) {
    this.kept = kept;
  }

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
    private volatile String besideName = "";
    private volatile String besideTold = "";
    private volatile String besideWarm = "";

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

    /** A run that was finished before the studio was last opened. */
    private static Run of(RunFile file) {
      Run run = new Run(file.id(), file.question(), file.title());
      run.frames.addAll(file.frames());
      run.share = 1;
      run.band = file.band();
      run.besideName = file.besideName();
      run.besideTold = file.besideTold();
      run.besideWarm = file.besideWarm();
      run.result = file.result();
      return run;
    }

    /** The tested candle that it was held against, or an empty string. */
    String besideName() {
      return besideName;
    }

    /** What came of that. */
    String besideTold() {
      return besideTold;
    }

    /** Wall and underside in degrees with their bands, or why not; empty without a tested one. */
    String besideWarm() {
      return besideWarm;
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

    private void go(Burn burn, @Nullable Beside beside, KeptResults kept) {
      try {
        BurnResult plain = Simulation.run(burn, this::keep);
        if (!cancelled && plain.effort().axisymmetric()) {
          band = Band.of(burn, BAND_SAMPLES, id, () -> !cancelled);
        }
        if (!cancelled && beside != null) {
          besideTold = beside.told(plain);
          besideWarm = beside.warm(burn);
          besideName = beside.name();
        }
        if (!cancelled) {
          kept.keep(
              RunFile.name(question),
              new RunFile(
                      id,
                      question,
                      title,
                      frames(),
                      plain,
                      band,
                      besideName,
                      besideTold,
                      besideWarm)
                  .bytes());
        }
        result = plain;
      } catch (RuntimeException e) {
        trouble = "it could not be computed: " + e.getMessage();
      }
    }
  }

  /** Starts a run, or finds the one that answers the same question. */
  synchronized Run start(SimulationForm.Question asked, @Nullable Beside beside) {
    remember();
    String question =
        MODEL
            + asked.key()
            + (beside == null
                ? ""
                : beside.name()
                    + beside.burn().wicks()
                    + beside.burn().vessel().stuff()
                    + RunFile.name(beside.tests().toString()));
    String title = asked.title();
    Burn burn = asked.burn();
    for (Run run : runs.values()) {
      if (run.question.equals(question) && !run.isCancelled() && run.trouble().isEmpty()) {
        return run;
      }
    }
    Optional<Run> before =
        kept.read(RunFile.name(question))
            .flatMap(RunFile::of)
            .filter(f -> f.question().equals(question))
            .map(Run::of);
    if (before.isPresent()) {
      return put(before.get());
    }
    Run run = put(new Run(++last, question, title));
    worker.execute(() -> run.go(burn, beside, kept));
    return run;
  }

  private Run put(Run run) {
    runs.put(run.id, run);
    if (runs.size() > KEPT) {
      Long oldest = runs.keySet().iterator().next();
      Run gone = runs.remove(oldest);
      if (gone != null) {
        gone.cancel();
      }
    }
    return run;
  }

  /** Looks once for what was computed before the studio was last opened. */
  private void remember() {
    if (known) {
      return;
    }
    known = true;
    List<Run> before = new ArrayList<>();
    for (String name : kept.newestFirst()) {
      if (before.size() < KEPT) {
        kept.read(name).flatMap(RunFile::of).map(Run::of).ifPresent(before::add);
      }
    }
    before.sort(Comparator.comparingLong((Run r) -> r.id));
    for (Run run : before) {
      put(run);
      last = Math.max(last, run.id);
    }
  }

  synchronized Optional<Run> run(long id) {
    remember();
    return Optional.ofNullable(runs.get(id));
  }

  synchronized List<Run> newestFirst() {
    remember();
    List<Run> all = new ArrayList<>(runs.values());
    java.util.Collections.reverse(all);
    return all;
  }
}
