package pourwright.cli;

/** A request that cannot be computed: what is wrong, where, and what to do. Exit code 2. */
public final class RefusedInput extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String at;
  private final String hint;

  /**
   * @param error what is wrong, in a sentence
   * @param at JSON pointer to the field, empty for the whole document
   * @param hint what to do
   */
  public RefusedInput(String error, String at, String hint) {
    super(error);
    this.at = at;
    this.hint = hint;
  }

  /** JSON pointer to the field. */
  public String at() {
    return at;
  }

  /** What to do. */
  public String hint() {
    return hint;
  }
}
