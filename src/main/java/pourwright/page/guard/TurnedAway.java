package pourwright.page.guard;

/** A request that is not let in: the status to answer with and sentences for the person. */
public final class TurnedAway extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int status;
  private final String headline;
  private final String detail;

  /**
   * @param status the HTTP status
   * @param headline what happened, one sentence
   * @param detail what is safe and what to do
   */
  public TurnedAway(int status, String headline, String detail) {
    super(headline);
    this.status = status;
    this.headline = headline;
    this.detail = detail;
  }

  /** The HTTP status. */
  public int status() {
    return status;
  }

  /** What happened. */
  public String headline() {
    return headline;
  }

  /** What is safe and what to do. */
  public String detail() {
    return detail;
  }
}
