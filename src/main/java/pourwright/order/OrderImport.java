package pourwright.order;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What came of reading an order file. All of it can be imported, or nothing. */
public sealed interface OrderImport {

  /**
   * How the file was read, to be shown before anything is taken.
   *
   * @param format CSV or XLSX
   * @param encoding of the text, or the name of the worksheet
   * @param delimiter in words
   * @param decimal the decimal mark, or that none was needed
   * @param dates the date format, or that none was needed
   * @param map column name of each field found
   * @param rows rows below the header
   */
  record Detected(
      String format,
      String encoding,
      String delimiter,
      String decimal,
      String dates,
      Map<ImportField, String> map,
      int rows) {}

  /**
   * One line that can be imported.
   *
   * @param lineNumber in the file, from 1
   * @param line what it says
   * @param channel where it came from, null where no column says
   * @param customer who wants it, null where no column says
   */
  record Read(
      long lineNumber, OrderLine line, @Nullable String channel, @Nullable String customer) {}

  /**
   * A line that cannot be imported.
   *
   * @param lineNumber in the file, from 1
   * @param reason what is wrong with it
   */
  record BadLine(long lineNumber, String reason) {}

  /**
   * Something that can be read in more than one way.
   *
   * @param about what must be said: delimiter, decimal, dates, encoding, sheet or the word of a
   *     field
   * @param sentence what was found
   * @param answers what can be answered
   */
  record Question(String about, String sentence, List<String> answers) {}

  /**
   * Every line can be read in exactly one way.
   *
   * @param detected how it was read
   * @param lines all lines
   * @param notes what is worth a look: repeated lines, dates taken from the line above
   * @param fingerprint of what the file says: the same orders give the same one, however written
   */
  record Ready(Detected detected, List<Read> lines, List<String> notes, String fingerprint)
      implements OrderImport {}

  /** Some lines are bad: nothing is imported until they are mended. */
  record Bad(Detected detected, List<BadLine> lines) implements OrderImport {}

  /** The file can be read in more than one way: nothing is imported until that is said. */
  record Ambiguous(List<Question> questions, List<BadLine> samples) implements OrderImport {}

  /** Not a file that orders can be read from. */
  record Unreadable(String reason, String hint) implements OrderImport {}
}
