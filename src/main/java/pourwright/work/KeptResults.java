package pourwright.work;

import java.util.List;
import java.util.Optional;

/**
 * Results that took long to compute and can be computed again: kept beside the books, never part of
 * them, of a backup or of an archive. Whatever cannot be read is as if it had never been kept.
 */
public interface KeptResults {

  /** Keeps nothing. */
  KeptResults NONE =
      new KeptResults() {
        @Override
        public Optional<byte[]> read(String name) {
          return Optional.empty();
        }

        @Override
        public List<String> newestFirst() {
          return List.of();
        }

        @Override
        public void keep(String name, byte[] bytes) {
          // there is nowhere to keep it
        }
      };

  /** A kept result by its name: small letters and digits. */
  Optional<byte[]> read(String name);

  /** Names of what is kept, the newest first. */
  List<String> newestFirst();

  /** Keeps a result and lets the oldest go; a disk that does not take it is no trouble. */
  void keep(String name, byte[] bytes);
}
