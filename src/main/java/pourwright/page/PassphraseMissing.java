package pourwright.page;

/** The studio was to be shared with other devices, but nobody has set a passphrase. */
public final class PassphraseMissing extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Says what to do. */
  public PassphraseMissing() {
    super(
        "other devices may only come in with a passphrase, and none is set: "
            + "run 'pourwright passphrase' once, then start again");
  }
}
