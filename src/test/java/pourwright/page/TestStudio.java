package pourwright.page;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Set;
import pourwright.page.guard.Passphrase;
import pourwright.page.guard.SecretsFile;
import pourwright.work.Studio;

/** A studio for tests, on loopback and any free port. */
public final class TestStudio {
  private TestStudio() {}

  private static Studio studio() {
    return new Studio(new NoBooks(), Clock.systemUTC(), new NoFiles());
  }

  /** The desk of an English studio in UTC by the system's clock. */
  public static Desk desk() {
    return new Desk(studio(), Clock.systemUTC(), ZoneOffset.UTC, Locale.UK);
  }

  /** A started server whose secrets lie in this folder. */
  public static Server open(Path folder) {
    return open(site(), ServerSettings.onAnyPort("Test studio"), folder);
  }

  /** The places of an English studio, nothing running. */
  public static Site site() {
    Desk desk = desk();
    return new Site(desk, Places.all(desk), Surroundings.quiet(), () -> "");
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
