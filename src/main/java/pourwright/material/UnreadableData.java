package pourwright.material;

/** A data file with a line that cannot be read: the program does not start with half a book. */
public final class UnreadableData extends IllegalStateException {
  private static final long serialVersionUID = 1L;

  /**
   * @param file name of the file
   * @param line line number, from 1
   * @param column name of the column, or its number from 1
   * @param sentence what is wrong
   */
  public UnreadableData(String file, long line, String column, String sentence) {
    super(file + ", line " + line + ", column " + column + ": " + sentence);
  }
}
