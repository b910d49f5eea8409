package pourwright.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Writes {@code example-out.json} of the named computations from their {@code example-in.json}; run
 * by hand when a computation has changed on purpose: {@code main(NAME…)}.
 */
final class WriteComputeExamples {
  private WriteComputeExamples() {}

  public static void main(String[] names) throws IOException {
    ObjectMapper json = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    for (String name : names) {
      var answer =
          ComputeCommand.answer(
              EveryComputation.named(name), EveryComputation.read(name, "example-in"));
      Files.writeString(
          Path.of("docs/compute", name, "example-out.json"),
          json.writeValueAsString(answer) + "\n");
    }
  }
}
