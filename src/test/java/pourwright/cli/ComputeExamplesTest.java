package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What {@code docs/compute} says of every headless computation is what the program does. */
class ComputeExamplesTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Path DOCS = Path.of("docs/compute");

  /** Measured, not computed: left out of the comparison. */
  private static final Set<String> MEASURED = Set.of("seconds");

  /** A long simulation may differ in the last digits between machines. */
  private static final Set<String> LONG = Set.of("burn", "melt-front");

  static Collection<String> names() {
    return EveryComputation.ALL.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void theWorkedExampleIsTrueAndFitsItsSchemas(String name) throws IOException {
    JsonNode request = EveryComputation.read(name, "example-in");
    fits(name, "schema-in", request);
    Computation computation = EveryComputation.named(name);
    JsonNode answer = JSON.readTree(ComputeCommand.answer(computation, request).toString());
    fits(name, "schema-out", answer);
    List<String> unlike = new ArrayList<>();
    compare(
        EveryComputation.read(name, "example-out"),
        answer,
        name,
        LONG.contains(name) ? 1e-4 : 1e-9,
        unlike);
    assertThat(unlike).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("names")
  void theSchemaOfTheRequestRefusesWhatItDoesNotKnow(String name) throws IOException {
    JsonNode schema = EveryComputation.read(name, "schema-in");
    assertThat(schema.path("$schema").asText()).contains("2020-12");
    JsonNode request =
        ((com.fasterxml.jackson.databind.node.ObjectNode) EveryComputation.read(name, "example-in"))
            .put("no_such_field", 1);
    assertThat(schema(name, "schema-in").validate(request)).isNotEmpty();
  }

  @Test
  void noFolderDescribesAComputationThatIsNotThere() throws IOException {
    try (var folders = Files.list(DOCS)) {
      List<String> unknown =
          folders
              .filter(Files::isDirectory)
              .map(f -> String.valueOf(f.getFileName()))
              .filter(n -> !names().contains(n))
              .toList();
      assertThat(unknown).isEmpty();
    }
  }

  @Test
  void theComparisonNoticesAWrongDigit() throws IOException {
    List<String> unlike = new ArrayList<>();
    compare(JSON.readTree("{\"a\":[1.0]}"), JSON.readTree("{\"a\":[1.000001]}"), "", 1e-9, unlike);
    compare(JSON.readTree("{\"a\":1}"), JSON.readTree("{\"a\":1,\"b\":2}"), "", 1e-9, unlike);
    assertThat(unlike).hasSize(2);
  }

  private static JsonSchema schema(String name, String file) throws IOException {
    return JsonSchemaFactory.getInstance(VersionFlag.V202012)
        .getSchema(EveryComputation.read(name, file));
  }

  private static void fits(String name, String file, JsonNode document) throws IOException {
    assertThat(schema(name, file).validate(document)).as(name + " " + file).isEmpty();
  }

  private static void compare(
      JsonNode wanted, JsonNode got, String at, double tolerance, List<String> unlike) {
    if (wanted.isNumber() && got.isNumber()) {
      double a = wanted.doubleValue();
      double b = got.doubleValue();
      if (Math.abs(a - b) > tolerance * Math.max(1e-9, Math.max(Math.abs(a), Math.abs(b)))) {
        unlike.add(at + ": " + a + " is written, " + b + " is computed");
      }
    } else if (wanted.isObject() && got.isObject()) {
      Iterator<String> fields = wanted.fieldNames();
      while (fields.hasNext()) {
        String field = fields.next();
        if (!MEASURED.contains(field)) {
          compare(wanted.path(field), got.path(field), at + "/" + field, tolerance, unlike);
        }
      }
      got.fieldNames()
          .forEachRemaining(
              field -> {
                if (!wanted.has(field)) {
                  unlike.add(at + "/" + field + ": is not written");
                }
              });
    } else if (wanted.isArray() && got.isArray() && wanted.size() == got.size()) {
      for (int i = 0; i < wanted.size(); i++) {
        compare(wanted.get(i), got.get(i), at + "/" + i, tolerance, unlike);
      }
    } else if (!wanted.equals(got)) {
      unlike.add(at + ": " + wanted + " is written, " + got + " is computed");
    }
  }

  /** By hand: 600 g at 8 % on the total is 48 g of fragrance. */
  @Test
  void theExampleOfADoseIsTheOneOfTheManual() throws IOException {
    JsonNode out = EveryComputation.read("dose", "example-out");
    assertThat(out.path("fragrance_g").doubleValue()).isCloseTo(48, within(1e-9));
  }
}
