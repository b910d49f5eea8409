package pourwright.main;

import java.io.PrintWriter;
import java.nio.file.Path;
import pourwright.work.Act;

/** The sample studio that the first start opens, in a folder of its own. */
final class SampleStudio {
  /** What it is called; invented, like everything in it. */
  static final String NAME = "Undercroft Lantern Works";

  private SampleStudio() {}

  /** Makes it in an empty folder. */
  static void make(Path folder, PrintWriter out) {
    out.println("Laying out the sample studio in " + folder + " …");
    out.flush();
    try (Wiring wiring = Wiring.open(folder, "", Wiring.systemClock())) {
      wiring.studio().saveSetting.run(Act.of("UL", "sample-name"), "studio.name", NAME);
    }
  }
}
