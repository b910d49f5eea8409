package pourwright.card;

/**
 * Something the maker has written down once and uses again. A card in its written form names other
 * cards and materials by code; its resolved form holds what they say.
 */
public sealed interface Card
    permits CandleDesign, Finish, Instrument, MixCard, Mold, Person, PourCard, Supplier, Vessel {
  /** Short and unique among cards of its kind: lower-case letters, digits and hyphens. */
  String code();

  /** What the maker calls it. */
  String name();

  /** Which drawer it stands in. */
  CardKind kind();
}
