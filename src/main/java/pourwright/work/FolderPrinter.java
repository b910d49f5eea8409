package pourwright.work;

import java.time.LocalDate;
import java.util.ServiceLoader;
import pourwright.label.LabelText;

/** Prints proof folders; paper knows how. */
public interface FolderPrinter {
  /**
   * One issue of a folder.
   *
   * @param version of the folder, from 1
   * @param day when it is issued
   * @param by initials
   */
  record Issue(int version, LocalDate day, String by) {}

  /**
   * The folder as PDF.
   *
   * @param label its label, drawn true to size
   * @param widthMm of the label
   * @param heightMm of the label
   * @throws pourwright.quantity.OutOfRange when the label's text does not fit
   */
  byte[] print(ProofFolder folder, Issue issue, LabelText label, double widthMm, double heightMm);

  /** The printer that the house has. */
  static FolderPrinter ofTheHouse() {
    return ServiceLoader.load(FolderPrinter.class)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no printer of folders is in the house"));
  }
}
