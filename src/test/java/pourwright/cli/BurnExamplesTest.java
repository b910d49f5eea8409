package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The written-down examples of the burn computations are what the program answers. */
class BurnExamplesTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private record Answer(int exit, String out, String err) {}

  private static Answer compute(String name, String request) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exit =
        new ComputeCommand(
                Computations.ofTheCraft(),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8))
            .run(
                new String[] {name},
                new ByteArrayInputStream(request.getBytes(StandardCharsets.UTF_8)));
    return new Answer(
        exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  private static String example(String name, String file) throws IOException {
    return Files.readString(Path.of("docs/compute", name, file));
  }

  @ParameterizedTest
  @ValueSource(strings = {"burn", "melt-front", "verdict"})
  void theExampleIsWhatTheProgramAnswers(String name) throws IOException {
    Answer answer = compute(name, example(name, "example-in.json"));
    assertThat(answer.err()).isEmpty();
    assertThat(answer.exit()).isZero();
    JsonNode said = JSON.readTree(answer.out());
    JsonNode written = JSON.readTree(example(name, "example-out.json"));
    assertThat(differences(said, written, "")).isEmpty();
  }

  /** Where two answers differ by more than rounding; times and rounding errors may. */
  private static String differences(JsonNode a, JsonNode b, String at) {
    if (at.endsWith("/seconds") || at.endsWith("_error_fraction")) {
      return "";
    }
    if (a.isNumber() && b.isNumber()) {
      double far = Math.abs(a.doubleValue() - b.doubleValue());
      return far <= 1e-6 * Math.max(1, Math.abs(b.doubleValue())) ? "" : at + " ";
    }
    if (a.isContainerNode() && a.size() == b.size()) {
      StringBuilder found = new StringBuilder();
      if (a.isArray()) {
        for (int i = 0; i < a.size(); i++) {
          found.append(differences(a.get(i), b.get(i), at + "/" + i));
        }
      } else {
        a.properties()
            .forEach(
                e ->
                    found.append(
                        differences(e.getValue(), b.path(e.getKey()), at + "/" + e.getKey())));
      }
      return found.toString();
    }
    return a.equals(b) ? "" : at + " ";
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "burn|\"hours\":4|\"hours\":\"4\"|/hours",
        "burn|\"hours\":4|\"hours\":-4|/hours",
        "burn|\"hours\":4|\"hours\":4,\"minutes\":3|/minutes",
        "burn|\"solver\":\"auto\"|\"solver\":\"best\"|/solver",
        "burn|\"fill_height_mm\":65|\"fill_height_mm\":95|/fill_height_mm",
        "burn|\"room_c\":21|\"room_c\":51|/room_c",
        "burn|\"x_mm\":0|\"x_mm\":60|/wicks/0",
        "burn|\"latent_j_per_kg\":190000|\"latent_j_per_kg\":0|/wax/latent_j_per_kg",
        "burn|\"emissivity\":0.9|\"emissivity\":9|/vessel/emissivity",
        "melt-front|\"surface_c\":80|\"surface_c\":50|/surface_c",
        "melt-front|\"initial_c\":20|\"initial_c\":60|/initial_c",
        "melt-front|\"melt_to_c\":55|\"melt_to_c\":50|/wax/melt_to_c",
        "verdict|\"rules\":\"house\"|\"rules\":\"none\"|/rules"
      })
  void whatCannotBeIsRefusedWhereItStands(String name, String from, String to, String at)
      throws IOException {
    String tight = JSON.readTree(example(name, "example-in.json")).toString();
    assertThat(tight).contains(from);
    Answer answer = compute(name, tight.replace(from, to));
    assertThat(answer.exit()).isEqualTo(2);
    assertThat(answer.out()).isEmpty();
    assertThat(JSON.readTree(answer.err()).path("at").asText()).isEqualTo(at);
    assertThat(JSON.readTree(answer.err()).path("hint").asText()).isNotEmpty();
  }

  @Test
  void aBurnWithoutACalibrationSaysThatItJudgesNoCandle() throws IOException {
    JsonNode answer = JSON.readTree(compute("burn", example("burn", "example-in.json")).out());
    assertThat(answer.path("calibrated").booleanValue()).isFalse();
    assertThat(answer.path("warnings").toString()).contains("not for judging a candle");
  }

  @Test
  void ownRulesAreJudgedByToo() throws IOException {
    String own =
        """
        {"rules":{"limits":[{"rule":"low flame","reading":"flame_height_mm","limit":40}],
        "samples_min":1},
        "samples":[{"cycles":[{"readings":[{"minute":60,"flame_height_mm":%s}]}],"ended":true}]}
        """;
    assertThat(compute("verdict", own.formatted("40")).out()).contains("\"pass\"");
    assertThat(compute("verdict", own.formatted("40.5")).out()).contains("\"fail\"");
  }
}
