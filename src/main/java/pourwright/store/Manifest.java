package pourwright.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;
import java.util.Map;

/**
 * What is in a backup or an archive, and the hash of every part.
 *
 * @param format {@code pourwright-backup} or {@code pourwright-archive}
 * @param formatVersion 1
 * @param program version of the program that wrote it
 * @param step the database's step
 * @param madeAt when, in UTC
 * @param rows rows by table
 * @param members every other file in the zip
 */
public record Manifest(
    String format,
    int formatVersion,
    String program,
    int step,
    String madeAt,
    Map<String, Long> rows,
    List<Member> members) {

  /** Name of the manifest in the zip. */
  public static final String NAME = "manifest.json";

  /**
   * One file.
   *
   * @param name path in the zip
   * @param bytes its size
   * @param sha256 of its bytes
   */
  public record Member(String name, long bytes, String sha256) {}

  String json() {
    try {
      return Json.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(this);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  static Manifest read(String json) {
    try {
      return Json.mapper().readValue(json, Manifest.class);
    } catch (JsonProcessingException e) {
      throw new StoreTrouble(
          StoreTrouble.Kind.DAMAGED,
          "the list of contents in this file cannot be read",
          "use another backup",
          e);
    }
  }
}
