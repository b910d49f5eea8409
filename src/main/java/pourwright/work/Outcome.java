package pourwright.work;

/**
 * What comes of asking for a deed. A person's mistake is a {@link Refused}, never an exception;
 * nothing has been written then.
 *
 * @param <T> what the deed makes
 */
public sealed interface Outcome<T> {

  /**
   * It is in the books, on the disk.
   *
   * @param deed the deed
   * @param made what it made
   * @param repeated true when the same request had been done before and this is its first outcome
   */
  record Done<T>(Deed deed, T made, boolean repeated) implements Outcome<T> {}

  /**
   * It was not done.
   *
   * @param reason which rule
   * @param sentence what is wrong and where, for a person
   * @param hint what to do about it
   */
  record Refused<T>(Reason reason, String sentence, String hint) implements Outcome<T> {}

  /** A refusal. */
  static <T> Outcome<T> refused(Reason reason, String sentence, String hint) {
    return new Refused<>(reason, sentence, hint);
  }

  /** True when it was done. */
  default boolean isDone() {
    return this instanceof Done;
  }

  /** What was made; a bug when it was refused, so look first. */
  default T made() {
    if (this instanceof Done<T> done) {
      return done.made();
    }
    throw new IllegalStateException(toString());
  }

  /** The deed; a bug when it was refused, so look first. */
  default Deed deed() {
    if (this instanceof Done<T> done) {
      return done.deed();
    }
    throw new IllegalStateException(toString());
  }
}
