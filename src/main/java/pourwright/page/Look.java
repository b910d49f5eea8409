package pourwright.page;

import java.util.List;

/**
 * How this device shows pages: the device's own choice, kept in a cookie.
 *
 * @param scheme {@code auto}, {@code light} or {@code dark}
 * @param contrast {@code normal} or {@code high}
 */
public record Look(String scheme, String contrast) {
  private static final List<String> SCHEMES = List.of("auto", "light", "dark");
  private static final List<String> CONTRASTS = List.of("normal", "high");

  /** Anything unknown becomes the plain choice. */
  public Look {
    scheme = SCHEMES.contains(scheme) ? scheme : "auto";
    contrast = CONTRASTS.contains(contrast) ? contrast : "normal";
  }

  /** What the cookie says, such as {@code dark.high}. */
  public static Look of(String cookie) {
    int dot = cookie.indexOf('.');
    return dot < 0
        ? new Look("auto", "normal")
        : new Look(cookie.substring(0, dot), cookie.substring(dot + 1));
  }

  /** The cookie's text. */
  public String cookie() {
    return scheme + "." + contrast;
  }
}
