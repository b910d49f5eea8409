package pourwright.order;

/** One cell that cannot be read; becomes the reason of a bad line. */
final class Unfit extends Exception {
  private static final long serialVersionUID = 1L;

  Unfit(String reason) {
    super(reason, null, false, false);
  }

  String reason() {
    return String.valueOf(getMessage());
  }
}
