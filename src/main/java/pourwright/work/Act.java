package pourwright.work;

/**
 * Who does something, and by which request: every deed is asked for with one of these.
 *
 * @param by initials of the person, not blank
 * @param requestKey unique for each form or tap; the same key again gets the first outcome back
 * @param note what the person said about it, may be empty
 */
public record Act(String by, String requestKey, String note) {

  /** Checks that somebody asks. */
  public Act {
    if (by.isBlank() || requestKey.isBlank()) {
      throw new IllegalArgumentException("an act needs initials and a request key");
    }
  }

  /** An act without a note. */
  public static Act of(String by, String requestKey) {
    return new Act(by, requestKey, "");
  }
}
