package pourwright.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import pourwright.batch.BatchKind;
import pourwright.batch.BatchPlan;
import pourwright.batch.PlannedAmount;
import pourwright.batch.PlannedStep;
import pourwright.stock.Amount;
import pourwright.work.Act;
import pourwright.work.Studio;

/** A studio for tests: a store, a clock that can be moved, and short words for what is done. */
final class Bench implements AutoCloseable {
  final Store store;
  final Studio studio;
  final Hands clock = new Hands();

  /** A clock that only moves when told. */
  static final class Hands extends Clock {
    private Instant now = Instant.parse("2026-03-02T08:00:00Z");

    void move(java.time.Duration by) {
      now = now.plus(by);
    }

    @Override
    public java.time.ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(java.time.ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  Bench(Store store, Path files) {
    this.store = store;
    this.studio = new Studio(store.unitOfWork(), clock, new HashedFiles(files));
  }

  static Bench onSqlite() {
    StudioFolder folder = new StudioFolder(freshFolder());
    return new Bench(SqliteStore.open(folder), folder.attachments());
  }

  static Path freshFolder() {
    try {
      Path folder = Files.createTempDirectory("studio");
      folder.toFile().deleteOnExit();
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Act act() {
    return Act.of("mk", UUID.randomUUID().toString());
  }

  long lot(String material, String code, double grams) {
    return studio
        .receiveLot
        .run(act(), pourwright.work.ReceiveLot.Request.of(material, code, Amount.ofGrams(grams)))
        .made()
        .lot()
        .id();
  }

  double onHand(long lot) {
    return studio.look(b -> b.lots().shelf(lot).orElseThrow().onHand().inUsualUnit());
  }

  static BatchPlan castPlan(String design, int count) {
    return new BatchPlan(
        BatchKind.CAST,
        "rapid-grey",
        1,
        List.of(new BatchPlan.Makes(design, 1, count, "m1")),
        List.of(
            PlannedStep.weigh(
                "powder",
                "Weigh the powder",
                List.of(new PlannedAmount("grey-powder", Amount.ofGrams(900)))),
            PlannedStep.waiting("set", "Leave it to set", 40)),
        null);
  }

  static BatchPlan pourPlan(String candle, int count) {
    return new BatchPlan(
        BatchKind.POUR,
        "soft-a",
        1,
        List.of(new BatchPlan.Makes(candle, 1, count, null)),
        List.of(PlannedStep.hands("pour", "Pour to the line", 3)),
        null);
  }

  @Override
  public void close() {
    store.close();
  }
}
