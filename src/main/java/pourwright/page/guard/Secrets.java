package pourwright.page.guard;

import java.util.Optional;

/**
 * What the studio keeps to itself: its name among instances, its key, and the passphrase's hash.
 */
public interface Secrets {
  /** Five characters that tell this data folder's cookies from another's on the same machine. */
  String instance();

  /** The key that form tokens are made with. */
  byte[] key();

  /** The Argon2id hash of the passphrase, if one has been set. */
  Optional<String> passphraseHash();

  /** Keeps a new hash. */
  void keepPassphraseHash(String hash);
}
