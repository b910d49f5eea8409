package pourwright.card;

import java.util.Locale;

/** The drawers of cards. Materials have a drawer too, though they live in their own room. */
public enum CardKind {
  /** Powders, waxes, wicks and all else that is bought. */
  MATERIAL,
  /** Silicone molds. */
  MOLD,
  /** Vessels: outside, cavity, wall. */
  VESSEL,
  /** What a cast is mixed from. */
  MIX,
  /** From demold to tight: sanding, drying, coats. */
  FINISH,
  /** Wax blend, fragrance and temperatures of a pour. */
  POUR,
  /** A vessel with what is poured into it. */
  CANDLE,
  /** Scales and thermometers. */
  INSTRUMENT,
  /** Who works here. */
  PERSON,
  /** Where materials come from. */
  SUPPLIER;

  /** The drawer's name in the store and in addresses. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The drawer of that key, null where there is none. */
  public static @org.jspecify.annotations.Nullable CardKind ofKey(String key) {
    for (CardKind kind : values()) {
      if (kind.key().equals(key)) {
        return kind;
      }
    }
    return null;
  }
}
