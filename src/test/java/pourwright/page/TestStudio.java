package pourwright.page;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Set;
import pourwright.page.guard.Passphrase;
import pourwright.page.guard.SecretsFile;
import pourwright.page.plan.PromiseDesk;
import pourwright.solve.CpSatPromising;
import pourwright.store.HashedFiles;
import pourwright.store.ResultFiles;
import pourwright.store.SqliteStore;
import pourwright.store.StudioFolder;
import pourwright.work.Studio;

/** A studio for tests, on loopback and any free port. */
public final class TestStudio {
  private TestStudio() {}

  /** An English studio in UTC by the system's clock, its books in this folder. */
  public static Desk desk(Path folder) {
    return desk(folder, Clock.systemUTC());
  }

  /** An English studio in UTC by this clock, its books in this folder. */
  public static Desk desk(Path folder, Clock clock) {
    StudioFolder data = new StudioFolder(folder);
    Studio studio = new Studio(SqliteStore.open(data).unitOfWork(), clock, new HashedFiles(data));
    studio.keepResultsIn(new ResultFiles(data));
    return new Desk(studio, clock, ZoneOffset.UTC, Locale.UK);
  }

  /** A started server of an empty studio in this folder. */
  public static Server open(Path folder) {
    return open(desk(folder), folder);
  }

  /** A started server of the studio at this desk. */
  public static Server open(Desk desk, Path folder) {
    return open(site(desk), ServerSettings.onAnyPort("Test studio"), folder);
  }

  /** All pages at this desk. */
  public static Site site(Desk desk) {
    return Site.of(desk, () -> "");
  }

  /** All pages and the search for a day that can be promised, at most two seconds of it. */
  public static Site promising(Desk desk) {
    return site(desk).and(new PromiseDesk(desk, new CpSatPromising(), Duration.ofSeconds(2)));
  }

  /** A started server of this site. */
  public static Server open(Site site, ServerSettings settings, Path folder) {
    Server server = new Server(site, settings, new SecretsFile(folder));
    server.start();
    return server;
  }

  /** A started server that other devices may reach with this passphrase. */
  public static Server share(Site site, Path folder, String passphrase) {
    SecretsFile secrets = new SecretsFile(folder);
    new Passphrase(secrets).set(passphrase);
    ServerSettings settings =
        new ServerSettings("0.0.0.0", 0, 0, Set.of("studio.test"), "Test studio");
    Server server = new Server(site, settings, secrets);
    server.start();
    return server;
  }
}
