package pourwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import pourwright.solve.CpSatLeftoverPacking;
import pourwright.solve.CpSatPurchasing;

/** All headless computations with their documents under {@code docs/compute}. */
final class EveryComputation {
  static final Computations ALL =
      SolveComputations.addTo(
          Computations.ofTheCraft(), CpSatLeftoverPacking::new, CpSatPurchasing::new);

  private EveryComputation() {}

  static Computation named(String name) {
    Computation computation = ALL.named(name);
    if (computation == null) {
      throw new IllegalStateException("no computation is named " + name);
    }
    return computation;
  }

  static JsonNode read(String name, String file) throws IOException {
    Path path = Path.of("docs/compute", name, file + ".json");
    return new ObjectMapper().readTree(Files.readString(path));
  }
}
