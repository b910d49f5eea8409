package pourwright.page;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.util.JavalinBindException;
import io.javalin.util.JavalinException;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import org.eclipse.jetty.server.AbstractConnector;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.jspecify.annotations.Nullable;
import org.slf4j.LoggerFactory;
import pourwright.page.guard.Door;
import pourwright.page.guard.HostRule;
import pourwright.page.guard.Passphrase;
import pourwright.page.guard.SecretsFile;
import pourwright.page.guard.Sessions;
import pourwright.page.timer.BellRoutes;

/**
 * The web server: starts on a free port, serves the places behind the door, stops within seconds.
 */
public final class Server implements AutoCloseable {
  private static final int THREADS_MAX = 40;
  private static final int THREADS_MIN = 4;
  private static final long STOP_MS = 4_000;

  /** So long a line with nothing on it is kept open while stopping. */
  private static final long QUIET_LINE_MS = 20;

  private final Site site;
  private final ServerSettings settings;
  private final SecretsFile secrets;
  private @Nullable Javalin running;
  private @Nullable BellRoutes bells;

  /**
   * A server for a site, not yet started. Refuses to be made for other devices while no passphrase
   * is set.
   */
  public Server(Site site, ServerSettings settings, SecretsFile secrets) {
    if (!settings.loopbackOnly() && secrets.passphraseHash().isEmpty()) {
      throw new PassphraseMissing();
    }
    this.site = site;
    this.settings = settings;
    this.secrets = secrets;
  }

  /** Starts and returns the port. */
  public int start() {
    int port = settings.port() == 0 ? 0 : freePort();
    Javalin made = Javalin.create(config -> configure(config, port));
    try {
      made.start();
    } catch (JavalinBindException e) {
      throw new PortTaken("port " + port + " was taken at the last moment");
    }
    for (Connector connector : made.jettyServer().server().getConnectors()) {
      if (connector instanceof AbstractConnector lines) {
        lines.setShutdownIdleTimeout(QUIET_LINE_MS);
      }
    }
    running = made;
    return made.port();
  }

  private int freePort() {
    for (int port = settings.port(); port <= settings.port() + settings.probe(); port++) {
      if (free(port)) {
        return port;
      }
    }
    throw new PortTaken(
        settings.probe() == 0
            ? "port " + settings.port() + " is taken by another program"
            : "ports "
                + settings.port()
                + " to "
                + (settings.port() + settings.probe())
                + " are all taken by other programs");
  }

  private boolean free(int port) {
    try (ServerSocket socket = new ServerSocket()) {
      socket.setReuseAddress(true);
      socket.bind(new InetSocketAddress(InetAddress.getByName(settings.host()), port));
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private void configure(JavalinConfig config, int port) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.jetty.host = settings.host();
    config.jetty.port = port;
    config.jetty.threadPool = new QueuedThreadPool(THREADS_MAX, THREADS_MIN);
    config.jetty.modifyServer(server -> server.setStopTimeout(STOP_MS));
    config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    config.http.maxRequestSize = Door.FORM_MAX;
    config.jetty.multipartConfig.maxTotalRequestSize(Door.UPLOAD_MAX, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxInMemoryFileSize(1, SizeUnit.MB);
    Sessions sessions = new Sessions(secrets);
    HostRule hosts =
        settings.loopbackOnly() ? HostRule.loopbackOnly() : HostRule.alsoKnownAs(names());
    Door.Rules rules = new Door.Rules(hosts, !settings.loopbackOnly(), secrets);
    Door door = new Door(rules, sessions, site.desk().clock());
    Shell shell = new Shell(site, settings, door);
    new HouseRoutes(site, shell, door, sessions, new Passphrase(secrets)).addTo(config.routes);
    new PairingRoutes(door, site.desk().clock(), settings).addTo(config.routes);
    BellRoutes ringing = new BellRoutes(site.surroundings(), site.desk().clock());
    ringing.addTo(config.routes);
    bells = ringing;
    site.corners().forEach(corner -> corner.addTo(config.routes));
    site.places().forEach(place -> place.addTo(config.routes));
  }

  private java.util.Set<String> names() {
    java.util.Set<String> names = new java.util.LinkedHashSet<>(settings.names());
    names.addAll(HostRule.namesOfThisMachine());
    return names;
  }

  /** The port it listens on; 0 before it is started. */
  public int port() {
    return running == null ? 0 : running.port();
  }

  /** The paths that can be looked at, parts in braces standing for anything; none before start. */
  public java.util.List<String> looks() {
    return running == null
        ? java.util.List.of()
        : running.unsafe.internalRouter.allHttpHandlers().stream()
            .filter(handler -> handler.endpoint.method.equals(io.javalin.http.HandlerType.GET))
            .map(handler -> handler.endpoint.path)
            .distinct()
            .toList();
  }

  /** Stops: nothing new is taken, what is under way is finished, at most a few seconds. */
  @Override
  public void close() {
    if (bells != null) {
      bells.close();
      bells = null;
    }
    if (running != null) {
      stop(running);
      running = null;
    }
  }

  /** An open stream of bells may outlast the patience; it is cut off then, which it can bear. */
  private static void stop(Javalin running) {
    try {
      running.stop();
    } catch (JavalinException e) {
      LoggerFactory.getLogger(Server.class).debug("a stream was cut off", e);
    }
  }
}
