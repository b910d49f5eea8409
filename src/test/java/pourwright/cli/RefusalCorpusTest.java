package pourwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every computation refuses what it cannot compute with exit code 2 and one JSON line that says
 * what is wrong, where, and what to do. The bad requests are made from its worked example.
 */
class RefusalCorpusTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  static Collection<String> names() {
    return EveryComputation.ALL.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void anUnknownFieldIsRefusedByName(String name) throws IOException {
    ObjectNode request = example(name);
    request.put("no_such_field", 1);
    assertThat(refusal(name, request.toString()).path("at").asText()).isEqualTo("/no_such_field");
  }

  @ParameterizedTest
  @MethodSource("names")
  void aNumberThatIsATextIsRefusedWhereItStands(String name) throws IOException {
    for (String pointer : numbers(example(name))) {
      ObjectNode request = example(name);
      replace(request, pointer, "\"12 g\"");
      assertThat(refusal(name, request.toString()).path("at").asText()).isEqualTo(pointer);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void aNumberThatIsNoneOrWithoutEndIsRefused(String name) throws IOException {
    for (String pointer : numbers(example(name))) {
      for (String bad : List.of("NaN", "1e999", "-1e999", "Infinity", "[]", "{}")) {
        ObjectNode request = example(name);
        replace(request, pointer, "\"@@\"");
        refusal(name, request.toString().replace("\"@@\"", bad));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void aNegativeNumberIsRefusedWhereItsSchemaSaysSo(String name) throws IOException {
    JsonNode schema = EveryComputation.read(name, "schema-in");
    for (String pointer : numbers(example(name))) {
      JsonNode of = schemaOf(schema, pointer);
      if (of.path("minimum").asDouble(-1) >= 0 || of.path("exclusiveMinimum").asDouble(-1) >= 0) {
        ObjectNode request = example(name);
        replace(request, pointer, "-1");
        refusal(name, request.toString());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void aRequiredFieldThatIsMissingIsNamed(String name) throws IOException {
    for (JsonNode required : EveryComputation.read(name, "schema-in").path("required")) {
      ObjectNode request = example(name);
      request.remove(required.asText());
      assertThat(refusal(name, request.toString()).path("at").asText())
          .isEqualTo("/" + required.asText());
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void whatIsNoRequestAtAllIsRefused(String name) throws IOException {
    for (String bad : List.of("", "null", "[]", "12", "\"x\"", "{", "{}{}", "{\"a\":1,\"a\":2}")) {
      refusal(name, bad);
    }
  }

  private static ObjectNode example(String name) throws IOException {
    return (ObjectNode) EveryComputation.read(name, "example-in");
  }

  private static JsonNode refusal(String name, String request) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        new ComputeCommand(EveryComputation.ALL, stream(out), stream(err))
            .run(List.of(name), new ByteArrayInputStream(request.getBytes(StandardCharsets.UTF_8)));
    String line = err.toString(StandardCharsets.UTF_8);
    assertThat(code).as(name + " with " + request).isEqualTo(ComputeCommand.REFUSED);
    assertThat(out.size()).isZero();
    assertThat(line.strip().lines()).hasSize(1);
    JsonNode refusal = JSON.readTree(line);
    assertThat(refusal.path("error").asText()).isNotBlank();
    assertThat(refusal.path("hint").asText()).isNotBlank();
    assertThat(refusal.path("at").isTextual()).isTrue();
    return refusal;
  }

  private static PrintStream stream(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, true, StandardCharsets.UTF_8);
  }

  /** Pointers to all numbers of a request. */
  private static List<String> numbers(JsonNode node) {
    List<String> pointers = new ArrayList<>();
    collect(node, "", pointers);
    return pointers;
  }

  private static void collect(JsonNode node, String at, List<String> into) {
    if (node.isNumber()) {
      into.add(at);
    } else if (node instanceof ObjectNode object) {
      object.properties().forEach(e -> collect(e.getValue(), at + "/" + e.getKey(), into));
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        collect(array.get(i), at + "/" + i, into);
      }
    }
  }

  private static void replace(ObjectNode request, String pointer, String json) throws IOException {
    int cut = pointer.lastIndexOf('/');
    JsonNode parent = request.at(pointer.substring(0, cut));
    String last = pointer.substring(cut + 1);
    JsonNode value =
        json.startsWith("\"")
            ? new TextNode(json.substring(1, json.length() - 1))
            : JSON.readTree(json);
    if (parent instanceof ObjectNode object) {
      object.set(last, value);
    } else if (parent instanceof ArrayNode array) {
      array.set(Integer.parseInt(last), value);
    }
  }

  /** The part of a schema that speaks of a pointer; missing where it cannot be followed. */
  private static JsonNode schemaOf(JsonNode schema, String pointer) {
    JsonNode at = schema;
    for (String step : pointer.substring(1).split("/", -1)) {
      if (at.has("$ref")) {
        at = schema.at(at.path("$ref").asText().substring(1));
      }
      boolean index = !step.isEmpty() && step.chars().allMatch(Character::isDigit);
      at = index && at.has("items") ? at.path("items") : at.path("properties").path(step);
    }
    return at;
  }
}
