package pourwright.main;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * The machine as far as the program cares: its environment and which folders are usual on it.
 *
 * @param environment the environment variables
 * @param system the name of the operating system, as Java gives it
 * @param home the person's home folder
 */
public record Machine(Map<String, String> environment, String system, Path home) {
  /** This machine. */
  public static Machine thisOne() {
    String system = System.getProperty("os.name", "Linux");
    String home = System.getenv().getOrDefault("HOME", "");
    boolean believed = !home.isEmpty() && !system.startsWith("Windows");
    return new Machine(
        System.getenv(), system, Path.of(believed ? home : System.getProperty("user.home", ".")));
  }

  boolean windows() {
    return system.toLowerCase(Locale.ROOT).startsWith("windows");
  }

  boolean mac() {
    return system.toLowerCase(Locale.ROOT).startsWith("mac");
  }

  /** The value of a variable, or an empty string. */
  String variable(String name) {
    return environment.getOrDefault(name, "");
  }

  /** Where a person's data usually lie. */
  Path usualDataFolder() {
    if (windows()) {
      return folder("LOCALAPPDATA", home.resolve("AppData").resolve("Local")).resolve("Pourwright");
    }
    if (mac()) {
      return home.resolve("Library").resolve("Application Support").resolve("Pourwright");
    }
    return folder("XDG_DATA_HOME", home.resolve(".local").resolve("share")).resolve("pourwright");
  }

  /** Where the sample studio lies, beside a person's own data and never among them. */
  Path sampleFolder() {
    return usualDataFolder()
        .resolveSibling(windows() || mac() ? "Pourwright sample" : "pourwright-sample");
  }

  /** Where the settings file usually lies. */
  Path settingsFile() {
    if (windows()) {
      return folder("APPDATA", home.resolve("AppData").resolve("Roaming"))
          .resolve("Pourwright")
          .resolve("settings.properties");
    }
    if (mac()) {
      return usualDataFolder().resolve("settings.properties");
    }
    return folder("XDG_CONFIG_HOME", home.resolve(".config"))
        .resolve("pourwright")
        .resolve("settings.properties");
  }

  private Path folder(String variable, Path otherwise) {
    String value = variable(variable);
    Path folder = value.isEmpty() ? otherwise : Path.of(value);
    return folder.isAbsolute() ? folder : otherwise;
  }
}
