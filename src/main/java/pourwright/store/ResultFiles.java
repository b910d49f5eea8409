package pourwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pourwright.work.KeptResults;

/** Computed results as files in the studio's folder; only so many are kept. */
public final class ResultFiles implements KeptResults {
  /** So many results are kept. */
  static final int KEPT = 40;

  private static final String END = ".result";
  private final Path folder;

  /** Results in the folder of a studio. */
  public ResultFiles(StudioFolder folder) {
    this.folder = folder.root().resolve("computed");
  }

  private Path place(String name) {
    if (!name.matches("[a-z0-9]{1,80}")) {
      throw new IllegalArgumentException("no name of a result: " + name);
    }
    return folder.resolve(name + END);
  }

  @Override
  public Optional<byte[]> read(String name) {
    try {
      return Optional.of(Files.readAllBytes(place(name)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  @Override
  public List<String> newestFirst() {
    return files().stream()
        .map(f -> String.valueOf(f.getFileName()))
        .map(f -> f.substring(0, f.length() - END.length()))
        .toList();
  }

  private List<Path> files() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> String.valueOf(f.getFileName()).endsWith(END))
          .sorted(Comparator.comparing(ResultFiles::written).reversed())
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  private static FileTime written(Path file) {
    try {
      return Files.getLastModifiedTime(file);
    } catch (IOException e) {
      return FileTime.fromMillis(0);
    }
  }

  @Override
  public synchronized void keep(String name, byte[] bytes) {
    Path place = place(name);
    try {
      Files.createDirectories(folder);
      StudioFolder.own(folder, "rwx------");
      Path fresh = Files.createTempFile(folder, ".fresh-", "");
      try {
        Files.write(fresh, bytes);
        Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(fresh);
      }
      for (Path old : files().stream().skip(KEPT).toList()) {
        Files.deleteIfExists(old);
      }
    } catch (IOException e) {
      System.getLogger("store").log(System.Logger.Level.DEBUG, "a result was not kept", e);
    }
  }
}
