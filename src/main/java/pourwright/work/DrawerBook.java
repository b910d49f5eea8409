package pourwright.work;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What she has written down: cards in versions that are added and never changed. */
public interface DrawerBook {

  /** The version that counts now. */
  <T> Optional<CardVersion<T>> current(Drawer<T> kind, String code);

  /** A given version, whether it counts now or not; batches point at these. */
  <T> Optional<CardVersion<T>> version(Drawer<T> kind, String code, int version);

  /** Current cards by code, the retired left out. */
  <T> PageOf<CardVersion<T>> list(Drawer<T> kind, @Nullable String after, int limit);

  /** Cards of a kind that were put away, by code, each as it was last. */
  <T> List<CardVersion<T>> putAway(Drawer<T> kind);

  /** All current cards of a kind by code, the retired left out. */
  <T> List<CardVersion<T>> all(Drawer<T> kind);

  /** All versions of one card, newest first, those of undone deeds left out. */
  <T> List<CardVersion<T>> history(Drawer<T> kind, String code);

  /**
   * Something that is worked out of the current cards and of nothing else.
   *
   * @param name what it is
   * @param work how; what it gives never changes after
   */
  record Worked<T>(String name, Function<DrawerBook, T> work) {}

  /** What is worked out of the current cards; done once as long as they stay as they are. */
  <T> T workedOut(Worked<T> what);

  /** A word that changes whenever what counts of the cards changes. */
  String edition();

  /** The highest version number ever given out, 0 for a new code. */
  int lastVersion(Drawer<?> kind, String code);

  /** Adds a version. Only inside a write. */
  <T> void append(CardVersion<T> version);
}
