package pourwright.main;

import java.nio.file.Path;

/** Another Pourwright holds the data folder. */
final class FolderTaken extends RuntimeException {
  private static final long serialVersionUID = 1L;

  FolderTaken(Path folder, String address) {
    super(
        "the data folder "
            + folder
            + " is open in another Pourwright"
            + (address.isEmpty() ? "" : " at " + address)
            + "; stop that one first, or do it on its pages");
  }
}
