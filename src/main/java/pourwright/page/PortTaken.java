package pourwright.page;

/** No port of those tried is free. */
public final class PortTaken extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** Says which ports were tried. */
  public PortTaken(String message) {
    super(message);
  }
}
