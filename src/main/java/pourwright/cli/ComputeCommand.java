package pourwright.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pourwright.quantity.OutOfRange;

/**
 * {@code compute NAME < in.json > out.json}, with {@code --list}, {@code --lines}, {@code
 * --strict}.
 */
public final class ComputeCommand {
  /** Computed. */
  public static final int OK = 0;

  /** A bug or a broken pipe. */
  public static final int FAILED = 1;

  /** Usage or refused input. */
  public static final int REFUSED = 2;

  /** Computed, but a limit of the trade is exceeded and {@code --strict} was asked for. */
  public static final int WARNED = 3;

  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private final Computations computations;
  private final PrintStream out;
  private final PrintStream err;

  /** A command that answers on {@code out} and refuses on {@code err}. */
  public ComputeCommand(Computations computations, PrintStream out, PrintStream err) {
    this.computations = computations;
    this.out = out;
    this.err = err;
  }

  /** Runs with the words after {@code compute}; returns the exit code. */
  public int run(List<String> words, InputStream in) throws IOException {
    List<String> rest = new ArrayList<>(words);
    boolean strict = rest.remove("--strict");
    boolean lines = rest.remove("--lines");
    if (rest.remove("--list")) {
      computations.names().forEach(out::println);
      return OK;
    }
    Optional<String> flag = rest.stream().filter(w -> w.startsWith("--")).findFirst();
    if (flag.isPresent() || rest.size() != 1) {
      String what = flag.map(f -> "'" + f + "' is not an option").orElse("one name is needed");
      return refuse(new RefusedInput(what, "", "compute NAME [--strict] [--lines], or --list"));
    }
    Computation computation = computations.named(rest.get(0));
    if (computation == null) {
      return refuse(
          new RefusedInput(
              "'" + rest.get(0) + "' is not a computation", "", "known: " + computations.names()));
    }
    return lines ? answerLines(computation, strict, in) : answerOne(computation, strict, in);
  }

  private int answerOne(Computation computation, boolean strict, InputStream in)
      throws IOException {
    try {
      ObjectNode answer = answer(computation, parse(in.readAllBytes()));
      out.println(JSON.writerWithDefaultPrettyPrinter().writeValueAsString(answer));
      return strict && warned(answer) ? WARNED : OK;
    } catch (RefusedInput e) {
      return refuse(e);
    }
  }

  private int answerLines(Computation computation, boolean strict, InputStream in)
      throws IOException {
    int worst = OK;
    BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      if (line.isBlank()) {
        continue;
      }
      ObjectNode answer;
      try {
        answer = answer(computation, parse(line.getBytes(StandardCharsets.UTF_8)));
        worst = Math.max(worst, strict && warned(answer) ? WARNED : OK);
      } catch (RefusedInput e) {
        answer = refusal(e);
        worst = worst == OK ? REFUSED : worst;
      }
      out.println(JSON.writeValueAsString(answer));
    }
    out.flush();
    return worst;
  }

  /** Answers one parsed request, with the ranges of the results where inputs are uncertain. */
  static ObjectNode answer(Computation computation, JsonNode request) {
    JsonIn in = JsonIn.of(request);
    ObjectNode answer = once(computation, in);
    if (!in.uncertain().isEmpty()) {
      Ranges.add(computation, request, in.uncertain(), answer);
    }
    return answer;
  }

  static ObjectNode once(Computation computation, JsonIn in) {
    ObjectNode answer = JsonNodeFactory.instance.objectNode();
    try {
      computation.compute(in, answer);
    } catch (OutOfRange e) {
      throw in.refuse(e);
    }
    in.finish();
    return answer;
  }

  private static boolean warned(ObjectNode answer) {
    return answer.path("warnings").size() > 0;
  }

  private static JsonNode parse(byte[] bytes) throws IOException {
    try {
      JsonNode request = JSON.readTree(bytes);
      if (request == null || request.isMissingNode()) {
        throw new RefusedInput("the request is empty", "", "send one JSON object on stdin");
      }
      return request;
    } catch (JsonProcessingException e) {
      throw new RefusedInput(
          "the request is not JSON: " + e.getOriginalMessage(),
          "",
          "see line " + e.getLocation().getLineNr() + ", column " + e.getLocation().getColumnNr());
    }
  }

  private static ObjectNode refusal(RefusedInput refused) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("error", refused.getMessage());
    node.put("at", refused.at());
    node.put("hint", refused.hint());
    return node;
  }

  private int refuse(RefusedInput refused) {
    err.println(refusal(refused));
    return REFUSED;
  }

  /** For {@code Arrays} callers: runs with an argument array. */
  public int run(String[] words, InputStream in) throws IOException {
    return run(Arrays.asList(words), in);
  }
}
