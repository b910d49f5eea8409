package pourwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import pourwright.batch.Mark;
import pourwright.quantity.OutOfRange;

/** {@code trace-mark}: the mark of a number, or whether a mark is a valid one. */
final class TraceMarkComputation implements Computation {
  @Override
  public void compute(JsonIn in, ObjectNode out) {
    boolean number = in.has("number");
    if (number == in.has("mark")) {
      throw in.refuse(
          "number",
          number ? "number and mark are both given" : "neither number nor mark is given",
          "give exactly one of them");
    }
    if (number) {
      out.put("mark", mark(in));
      out.put("valid", true);
      return;
    }
    String typed = in.text("mark");
    String clean = Mark.cleaned(typed);
    out.put("mark", clean);
    out.put("valid", Mark.isValid(clean));
  }

  private static String mark(JsonIn in) {
    try {
      return Mark.ofBody(in.wholeText("number")).text();
    } catch (OutOfRange e) {
      throw in.refuse("number", e.sentence(), e.hint());
    }
  }
}
