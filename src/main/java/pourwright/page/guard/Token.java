package pourwright.page.guard;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;

/**
 * Random names that cannot be guessed, and the form token that belongs to one of them: HMAC-SHA256
 * of the visit under the studio's own key, so that forms stay good over a restart.
 */
public final class Token {
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final int BYTES = 32;
  private static final Base64.Encoder TEXT = Base64.getUrlEncoder().withoutPadding();

  private Token() {}

  /** 256 random bits as 43 characters. */
  public static String random() {
    return TEXT.encodeToString(randomBytes());
  }

  /** 256 random bits. */
  public static byte[] randomBytes() {
    byte[] bytes = new byte[BYTES];
    RANDOM.nextBytes(bytes);
    return bytes;
  }

  /** The form token of a visit. */
  public static String of(String visit, byte[] key) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(key, "HmacSHA256"));
      return TEXT.encodeToString(mac.doFinal(visit.getBytes(StandardCharsets.UTF_8)));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java has HmacSHA256", e);
    }
  }

  /** SHA-256 of a text, as text: what is kept of a session in place of its name. */
  public static String digest(String text) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return TEXT.encodeToString(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Compares in a time that does not depend on where two texts differ. */
  public static boolean same(@Nullable String one, String other) {
    return one != null
        && MessageDigest.isEqual(
            one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }
}
