package pourwright.page;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Locale;
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
    Desk desk = desk();
    Site site = new Site(desk, Places.all(desk), Surroundings.quiet(), () -> "");
    Server server =
        new Server(site, ServerSettings.onAnyPort("Test studio"), new SecretsFile(folder));
    server.start();
    return server;
  }
}
