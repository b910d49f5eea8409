package pourwright.main;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;

/**
 * The program's settings: a flag goes before the environment, the environment before the settings
 * file, the file before the default. {@code pourwright settings} prints each with where it is from.
 */
public final class Settings {
  /** Where a value was found. */
  public enum From {
    /** A flag of the command line. */
    FLAG("flag"),
    /** A variable of the environment. */
    ENVIRONMENT("environment"),
    /** The settings file. */
    FILE("settings file"),
    /** Nobody said anything. */
    DEFAULT("default");

    private final String word;

    From(String word) {
      this.word = word;
    }

    @Override
    public String toString() {
      return word;
    }
  }

  /**
   * One setting as it stands.
   *
   * @param name its name in the settings file
   * @param value what it is
   * @param from where that was found
   */
  public record Setting(String name, String value, From from) {}

  /** Every setting: its name, which is also its flag, its variable, what it is if nobody says. */
  enum Key {
    DATA("data", "POURWRIGHT_DATA"),
    DB("db", "POURWRIGHT_DB"),
    PORT("port", "POURWRIGHT_PORT"),
    PROBING("probing", "POURWRIGHT_PROBING"),
    LISTEN("listen", "POURWRIGHT_LISTEN"),
    NAME("name", "POURWRIGHT_NAME"),
    BROWSER("browser", "POURWRIGHT_BROWSER"),
    COPY_MADE("copy-made", "POURWRIGHT_COPY_MADE");

    final String word;
    final String variable;

    Key(String word, String variable) {
      this.word = word;
      this.variable = variable;
    }
  }

  private final Map<String, String> flags;
  private final Machine machine;
  private final Properties file;
  private final Path fileAt;

  /** The settings on this machine with these flags. */
  public Settings(Map<String, String> flags, Machine machine) {
    this.flags = Map.copyOf(flags);
    this.machine = machine;
    String elsewhere = machine.variable("POURWRIGHT_SETTINGS");
    this.fileAt = elsewhere.isEmpty() ? machine.settingsFile() : Path.of(elsewhere);
    this.file = read(fileAt);
  }

  private static Properties read(Path file) {
    Properties properties = new Properties();
    if (Files.isRegularFile(file)) {
      try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
        properties.load(reader);
      } catch (IOException e) {
        throw new UncheckedIOException("cannot read the settings file " + file, e);
      }
    }
    return properties;
  }

  /** One setting. */
  Setting of(Key key) {
    String flag = flags.get(key.word);
    if (flag != null) {
      return new Setting(key.word, flag, From.FLAG);
    }
    String variable = machine.variable(key.variable);
    if (!variable.isEmpty()) {
      return new Setting(key.word, variable, From.ENVIRONMENT);
    }
    String kept = file.getProperty(key.word, "");
    if (!kept.isEmpty()) {
      return new Setting(key.word, kept.strip(), From.FILE);
    }
    return new Setting(key.word, otherwise(key), From.DEFAULT);
  }

  private String otherwise(Key key) {
    return switch (key) {
      case DATA -> machine.usualDataFolder().toString();
      case PORT -> String.valueOf(pourwright.page.ServerSettings.PORT);
      case LISTEN -> "127.0.0.1";
      case PROBING, BROWSER -> "yes";
      case COPY_MADE -> "no";
      case DB, NAME -> "";
    };
  }

  /** Every setting, in a fixed order. */
  public List<Setting> all() {
    List<Setting> all = new ArrayList<>();
    for (Key key : Key.values()) {
      all.add(of(key));
    }
    return all;
  }

  /** The value of a setting. */
  String value(Key key) {
    return of(key).value();
  }

  /** Whether a setting of yes and no is yes. */
  boolean yes(Key key) {
    return switch (value(key).toLowerCase(java.util.Locale.ROOT)) {
      case "yes", "true", "on", "1" -> true;
      case "no", "false", "off", "0" -> false;
      default -> throw new BadSetting(key.word + " is '" + value(key) + "'; it must be yes or no");
    };
  }

  /** The port wanted. */
  int port() {
    String text = value(Key.PORT);
    try {
      int port = Integer.parseInt(text);
      if (port >= 0 && port <= 65_535) {
        return port;
      }
    } catch (NumberFormatException e) {
      throw new BadSetting("port is '" + text + "'; it must be a number between 0 and 65535");
    }
    throw new BadSetting("port is '" + text + "'; it must be between 0 and 65535");
  }

  /** The data folder, absolute. */
  Path data() {
    return Path.of(value(Key.DATA)).toAbsolutePath().normalize();
  }

  /** Where the settings file is, whether it exists or not. */
  Path file() {
    return fileAt;
  }

  /** Whether she said herself where the data are. */
  boolean dataWasChosen() {
    return of(Key.DATA).from() != From.DEFAULT;
  }
}
