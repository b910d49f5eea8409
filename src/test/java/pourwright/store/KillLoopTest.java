package pourwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A studio that is killed at a random moment, again and again: what it said was saved is there, and
 * nothing is there by half. The store alone, without pages: {@link ServerKillLoopTest} kills the
 * whole program. {@code dev/killloop 200 store} runs it for long.
 */
class KillLoopTest {
  @TempDir Path corner;

  @Test
  void whatWasAcknowledgedIsThereAfterEveryKill() throws Exception {
    int rounds = Integer.getInteger("kill.store.rounds", 3);
    long seed = Long.getLong("kill.seed", System.nanoTime());
    Random random = new Random(seed);
    StudioFolder folder = new StudioFolder(corner.resolve("studio"));
    Path acks = corner.resolve("acks");
    Files.createFile(acks);
    Set<String> acknowledged = new HashSet<>();
    for (int round = 1; round <= rounds; round++) {
      long before = Files.size(acks);
      runAndKill(folder, acks, before, random);
      acknowledged.addAll(lines(acks));
      try (SqliteStore store = SqliteStore.open(folder)) {
        assertThat(store.unsound()).as("round %d, seed %d", round, seed).isEmpty();
        Set<String> there = new HashSet<>(keys(store));
        assertThat(there).as("round %d, seed %d", round, seed).containsAll(acknowledged);
        assertThat(halves(store)).as("round %d, seed %d", round, seed).isEmpty();
      }
    }
    try (SqliteStore store = SqliteStore.open(folder)) {
      assertThat(store.keptRowsWrong()).isZero();
    }
    System.err.println(
        "kill loop: " + rounds + " kills, " + acknowledged.size() + " acknowledged, 0 missing");
  }

  private static List<String> lines(Path acks) throws IOException {
    String text = Files.readString(acks);
    return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
  }

  private static void runAndKill(StudioFolder folder, Path acks, long before, Random random)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xshare:auto",
                "-cp",
                System.getProperty("java.class.path"),
                WriterHarness.class.getName(),
                folder.root().toString(),
                acks.toString(),
                "FULL",
                "4",
                "0")
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    Instant patience = Instant.now().plus(Duration.ofSeconds(60));
    while (Files.size(acks) == before && process.isAlive() && Instant.now().isBefore(patience)) {
      Thread.sleep(10);
    }
    assertThat(process.isAlive()).as("the writer runs until it is killed").isTrue();
    Thread.sleep(20 + random.nextInt(1200));
    process.destroyForcibly();
    assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as("killed, not failed").isEqualTo(137);
  }

  private static List<String> keys(SqliteStore store) {
    return store.look(
        h -> h.createQuery("SELECT request_key FROM deed").mapTo(String.class).list());
  }

  /** Deeds of which only a part is there. */
  private static List<String> halves(SqliteStore store) {
    return store.look(
        h ->
            h.createQuery(
                    """
                    SELECT d.verb || ' ' || d.id FROM deed d
                    WHERE (d.verb = 'recorded a step' AND (
                        (SELECT COUNT(*) FROM batch_step s WHERE s.deed_id = d.id) <> 1
                        OR (SELECT COUNT(*) FROM movement m WHERE m.deed_id = d.id) <> 2
                        OR (SELECT COUNT(*) FROM batch_step_amount a
                          JOIN batch_step s ON s.id = a.step_id WHERE s.deed_id = d.id) <> 2))
                      OR (d.verb = 'undid' AND
                        (SELECT COUNT(*) FROM movement m WHERE m.deed_id = d.id) <> 2)
                      OR (d.verb IN ('received a lot', 'wrote off') AND
                        (SELECT COUNT(*) FROM movement m WHERE m.deed_id = d.id) <> 1)
                      OR (d.verb = 'finished a cast' AND (
                        (SELECT COUNT(*) FROM piece p WHERE p.deed_id = d.id) <> 3
                        OR (SELECT COUNT(*) FROM piece_event e WHERE e.deed_id = d.id) <> 3
                        OR (SELECT COUNT(*) FROM mark m WHERE m.deed_id = d.id) <> 3
                        OR (SELECT COUNT(*) FROM tray t WHERE t.deed_id = d.id) <> 1))
                    """)
                .mapTo(String.class)
                .list());
  }
}
