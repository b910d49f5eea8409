package pourwright.main;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import pourwright.cli.Computations;
import pourwright.cli.ComputeCommand;
import pourwright.page.Place;
import pourwright.page.Server;
import pourwright.page.ServerSettings;
import pourwright.page.Site;
import pourwright.page.guard.SecretsFile;

/**
 * Walks the usual ways once and ends, so that the launcher can keep the classes that were loaded in
 * an archive for the next start.
 */
final class Warm {
  /** Long number work: its classes are few and its run would take seconds. */
  private static final Set<String> TOO_LONG = Set.of("burn", "melt-front", "buy", "leftover");

  private Warm() {}

  /** Starts a studio in a scratch folder and opens every place of it. */
  static int pages() throws IOException {
    Path scratch = Files.createTempDirectory("pourwright-warm");
    try (Wiring wiring = Wiring.open(scratch, "", Wiring.systemClock())) {
      Site site = wiring.site(null);
      try (Server server =
          new Server(site, ServerSettings.onAnyPort("warm"), new SecretsFile(scratch))) {
        String base = "http://localhost:" + server.start();
        for (Place place : site.places()) {
          get(base + place.path());
        }
        get(base + "/static/slab.css");
      }
    } finally {
      remove(scratch);
    }
    return 0;
  }

  private static void get(String address) throws IOException {
    HttpURLConnection connection = (HttpURLConnection) URI.create(address).toURL().openConnection();
    connection.getResponseCode();
    connection.disconnect();
  }

  private static void remove(Path folder) throws IOException {
    List<Path> all;
    try (Stream<Path> files = Files.walk(folder)) {
      all = files.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path file : all) {
      Files.deleteIfExists(file);
    }
  }

  /** Computes every short worked example there is beside the program, and answers nobody. */
  static int compute(Computations computations) throws IOException {
    Path examples = Path.of(System.getProperty("pourwright.home", "."), "docs", "compute");
    try (PrintStream nobody =
        new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8)) {
      for (String name : computations.names()) {
        Path example = examples.resolve(name).resolve("example-in.json");
        boolean use = Files.isReadable(example) && !TOO_LONG.contains(name);
        byte[] in = use ? Files.readAllBytes(example) : "{}".getBytes(StandardCharsets.UTF_8);
        new ComputeCommand(computations, nobody, nobody)
            .run(new String[] {name}, new ByteArrayInputStream(in));
      }
    }
    return 0;
  }
}
