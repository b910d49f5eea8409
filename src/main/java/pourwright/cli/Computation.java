package pourwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;

/** One headless computation: reads its fields from the request, writes its fields to the answer. */
@FunctionalInterface
public interface Computation {
  /**
   * Reads, calls the craft, writes. Every field is read before the craft is called, so that a
   * refusal names the field. Warnings of the trade go into the answer's {@code warnings} array.
   *
   * @throws RefusedInput when the request cannot be computed
   */
  void compute(JsonIn in, ObjectNode out);
}
