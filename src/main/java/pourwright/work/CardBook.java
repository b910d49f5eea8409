package pourwright.work;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What she has written down: cards in versions that are added and never changed. */
public interface CardBook {

  /** The version that counts now. */
  <T> Optional<CardVersion<T>> current(CardKind<T> kind, String code);

  /** A given version, whether it counts now or not; batches point at these. */
  <T> Optional<CardVersion<T>> version(CardKind<T> kind, String code, int version);

  /** Current cards by code, the retired left out. */
  <T> PageOf<CardVersion<T>> list(CardKind<T> kind, @Nullable String after, int limit);

  /** All current cards of a kind by code, the retired left out. */
  <T> List<CardVersion<T>> all(CardKind<T> kind);

  /** All versions of one card, newest first, those of undone deeds left out. */
  <T> List<CardVersion<T>> history(CardKind<T> kind, String code);

  /** The highest version number ever given out, 0 for a new code. */
  int lastVersion(CardKind<?> kind, String code);

  /** Adds a version. Only inside a write. */
  <T> void append(CardVersion<T> version);
}
