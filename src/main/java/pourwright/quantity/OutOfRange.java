package pourwright.quantity;

/**
 * An input that cannot be: what is wrong, in which field, and what to do. Thrown by constructors of
 * the craft; the pages and the headless commands turn it into a sentence for a person.
 */
public final class OutOfRange extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String field;
  private final String hint;

  /**
   * @param field name of the field as the headless contract writes it, unit included
   * @param message what is wrong, a sentence without a full stop
   * @param hint what to do about it
   */
  public OutOfRange(String field, String message, String hint) {
    super(message);
    this.field = field;
    this.hint = hint;
  }

  /** The field's name as the headless contract writes it. */
  public String field() {
    return field;
  }

  /** What to do about it. */
  public String hint() {
    return hint;
  }

  /** What is wrong, never null. */
  public String sentence() {
    return String.valueOf(getMessage());
  }
}
