package pourwright.batch;

/** What can happen to a piece. */
public enum PieceStep {
  /** Cast and demolded; always the first of a vessel. */
  CAST("cast"),
  /** Hardened damp. */
  HARDENED("hardened"),
  /** At constant mass. */
  DRIED("dried to constant mass"),
  /** A seal coat went on. */
  SEALED("sealed"),
  /** Got wet: rinsed, water test, rain. */
  WETTED("wetted"),
  /** Held water for a day; leaves the vessel damp. */
  HELD_WATER("proved water-tight"),
  /** Held scented wax without seeping. */
  HELD_WAX("proved wax-tight"),
  /** Failed a tightness test. */
  LEAKED("leaked"),
  /** Filled with scented wax for a seep test. */
  SEEP_TEST("filled for a seep test"),
  /** Poured as a candle. */
  POURED("poured"),
  /** Set, trimmed and put aside. */
  RESTING("put to rest"),
  /** Rested long enough. */
  RESTED("rested"),
  /** Given to the test shelf. */
  TESTED("taken for test"),
  /** Picked for an order line. */
  PICKED("picked"),
  /** Put back from an order line. */
  UNPICKED("put back"),
  /** Left with a buyer. */
  SOLD("sold"),
  /** Given away. */
  GIVEN("given away"),
  /** Came back from a buyer. */
  CAME_BACK("came back"),
  /** Cleared for a refill; goes on under a new mark. */
  REFILLED("cleared for a refill"),
  /** Sorted. */
  GRADED("graded"),
  /** Thrown away. */
  SCRAPPED("scrapped");

  private final String words;

  PieceStep(String words) {
    this.words = words;
  }

  /** The words a person reads. */
  public String words() {
    return words;
  }
}
