package pourwright.page.guard;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Devices that have given the passphrase. Only a digest of a session's name is kept, so that
 * whoever reads the file cannot come in with it. A device that was away for thirty days signs in
 * again.
 */
public final class Sessions {
  private static final Duration IDLE_MAX = Duration.ofDays(30);
  private static final Duration SEEN_EVERY = Duration.ofMinutes(10);

  /**
   * One signed-in device.
   *
   * @param digest SHA-256 of the session's name
   * @param device what the browser called itself, shortened
   * @param since when it signed in
   * @param seen when it was last seen, to ten minutes
   */
  public record Device(String digest, String device, Instant since, Instant seen) {}

  /** Where the list is kept. */
  public interface Book {
    /** The list as it was kept last. */
    List<Device> read();

    /** Keeps the list. */
    void write(List<Device> devices);
  }

  private final Book book;
  private final Map<String, Device> devices = new LinkedHashMap<>();

  /** The sessions kept in this book. */
  public Sessions(Book book) {
    this.book = book;
    book.read().forEach(d -> devices.put(d.digest(), d));
  }

  /** Signs a device in and returns the session's name, which is told to the device alone. */
  public synchronized String open(String device, Instant now) {
    String name = Token.random();
    devices.values().removeIf(d -> d.seen().plus(IDLE_MAX).isBefore(now));
    Device opened = new Device(Token.digest(name), device, now, now);
    devices.put(opened.digest(), opened);
    keep();
    return name;
  }

  /** The device of a session that is still good. */
  public synchronized Optional<Device> find(String name, Instant now) {
    Device device = devices.get(Token.digest(name));
    if (device == null || device.seen().plus(IDLE_MAX).isBefore(now)) {
      return Optional.empty();
    }
    if (device.seen().plus(SEEN_EVERY).isBefore(now)) {
      Device seen = new Device(device.digest(), device.device(), device.since(), now);
      devices.put(seen.digest(), seen);
      keep();
    }
    return Optional.of(device);
  }

  /** Ends one device's session, by its digest. */
  public synchronized void end(String digest) {
    if (devices.remove(digest) != null) {
      keep();
    }
  }

  /** Ends all sessions, as when the passphrase changes. */
  public synchronized void endAll() {
    devices.clear();
    keep();
  }

  /** The signed-in devices, last seen first. */
  public synchronized List<Device> all() {
    List<Device> list = new ArrayList<>(devices.values());
    list.sort(Comparator.comparing(Device::seen).reversed());
    return list;
  }

  private void keep() {
    book.write(List.copyOf(devices.values()));
  }
}
