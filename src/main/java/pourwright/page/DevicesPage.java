package pourwright.page;

import java.util.List;
import pourwright.page.guard.Sessions;

/**
 * The devices that are signed in: finished strings.
 *
 * @param devices last seen first
 */
public record DevicesPage(List<Row> devices) {
  /** One device. */
  public record Row(String id, String device, String since, String seen) {}

  static DevicesPage of(List<Sessions.Device> devices, Desk desk) {
    return new DevicesPage(
        devices.stream()
            .map(
                d ->
                    new Row(
                        d.digest(),
                        d.device(),
                        desk.dayAndTime(d.since()),
                        desk.dayAndTime(d.seen())))
            .toList());
  }
}
