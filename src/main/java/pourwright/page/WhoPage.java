package pourwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pourwright.page.guard.Door;

/**
 * Asks who works at this device before something is written without a name.
 *
 * @param form with the initials, if some were typed
 * @param action what is done once they are known
 * @param kept everything that was sent, to be sent again
 */
public record WhoPage(Form form, String action, List<Kept> kept) {
  private static final Set<String> FRESH = Set.of(Door.TOKEN_FIELD, Door.KEY_FIELD, "by");

  /** One field that was sent. */
  public record Kept(String name, String value) {}

  static WhoPage of(Form form, String action, Map<String, List<String>> sent) {
    List<Kept> kept = new ArrayList<>();
    sent.forEach(
        (name, values) -> {
          if (!FRESH.contains(name)) {
            values.forEach(value -> kept.add(new Kept(name, value)));
          }
        });
    return new WhoPage(form, action, List.copyOf(kept));
  }
}
