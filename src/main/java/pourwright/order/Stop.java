package pourwright.order;

import org.jspecify.annotations.Nullable;

/** Carries a refusal out of the reading; caught at its one door, {@link OrderFile}. */
final class Stop extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient OrderImport outcome;

  private Stop(OrderImport outcome) {
    super(null, null, false, false);
    this.outcome = outcome;
  }

  OrderImport outcome() {
    return outcome;
  }

  static Stop unreadable(String reason, String hint) {
    return new Stop(new OrderImport.Unreadable(reason, hint));
  }

  static Stop ambiguous(OrderImport.Question question) {
    return new Stop(new OrderImport.Ambiguous(java.util.List.of(question), java.util.List.of()));
  }

  static Stop bad(OrderImport.@Nullable Detected detected, long line, String reason) {
    OrderImport.Detected shown =
        detected != null
            ? detected
            : new OrderImport.Detected("CSV", "", "", "", "", java.util.Map.of(), 0);
    return new Stop(
        new OrderImport.Bad(shown, java.util.List.of(new OrderImport.BadLine(line, reason))));
  }
}
