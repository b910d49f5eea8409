package pourwright.main;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pourwright.cli.ComputeCommand;

/** The headless commands that need the solver, as one calls them. */
class SolverCommandsTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int compute(String name, String request) throws IOException {
    ComputeCommand command = new ComputeCommand(Main.computations(), print(out), print(err));
    return command.run(
        List.of(name), new ByteArrayInputStream(request.getBytes(StandardCharsets.UTF_8)));
  }

  private static PrintStream print(ByteArrayOutputStream into) {
    return new PrintStream(into, true, StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(strings = {"leftover", "buy"})
  void theWorkedExampleIsWhatTheProgramAnswers(String name) throws IOException {
    Path folder = Path.of("docs/compute", name);
    assertThat(compute(name, Files.readString(folder.resolve("example-in.json")))).isZero();
    ObjectMapper json = new ObjectMapper();
    assertThat(json.readTree(out.toString(StandardCharsets.UTF_8)))
        .isEqualTo(json.readTree(Files.readString(folder.resolve("example-out.json"))));
  }

  @Test
  void aNeedThatNoOfferCoversIsRefusedWithTheMaterialsName() throws IOException {
    String request =
        """
        {"needs":[{"material":"Cold hearth","amount_g":300}],
         "offers":[{"material":"Cold hearth","supplier":"Tallow Row","pack_g":500,"price":9,
                    "available":false}],
         "suppliers":[{"supplier":"Tallow Row","shipping":4,"free_from":null}]}
        """;
    assertThat(compute("buy", request)).isEqualTo(ComputeCommand.REFUSED);
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("Cold hearth: 300 g is needed")
        .contains("\"at\":\"/needs/0\"");
  }

  @Test
  void aNumberOfPacksThatCanBeHadIsALimit() throws IOException {
    String request =
        """
        {"needs":[{"material":"wax","amount_g":300}],
         "offers":[{"material":"wax","supplier":"Tallow Row","pack_g":100,"price":1,"available":2},
                   {"material":"wax","supplier":"Tallow Row","pack_g":100,"price":5}],
         "suppliers":[]}
        """;
    assertThat(compute("buy", request)).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains("\"cost\" : 7.0")
        .contains("no shipping is given for Tallow Row");
  }
}
