package pourwright.main;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import pourwright.cli.ExitCode;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.guard.SecretsFile;

/** Starts the studio, says where it is, and stays until it is told to stop. */
final class Launch {
  private static final long STOP_MAX_S = 5;

  private final Settings settings;
  private final Machine machine;
  private final PrintWriter out;
  private final BlockingQueue<Path> next = new LinkedBlockingQueue<>();
  private final CountDownLatch closed = new CountDownLatch(1);
  private volatile boolean stopping;

  Launch(Settings settings, Machine machine, PrintWriter out) {
    this.settings = settings;
    this.machine = machine;
    this.out = out;
  }

  /** Runs until the process is stopped; returns the exit code. */
  int run(boolean sample) throws InterruptedException {
    try {
      return serveOneAfterAnother(sample);
    } finally {
      closed.countDown();
    }
  }

  private int serveOneAfterAnother(boolean sample) throws InterruptedException {
    Path own = settings.data();
    boolean firstRun = !settings.dataWasChosen() && !Wiring.hasStudio(own);
    Path folder = sample || firstRun ? machine.sampleFolder() : own;
    boolean first = true;
    while (true) {
      Optional<String> running = serve(folder, first, folder.equals(own) ? null : own);
      if (running.isPresent()) {
        return alreadyRunning(folder, running.get());
      }
      if (stopping) {
        return ExitCode.OK;
      }
      folder = own;
      first = false;
    }
  }

  private int alreadyRunning(Path folder, String address) {
    out.println("Pourwright has " + folder + " open already, at " + address);
    out.flush();
    if (settings.yes(Settings.Key.BROWSER) && Browser.there(machine)) {
      Browser.open(machine, address);
    }
    return ExitCode.OK;
  }

  /**
   * Serves one folder until the process is stopped or another folder is asked for. Returns where
   * the folder is already served, if it is.
   */
  private Optional<String> serve(
      Path folder, boolean first, @org.jspecify.annotations.Nullable Path own)
      throws InterruptedException {
    Optional<DataFolder> taken = DataFolder.take(folder);
    if (taken.isEmpty()) {
      String address = DataFolder.addressIn(folder);
      if (address.isEmpty()) {
        throw new FolderTaken(folder, address);
      }
      return Optional.of(address);
    }
    try (DataFolder held = taken.get()) {
      Logs.into(folder);
      boolean sample = own != null;
      if (sample && !Wiring.hasStudio(folder)) {
        SampleStudio.make(folder, out);
      }
      String db = sample ? "" : settings.value(Settings.Key.DB);
      try (Wiring wiring =
              Wiring.open(folder, db, Wiring.systemClock(), settings.yes(Settings.Key.COPY_MADE));
          Keeper keeper = new Keeper(wiring, sample).begin();
          Server server =
              new Server(
                  wiring.site(own == null ? null : () -> next.add(own)).keeping(keeper::state),
                  serverSettings(wiring),
                  new SecretsFile(folder))) {
        String address = "http://localhost:" + server.start() + "/";
        held.runningAt(address);
        greet(folder, address, first);
        waitForEnd();
        return Optional.empty();
      }
    }
  }

  private ServerSettings serverSettings(Wiring wiring) {
    String name = settings.value(Settings.Key.NAME);
    int port = settings.port();
    return new ServerSettings(
        settings.value(Settings.Key.LISTEN),
        port,
        settings.yes(Settings.Key.PROBING) ? ServerSettings.PROBE : 0,
        name.isEmpty() ? Set.of() : Set.of(name),
        wiring.name());
  }

  private void greet(Path folder, String address, boolean first) {
    out.println("Pourwright is open at " + address);
    out.println("Its data are in " + folder + ". Stop it with Ctrl-C.");
    out.flush();
    if (first && settings.yes(Settings.Key.BROWSER) && Browser.there(machine)) {
      Browser.open(machine, address);
    }
  }

  private void waitForEnd() throws InterruptedException {
    Thread here = Thread.currentThread();
    Thread hook =
        new Thread(
            () -> {
              stopping = true;
              here.interrupt();
              waitUntilClosed();
            },
            "stop");
    Runtime.getRuntime().addShutdownHook(hook);
    try {
      next.take();
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (InterruptedException e) {
      if (!stopping) {
        throw e;
      }
    }
  }

  /** Gives the main thread the time to close what it has open. */
  private void waitUntilClosed() {
    try {
      if (!closed.await(STOP_MAX_S, TimeUnit.SECONDS)) {
        Thread.currentThread().interrupt();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
