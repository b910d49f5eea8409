package pourwright.page;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import pourwright.page.guard.Token;
import pourwright.page.guard.TurnedAway;

/**
 * Style, script and pictures that come with the program, held in memory under known names; no path
 * is ever made from what a request says.
 */
final class StaticFiles {
  private static final Map<String, String> TYPES =
      Map.of(
          "slab.css", "text/css; charset=utf-8",
          "bench.js", "text/javascript; charset=utf-8",
          "draft.js", "text/javascript; charset=utf-8",
          "pad.js", "text/javascript; charset=utf-8",
          "turn.js", "text/javascript; charset=utf-8",
          "play.js", "text/javascript; charset=utf-8",
          "htmx.min.js", "text/javascript; charset=utf-8",
          "mark.svg", "image/svg+xml",
          "studio.webmanifest", "application/manifest+json");
  private static final int VERSION_CHARACTERS = 10;

  private final Map<String, byte[]> files = new LinkedHashMap<>();
  private final String version;

  StaticFiles() {
    TYPES.keySet().stream().sorted().forEach(name -> files.put(name, read(name)));
    StringBuilder all = new StringBuilder();
    files.values().forEach(b -> all.append(java.util.Arrays.hashCode(b)).append('.'));
    this.version = Token.digest(all.toString()).substring(0, VERSION_CHARACTERS);
  }

  /** A word that changes with the content. */
  String version() {
    return version;
  }

  void serve(Context http) {
    String name = http.pathParam("name");
    byte[] file = files.get(name);
    if (file == null) {
      throw new TurnedAway(404, "There is no such file", "Go back to the first page.");
    }
    http.header("Cache-Control", "public, max-age=31536000, immutable");
    http.contentType(TYPES.getOrDefault(name, "application/octet-stream")).result(file);
  }

  private static byte[] read(String name) {
    try (InputStream in = StaticFiles.class.getResourceAsStream("/static/" + name)) {
      if (in == null) {
        throw new IllegalStateException("the program was packed without " + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
