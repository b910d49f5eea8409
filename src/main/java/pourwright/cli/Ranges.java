package pourwright.cli;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Ranges of results whose inputs are uncertain, to first order: each uncertain input is moved by
 * its uncertainty either way, half the difference is its share, shares are added in quadrature (see
 * {@link pourwright.quantity.FirstOrder}). Every number {@code y} of the answer that moved gets
 * {@code y_low} and {@code y_high} beside it.
 */
final class Ranges {
  private Ranges() {}

  static void add(
      Computation computation, JsonNode request, List<String> uncertain, ObjectNode answer) {
    Map<String, Double> base = numbers(answer);
    Map<String, Double> variance = new LinkedHashMap<>();
    for (String pointer : uncertain) {
      Map<String, Double> up = moved(computation, request, pointer, +1, base);
      Map<String, Double> down = moved(computation, request, pointer, -1, base);
      for (String at : base.keySet()) {
        Double high = up.get(at);
        Double low = down.get(at);
        if (high != null && low != null) {
          double share = (high - low) / 2;
          variance.merge(at, share * share, Double::sum);
        }
      }
    }
    variance.forEach(
        (at, v) -> {
          if (v > 0) {
            put(answer, at, base.getOrDefault(at, 0.0), Math.sqrt(v));
          }
        });
  }

  /** The answer's numbers with one input moved; the unmoved answer where the move is refused. */
  private static Map<String, Double> moved(
      Computation computation,
      JsonNode request,
      String pointer,
      int way,
      Map<String, Double> base) {
    JsonNode copy = request.deepCopy();
    JsonPointer at = JsonPointer.compile(pointer);
    JsonNode parent = copy.at(at.head());
    String name = at.last().getMatchingProperty();
    double value = copy.at(at).doubleValue();
    double relative = parent.path(name + "_relative_uncertainty").doubleValue();
    DoubleNode movedValue = DoubleNode.valueOf(value * (1 + way * relative));
    if (parent instanceof ObjectNode object) {
      object.set(name, movedValue);
    }
    try {
      return numbers(ComputeCommand.once(computation, JsonIn.of(copy)));
    } catch (RefusedInput e) {
      return base;
    }
  }

  private static Map<String, Double> numbers(JsonNode answer) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    collect(answer, "", numbers);
    return numbers;
  }

  private static void collect(JsonNode node, String path, Map<String, Double> into) {
    if (node instanceof ObjectNode object) {
      object.properties().forEach(e -> collect(e.getValue(), path + "/" + e.getKey(), into));
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        collect(array.get(i), path + "/" + i, into);
      }
    } else if (node.isNumber()) {
      into.put(path, node.doubleValue());
    }
  }

  private static void put(ObjectNode answer, String path, double value, double uncertainty) {
    List<String> steps = new ArrayList<>(List.of(path.substring(1).split("/", -1)));
    String name = steps.remove(steps.size() - 1);
    JsonNode parent = answer;
    for (String step : steps) {
      parent = parent.isArray() ? parent.path(Integer.parseInt(step)) : parent.path(step);
    }
    if (parent instanceof ObjectNode object) {
      object.put(name + "_low", value - uncertainty);
      object.put(name + "_high", value + uncertainty);
    }
  }
}
