package pourwright.work;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.Carried;
import pourwright.batch.RecordedStep;

/** Casts and pours and their recorded steps. */
public interface BatchBook {

  /** The number that the next batch gets. */
  long nextId();

  /** A batch by number; those of undone deeds are not on file. */
  Optional<Batch> batch(long id);

  /** Batches newest first, of one kind when it is given. */
  PageOf<Batch> list(@Nullable BatchKind kind, @Nullable String after, int limit);

  /** Batches that are being worked on, oldest first. */
  List<Batch> running();

  /** Recorded steps in the order of writing, those of undone deeds left out. */
  List<RecordedStep> steps(long batch);

  /** The newest deed that began or finished a batch; 0 where there is none. */
  long newestDeed();

  /** When a step was recorded. */
  record StepTime(String key, java.time.Instant at) {}

  /** When the steps of some batches were recorded, in the order of writing. */
  java.util.Map<Long, List<StepTime>> stepTimes(List<Long> batches);

  /** The step that a deed recorded. */
  Optional<RecordedStep> stepOf(long deed);

  /** All that was carried from one pour into another, in the order of writing. */
  List<Carried> carried();

  /** What went from one pour into others, and what others gave it. */
  List<Carried> carried(long batch);

  /** What a deed carried. */
  Optional<Carried> carriedBy(long deed);

  /** Adds what was carried under the next number and gives it back. Only inside a write. */
  Carried append(Carried carried);

  /** Adds a batch. Only inside a write. */
  void add(Batch batch);

  /** Adds a recorded step under the next number and gives it back. Only inside a write. */
  RecordedStep append(RecordedStep step);

  /** Closes a batch. Only inside a write. */
  void finish(long batch, Deed deed);
}
