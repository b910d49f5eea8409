package pourwright.card;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pourwright.material.MaterialBook;
import pourwright.quantity.OutOfRange;

/** All cards by kind and code, with the materials that they name. */
public final class CardBook {
  private final MaterialBook materials;
  private final Map<CardKind, Map<String, Card>> cards;

  private CardBook(MaterialBook materials, Map<CardKind, Map<String, Card>> cards) {
    this.materials = materials;
    this.cards = Collections.unmodifiableMap(cards);
  }

  /**
   * A book of the given cards.
   *
   * @throws OutOfRange when a code stands twice among cards of a kind
   */
  public static CardBook of(MaterialBook materials, Collection<? extends Card> cards) {
    Map<CardKind, Map<String, Card>> byKind = new EnumMap<>(CardKind.class);
    for (Card card : cards) {
      Map<String, Card> drawer = byKind.computeIfAbsent(card.kind(), k -> new TreeMap<>());
      if (drawer.put(card.code(), card) != null) {
        throw new OutOfRange(
            card.kind().key(), "the code " + card.code() + " stands twice", "rename one");
      }
    }
    return new CardBook(materials, byKind);
  }

  /** The materials. */
  public MaterialBook materials() {
    return materials;
  }

  /** The card of that kind and code, where there is one. */
  public Optional<Card> find(CardKind kind, String code) {
    return Optional.ofNullable(cards.getOrDefault(kind, Map.of()).get(code));
  }

  /** All cards of a kind in the order of their codes. */
  public <T extends Card> List<T> all(Class<T> type) {
    List<T> found = new ArrayList<>();
    for (Map<String, Card> drawer : cards.values()) {
      drawer.values().stream().filter(type::isInstance).map(type::cast).forEach(found::add);
    }
    return found;
  }

  /** The vessel of that code. */
  public Vessel vessel(String code) {
    return get(CardKind.VESSEL, code, Vessel.class);
  }

  /** The mix card of that code. */
  public MixCard mix(String code) {
    return get(CardKind.MIX, code, MixCard.class);
  }

  /** The finish of that code. */
  public Finish finish(String code) {
    return get(CardKind.FINISH, code, Finish.class);
  }

  /** The pour card of that code. */
  public PourCard pour(String code) {
    return get(CardKind.POUR, code, PourCard.class);
  }

  /** The candle design of that code. */
  public CandleDesign candle(String code) {
    return get(CardKind.CANDLE, code, CandleDesign.class);
  }

  /** The molds that make a vessel. */
  public List<Mold> moldsFor(String vessel) {
    return all(Mold.class).stream().filter(m -> m.vessel().equals(vessel)).toList();
  }

  private <T extends Card> T get(CardKind kind, String code, Class<T> type) {
    return find(kind, code)
        .map(type::cast)
        .orElseThrow(
            () ->
                new OutOfRange(
                    kind.key(),
                    "there is no " + kind.key() + " card '" + code + "'",
                    "write it down on the drawing board first"));
  }
}
