package pourwright.batch;

/** How good a piece came out. */
public enum Grade {
  /** For sale at full price. */
  FIRST,
  /** For sale with a blemish. */
  SECOND,
  /** Never for a flame: a planter, a dish. */
  PLANTER,
  /** For the bin or the crusher. */
  SCRAP
}
