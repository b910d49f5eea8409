package pourwright.order;

/** Where an order is on its way. */
public enum OrderState {
  /** To be made or picked. */
  OPEN("open"),
  /** Every piece is picked and boxed. */
  PICKED("picked"),
  /** Gone. */
  SENT("sent"),
  /** Not wanted any more. */
  CANCELLED("cancelled");

  private final String words;

  OrderState(String words) {
    this.words = words;
  }

  /** The state as it is shown. */
  public String words() {
    return words;
  }

  /** True while pieces must still be made or kept for it. */
  public boolean wantsPieces() {
    return this == OPEN || this == PICKED;
  }
}
