package pourwright.page.guard;

import java.util.LinkedHashMap;
import java.util.Map;

/** The headers every answer carries. Nothing is loaded from outside, nothing runs inline. */
public final class Headers {
  /** What a page may load and where its forms may go. */
  public static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; "
          + "font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; "
          + "form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private Headers() {}

  /**
   * Name and value of each.
   *
   * @param trusted whether browsers count the address as trustworthy; where they do not, they
   *     complain about an opener policy and ignore it
   */
  public static Map<String, String> all(boolean trusted) {
    Map<String, String> headers = new LinkedHashMap<>();
    headers.put("Content-Security-Policy", POLICY);
    headers.put("X-Content-Type-Options", "nosniff");
    headers.put("X-Frame-Options", "DENY");
    headers.put("Referrer-Policy", "same-origin");
    if (trusted) {
      headers.put("Cross-Origin-Opener-Policy", "same-origin");
    }
    headers.put("Cross-Origin-Resource-Policy", "same-origin");
    headers.put(
        "Permissions-Policy",
        "screen-wake-lock=(self), camera=(), microphone=(), geolocation=(), usb=(), payment=()");
    headers.put("Cache-Control", "no-store");
    return headers;
  }
}
