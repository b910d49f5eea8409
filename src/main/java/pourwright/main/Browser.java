package pourwright.main;

import java.io.IOException;
import java.util.List;

/** Opens the studio in a browser where there is one and somebody to see it. */
final class Browser {
  private Browser() {}

  /** Whether a browser could be shown: a display, and no service manager that started us. */
  static boolean there(Machine machine) {
    boolean service = !machine.variable("INVOCATION_ID").isEmpty();
    boolean display =
        machine.windows()
            || machine.mac()
            || !machine.variable("DISPLAY").isEmpty()
            || !machine.variable("WAYLAND_DISPLAY").isEmpty();
    return display && !service;
  }

  /** Opens the address; says whether something was started. */
  static boolean open(Machine machine, String address) {
    List<String> command =
        machine.windows()
            ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
            : machine.mac() ? List.of("open", address) : List.of("xdg-open", address);
    try {
      new ProcessBuilder(command)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
