package pourwright.work;

/** Why a deed was refused, each a sentence of the house. */
public enum Reason {
  /** The request key was used before, for something else. */
  REQUEST_KEY_BELONGS_TO_ANOTHER_DEED,
  /** No such thing in the books. */
  NOT_ON_FILE,
  /** The code is taken. */
  ALREADY_ON_FILE,
  /** A draw or count would leave less than nothing. */
  LOT_WOULD_GO_NEGATIVE,
  /** The amount is of another kind than the lot. */
  AMOUNT_IS_OF_ANOTHER_KIND,
  /** An amount must be above zero. */
  AMOUNT_MUST_BE_POSITIVE,
  /** Somebody's hold is on it. */
  IT_IS_HELD,
  /** The batch is closed. */
  BATCH_IS_FINISHED,
  /** The piece cannot make that move. */
  PIECE_IS_NOT_THERE_YET,
  /** No word for sale stands behind the candle. */
  NOT_PROVED_FOR_SALE,
  /** The vessel was not proved tight. */
  VESSEL_IS_NOT_PROVED_TIGHT,
  /** Another version was saved in the meantime. */
  CARD_WAS_CHANGED_MEANWHILE,
  /** Later deeds stand on this one. */
  LATER_DEEDS_STAND_ON_IT,
  /** The deed is already taken back, or is not. */
  DEED_IS_ALREADY_UNDONE,
  /** What was given cannot be. */
  INPUT_CANNOT_BE,
  /** Only a maker does that. */
  A_MAKER_IS_NEEDED,
  /** A name or a reason is missing. */
  A_NAME_IS_NEEDED,
  /** The price is in another currency than the studio's. */
  PRICE_IS_IN_ANOTHER_CURRENCY,
  /** Somebody answered before. */
  IT_IS_ALREADY_ANSWERED,
  /** What one looked at was changed meanwhile by somebody else. */
  IT_WAS_CHANGED_MEANWHILE,
  /** The books of that day are closed. */
  DAY_IS_CLOSED,
  /** Some lines of the file are bad. */
  FILE_HAS_BAD_LINES
}
