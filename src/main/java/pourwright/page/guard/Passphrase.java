package pourwright.page.guard;

import com.password4j.Argon2Function;
import com.password4j.Password;
import com.password4j.types.Argon2;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;

/**
 * The passphrase that opens the studio to other devices: Argon2id with 19 MiB, two passes, one lane
 * (the least of the OWASP password storage cheat sheet); at most two are worked out at once.
 */
public final class Passphrase {
  /** Characters a passphrase must have. */
  public static final int LENGTH_MIN = 8;

  private static final int LENGTH_MAX = 256;
  private static final int MEMORY_KIB = 19 * 1024;
  private static final int PASSES = 2;
  private static final int LANES = 1;
  private static final int HASH_BYTES = 32;

  /**
   * Made when the first passphrase is: it keeps its 19 MiB, which a studio on loopback can spare.
   */
  private static final class Hashing {
    static final Argon2Function ARGON2 =
        Argon2Function.getInstance(MEMORY_KIB, PASSES, LANES, HASH_BYTES, Argon2.ID);
  }

  private static final Set<String> TOO_COMMON =
      Set.of(
          "password",
          "passwort",
          "12345678",
          "123456789",
          "1234567890",
          "qwertyui",
          "qwertzui",
          "letmein1",
          "iloveyou",
          "sunshine",
          "princess",
          "football",
          "baseball",
          "welcome1",
          "password1",
          "passw0rd",
          "trustno1",
          "11111111",
          "00000000",
          "abcd1234",
          "candles1");

  private final Secrets secrets;
  private final Semaphore atOnce = new Semaphore(2);

  /** The passphrase of these secrets. */
  public Passphrase(Secrets secrets) {
    this.secrets = secrets;
  }

  /** Whether one has been set. */
  public boolean isSet() {
    return secrets.passphraseHash().isPresent();
  }

  /** What is wrong with a wish for a passphrase, as a sentence, or nothing. */
  public static Optional<String> complaint(String wish) {
    if (wish.length() < LENGTH_MIN) {
      return Optional.of("Please take at least " + LENGTH_MIN + " characters; four words do well.");
    }
    if (wish.length() > LENGTH_MAX) {
      return Optional.of("Please take at most " + LENGTH_MAX + " characters.");
    }
    if (TOO_COMMON.contains(wish.toLowerCase(java.util.Locale.ROOT))) {
      return Optional.of("That one is among the first anybody would try. Please take another.");
    }
    return Optional.empty();
  }

  /** Sets a passphrase that {@link #complaint} had nothing against. */
  public void set(String passphrase) {
    secrets.keepPassphraseHash(
        Password.hash(passphrase).addRandomSalt().with(Hashing.ARGON2).getResult());
  }

  /** Whether this is the passphrase. Takes the same time when none is set. */
  public boolean matches(String attempt) throws InterruptedException {
    if (attempt.length() > LENGTH_MAX) {
      return false;
    }
    atOnce.acquire();
    try {
      Optional<String> hash = secrets.passphraseHash();
      if (hash.isEmpty()) {
        Password.hash(attempt).addRandomSalt().with(Hashing.ARGON2);
        return false;
      }
      return Password.check(attempt, hash.get()).with(Hashing.ARGON2);
    } finally {
      atOnce.release();
    }
  }
}
