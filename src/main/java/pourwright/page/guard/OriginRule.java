package pourwright.page.guard;

import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Acts are accepted from this studio's own pages only. Browsers send an Origin with every post; it
 * must be the very address the page was opened under, port included. {@code Sec-Fetch-Site} is
 * believed only when it says no, since browsers leave it out on plain http in a network.
 */
public final class OriginRule {
  private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");

  private OriginRule() {}

  /** Whether a method only looks and never changes anything. */
  public static boolean looksOnly(String method) {
    return SAFE.contains(method.toUpperCase(Locale.ROOT));
  }

  /**
   * Turns an act away that does not come from the studio's own pages.
   *
   * @param origin the Origin header
   * @param host the Host header, already checked
   * @param scheme http or https
   * @param site the Sec-Fetch-Site header
   */
  public static void check(
      @Nullable String origin, String host, String scheme, @Nullable String site) {
    String own = scheme + "://" + host;
    boolean foreignSite = site != null && !site.equals("same-origin");
    if (origin == null || !origin.equalsIgnoreCase(own) || foreignSite) {
      throw new TurnedAway(
          403,
          "This did not come from the studio's own page",
          "Nothing was recorded. Go back to the page, load it again and repeat.");
    }
  }
}
