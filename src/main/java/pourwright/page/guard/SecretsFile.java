package pourwright.page.guard;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Secrets and sessions in one file beside the database, readable by its owner alone. */
public final class SecretsFile implements Secrets, Sessions.Book {
  /** The file's name in the data folder. */
  public static final String NAME = "secrets.json";

  private static final int INSTANCE_CHARACTERS = 5;
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final Path file;
  private final ObjectNode kept;

  /** Reads the file, or makes it with a fresh key. */
  public SecretsFile(Path folder) {
    this.file = folder.resolve(NAME);
    try {
      this.kept = Files.exists(file) ? (ObjectNode) JSON.readTree(file.toFile()) : fresh();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
    if (!Files.exists(file)) {
      write();
    }
  }

  private static ObjectNode fresh() {
    ObjectNode node = JSON.createObjectNode();
    String name = Token.random().replaceAll("[^A-Za-z0-9]", "x").toLowerCase(Locale.ROOT);
    node.put("instance", name.substring(0, INSTANCE_CHARACTERS));
    node.put("key", Base64.getEncoder().encodeToString(Token.randomBytes()));
    return node;
  }

  @Override
  public String instance() {
    return kept.path("instance").asText();
  }

  @Override
  public byte[] key() {
    return Base64.getDecoder().decode(kept.path("key").asText());
  }

  @Override
  public synchronized Optional<String> passphraseHash() {
    JsonNode hash = kept.path("passphrase");
    return hash.isTextual() ? Optional.of(hash.asText()) : Optional.empty();
  }

  @Override
  public synchronized void keepPassphraseHash(String hash) {
    kept.put("passphrase", hash);
    write();
  }

  @Override
  public synchronized List<Sessions.Device> read() {
    List<Sessions.Device> devices = new ArrayList<>();
    for (JsonNode node : kept.path("devices")) {
      devices.add(
          new Sessions.Device(
              node.path("digest").asText(),
              node.path("device").asText(),
              Instant.parse(node.path("since").asText()),
              Instant.parse(node.path("seen").asText())));
    }
    return devices;
  }

  @Override
  public synchronized void write(List<Sessions.Device> devices) {
    ArrayNode list = kept.putArray("devices");
    for (Sessions.Device device : devices) {
      ObjectNode node = list.addObject();
      node.put("digest", device.digest());
      node.put("device", device.device());
      node.put("since", device.since().toString());
      node.put("seen", device.seen().toString());
    }
    write();
  }

  private void write() {
    Path next = file.resolveSibling(NAME + ".next");
    try {
      Files.deleteIfExists(next);
      if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
        Files.createFile(
            next,
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
      }
      Files.write(next, JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(kept));
      Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file, e);
    }
  }
}
