package pourwright.main;

/** A setting that cannot be what it is. */
final class BadSetting extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BadSetting(String sentence) {
    super(sentence);
  }
}
