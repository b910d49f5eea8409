package pourwright.main;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import pourwright.page.Desk;
import pourwright.store.Backups;
import pourwright.store.SqliteStore;
import pourwright.store.StoreTrouble;

/**
 * Makes a backup of an open studio whenever the newest is a day old. It looks soon after the start
 * and then every few minutes, so that a machine that slept is not a day late.
 */
final class Keeper implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Keeper.class);
  private static final long FIRST_S = 10;
  private static final long LOOK_S = 600;
  private static final long STOP_S = 1;

  private final Wiring wiring;
  private final boolean sample;
  private final ScheduledExecutorService hands =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "backups");
            thread.setDaemon(true);
            return thread;
          });
  private volatile String trouble = "";

  /**
   * For an open studio.
   *
   * @param sample whether it is the sample studio, of which none are made
   */
  Keeper(Wiring wiring, boolean sample) {
    this.wiring = wiring;
    this.sample = sample;
  }

  /** Begins to look. */
  Keeper begin() {
    if (!sample && wiring.file().isPresent()) {
      wiring.studio().copyingBy(this::copy);
      hands.scheduleWithFixedDelay(this::look, FIRST_S, LOOK_S, TimeUnit.SECONDS);
    }
    return this;
  }

  /** Looks once, and makes a backup if one is due. What goes wrong is told on the settings page. */
  void look() {
    try {
      Optional<SqliteStore> file = wiring.file();
      Instant now = wiring.desk().now();
      if (file.isPresent() && wiring.backups().due(now)) {
        wiring.backups().make(file.get(), now, Commands.program());
      }
      trouble = "";
    } catch (StoreTrouble e) {
      trouble = e.sentence() + "; " + e.hint();
      LOG.warn("no backup was made: {}", trouble);
    } catch (RuntimeException e) {
      trouble = String.valueOf(e.getMessage());
      LOG.warn("no backup was made", e);
    }
  }

  /** Makes a backup now, however new the last one is. */
  private void copy() {
    wiring
        .file()
        .ifPresent(file -> wiring.backups().make(file, wiring.desk().now(), Commands.program()));
  }

  /** How it stands with the backups, in sentences for the settings page. */
  List<String> state() {
    if (wiring.file().isEmpty()) {
      return List.of("The books are on a PostgreSQL server: its own backups keep them.");
    }
    List<String> lines = new ArrayList<>();
    if (!trouble.isEmpty()) {
      lines.add("The last backup did not succeed: " + trouble + ".");
    }
    Desk desk = wiring.desk();
    Optional<Backups.Found> newest = wiring.backups().newest();
    lines.add(
        newest
            .map(n -> "The newest is of " + desk.dayAndTime(n.at()) + ": " + n.name() + ".")
            .orElse("There is none yet."));
    lines.add(
        sample
            ? "None are made of the sample studio."
            : "One is made when the newest is "
                + Backups.EVERY.toHours()
                + " hours old and the studio is open, and before orders are imported. The newest "
                + Backups.NEWEST_KEPT
                + ", the last of "
                + Backups.DAYS_KEPT
                + " days and of "
                + Backups.MONTHS_KEPT
                + " months are kept (house).");
    lines.add("They are in " + wiring.root().resolve("backups") + ": copy them elsewhere, too.");
    return lines;
  }

  @Override
  public void close() {
    hands.shutdownNow();
    try {
      if (!hands.awaitTermination(STOP_S, TimeUnit.SECONDS)) {
        LOG.info("stopped while a backup was being made; the next start makes it");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
