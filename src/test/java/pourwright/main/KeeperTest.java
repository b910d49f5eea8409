package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.guard.SecretsFile;

/** A studio that is open has a backup of the last day, or says why not. */
class KeeperTest {
  private static final Instant MORNING = Instant.parse("2026-03-02T09:00:00Z");

  @TempDir private Path folder = Path.of("");

  /** A clock that is put forward by hand. */
  private static final class HandClock extends Clock {
    private Instant now = MORNING;

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  @Test
  void aBackupIsMadeOnceADayAndTheSettingsPageSaysWhen() {
    HandClock clock = new HandClock();
    try (Wiring wiring = Wiring.open(folder, "", clock);
        Keeper keeper = new Keeper(wiring, false)) {
      assertThat(String.join(" ", keeper.state())).contains("There is none yet.");
      keeper.look();
      keeper.look();
      assertThat(wiring.backups().all()).hasSize(1);
      assertThat(String.join(" ", keeper.state())).contains("auto-2026-03-02T09-00-00.zip");
      clock.now = MORNING.plus(Duration.ofHours(23));
      keeper.look();
      assertThat(wiring.backups().all()).hasSize(1);
      clock.now = MORNING.plus(Duration.ofHours(25));
      keeper.look();
      assertThat(wiring.backups().all()).hasSize(2);
    }
  }

  @Test
  void aBackupThatDoesNotSucceedIsToldAndTheNextThatDoesTakesItBack() throws Exception {
    HandClock clock = new HandClock();
    try (Wiring wiring = Wiring.open(folder, "", clock);
        Keeper keeper = new Keeper(wiring, false)) {
      Path backups = folder.resolve("backups");
      Files.delete(backups);
      Files.writeString(backups, "in the way");
      keeper.look();
      assertThat(String.join(" ", keeper.state())).contains("did not succeed");
      Files.delete(backups);
      keeper.look();
      assertThat(String.join(" ", keeper.state())).doesNotContain("did not succeed");
      assertThat(wiring.backups().newest()).isPresent();
    }
  }

  @Test
  void theSettingsPageShowsHowItStands() throws Exception {
    try (Wiring wiring = Wiring.open(folder, "", new HandClock());
        Keeper keeper = new Keeper(wiring, false);
        Server server =
            new Server(
                wiring.site(null).keeping(keeper::state),
                ServerSettings.onAnyPort("a studio"),
                new SecretsFile(folder))) {
      keeper.look();
      URI page = URI.create("http://127.0.0.1:" + server.start() + "/settings");
      String shown =
          HttpClient.newHttpClient()
              .send(HttpRequest.newBuilder(page).build(), HttpResponse.BodyHandlers.ofString())
              .body();
      assertThat(shown).contains("Backups", "auto-2026-03-02T09-00-00.zip");
    }
  }
}
