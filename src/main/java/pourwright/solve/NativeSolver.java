package pourwright.solve;

import com.google.ortools.Loader;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Enumeration;
import java.util.Locale;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * Loads the solver's native library once a process. The library's own loader unpacks 67 MB into a
 * new temporary folder at every start (0.8 s); here it is unpacked once into the user's cache
 * folder and loaded from there (0.02 s). Where that cannot be done, the library's own way is taken.
 */
final class NativeSolver {
  private static final String DONE = "unpacked";

  private NativeSolver() {}

  /** Loads on the first use of this holder; class initialisation makes it happen once. */
  private static final class Loaded {
    private static final boolean FROM_CACHE = load();

    private Loaded() {}
  }

  /** Makes the solver usable; says whether it came from the cache folder. */
  static boolean ready() {
    return Loaded.FROM_CACHE;
  }

  private static boolean load() {
    String platform = platform();
    if (!platform.isEmpty()) {
      try {
        Path folder = unpacked(jarOf(platform), platform, cacheFolder());
        System.load(folder.resolve(System.mapLibraryName("jniortools")).toString());
        return true;
      } catch (IOException | UnsatisfiedLinkError | SecurityException e) {
        // A read-only home or a broken cache is no reason not to plan: the slow way below.
      }
    }
    Loader.loadNativeLibraries();
    return false;
  }

  /** The library's name for this platform; empty where its own loader knows better (Windows). */
  private static String platform() {
    String os = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    String arch = System.getProperty("os.arch", "").toLowerCase(Locale.ROOT);
    String machine =
        switch (arch) {
          case "amd64", "x86_64" -> "x86-64";
          case "aarch64", "arm64" -> "aarch64";
          default -> "";
        };
    if (machine.isEmpty()) {
      return "";
    }
    return os.startsWith("linux")
        ? "linux-" + machine
        : os.startsWith("mac") ? "darwin-" + machine : "";
  }

  private static Path cacheFolder() {
    String set = System.getenv("XDG_CACHE_HOME");
    Path base =
        set == null || set.isBlank()
            ? Path.of(System.getProperty("user.home", "."), ".cache")
            : Path.of(set);
    return base.toAbsolutePath().resolve("pourwright");
  }

  private static Path jarOf(String platform) throws IOException {
    String classPath = System.getProperty("java.class.path", "");
    for (String entry : classPath.split(File.pathSeparator, -1)) {
      Path jar = Path.of(entry);
      if (String.valueOf(jar.getFileName()).startsWith("ortools-" + platform)) {
        return jar;
      }
    }
    throw new IOException("no solver library for " + platform + " on the class path");
  }

  /**
   * The folder with the unpacked library. It is complete or absent: unpacking goes into a folder
   * beside it that is renamed at the end, and its size is compared with the one written down.
   */
  static Path unpacked(Path jar, String platform, Path cache) throws IOException {
    String name = String.valueOf(jar.getFileName()).replace(".jar", "") + "-" + Files.size(jar);
    Path folder = cache.resolve(name);
    if (isWhole(folder)) {
      return folder;
    }
    Files.createDirectories(cache);
    Path fresh = Files.createTempDirectory(cache, name + ".new");
    long bytes = unpack(jar, "ortools-" + platform + "/", fresh);
    Files.writeString(fresh.resolve(DONE), Long.toString(bytes));
    if (Files.exists(folder)) {
      Files.move(folder, Files.createTempDirectory(cache, name + ".old").resolve("broken"));
    }
    try {
      Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      if (!isWhole(folder)) { // else another process was quicker with the same files
        throw e;
      }
    }
    return folder;
  }

  private static long unpack(Path jar, String prefix, Path into) throws IOException {
    long bytes = 0;
    try (JarFile file = new JarFile(jar.toFile())) {
      for (Enumeration<JarEntry> all = file.entries(); all.hasMoreElements(); ) {
        JarEntry entry = all.nextElement();
        String leaf = entry.getName().substring(entry.getName().lastIndexOf('/') + 1);
        if (!entry.isDirectory() && entry.getName().startsWith(prefix)) {
          try (InputStream in = file.getInputStream(entry)) {
            bytes += Files.copy(in, into.resolve(leaf));
          }
        }
      }
    }
    return bytes;
  }

  private static boolean isWhole(Path folder) throws IOException {
    Path done = folder.resolve(DONE);
    if (!Files.isRegularFile(done)) {
      return false;
    }
    long bytes = 0;
    try (Stream<Path> files = Files.walk(folder, 1, new FileVisitOption[0])) {
      for (Path file : (Iterable<Path>) files::iterator) {
        bytes += Files.isRegularFile(file) && !file.equals(done) ? Files.size(file) : 0;
      }
    }
    return Files.readString(done).equals(Long.toString(bytes));
  }
}
