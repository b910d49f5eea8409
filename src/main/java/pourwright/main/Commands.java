package pourwright.main;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import pourwright.cli.Doors;
import pourwright.cli.ExitCode;
import pourwright.cli.Reading;

/** What stands behind the commands. */
final class Commands implements Doors {
  private final House house;
  private final PrintStream out;
  private final PrintStream err;
  private final PrintWriter say;

  Commands(Machine machine, InputStream in, PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
    this.say = writer(out);
    this.house = new House(machine, in, say, writer(err));
  }

  /** A writer of UTF-8 that sends every line at once. */
  static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }

  @Override
  public Set<String> open() {
    return Set.of(
        "inspect",
        "bench",
        "passphrase",
        "settings",
        "plan",
        "promise",
        "import",
        "demo",
        "backup",
        "restore",
        "export",
        "books");
  }

  @Override
  public int start(Flags flags, boolean sample) {
    return house.start(flags, sample);
  }

  @Override
  public int paths(Flags flags) {
    return house.paths(flags);
  }

  @Override
  public int settings(Flags flags) {
    return house.printSettings(flags);
  }

  @Override
  public int passphrase(Flags flags) {
    return house.passphrase(flags);
  }

  private OrderDoors orderDoors() {
    return new OrderDoors(say, writer(err), Wiring.systemClock());
  }

  @Override
  public int plan(Flags flags, PlanWish wish) {
    Settings settings = house.settings(flags);
    try {
      return orderDoors().plan(settings.data(), settings.value(Settings.Key.DB), wish);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public int promise(Flags flags, PromiseWish wish) {
    Settings settings = house.settings(flags);
    return new PromiseDoor(Wiring.systemClock(), say, writer(err))
        .promise(settings.data(), settings.value(Settings.Key.DB), wish);
  }

  private KeepDoors keepDoors(Settings settings) {
    return new KeepDoors(
        settings.data(), settings.value(Settings.Key.DB), Wiring.systemClock(), say, writer(err));
  }

  @Override
  public int backup(Flags flags, @Nullable Path target) {
    return keepDoors(house.settings(flags)).backup(target);
  }

  @Override
  public int restore(Flags flags, Path source) {
    return keepDoors(house.settings(flags)).restore(source);
  }

  @Override
  public int export(Flags flags, Path target, String profile) {
    return keepDoors(house.settings(flags)).export(target, profile);
  }

  @Override
  public int books(Flags flags, BooksWish wish) {
    Settings settings = house.settings(flags);
    return new BookDoors(
            settings.data(), settings.value(Settings.Key.DB), Wiring.systemClock(), out, err)
        .write(wish);
  }

  @Override
  public int importFile(Flags flags, Path source, Reading reading) {
    Settings settings = house.settings(flags);
    if (KeepDoors.isArchive(source)) {
      return keepDoors(settings).importArchive(source);
    }
    try {
      return orderDoors()
          .importOrders(settings.data(), settings.value(Settings.Key.DB), source, reading);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public int demo(Flags flags, int years, long seed) {
    return SampleStudio.demo(house.settings(flags).data(), years, seed, say, writer(err));
  }

  @Override
  public int inspect(Flags flags) {
    return new Inspection(house.settings(flags), say).run();
  }

  @Override
  public int bench(Flags flags, String which, List<String> more) {
    List<String> words = new ArrayList<>(List.of(which));
    words.addAll(more);
    try {
      return Benches.run(words.toArray(String[]::new), out, err);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** This program's version, as backups and archives note it. */
  static String program() {
    String version = Commands.class.getPackage().getImplementationVersion();
    return "pourwright " + (version == null ? "(from its classes)" : version);
  }

  /** The lines of {@code --version}. */
  static String[] version() {
    return new String[] {
      program(),
      "Java "
          + Runtime.version()
          + ", "
          + System.getProperty("os.name", "")
          + " "
          + System.getProperty("os.arch", "")
    };
  }

  /** Says what went wrong and which code that is. */
  int trouble(Exception e) {
    return e instanceof RuntimeException || e instanceof IOException
        ? Trouble.tell(e, writer(err))
        : ExitCode.ERROR;
  }
}
