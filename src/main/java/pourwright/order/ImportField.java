package pourwright.order;

import java.util.List;
import java.util.Locale;
import pourwright.quantity.OutOfRange;

/** What a column of an order file can mean. */
public enum ImportField {
  /** The order's number or name. */
  ORDER(
      true,
      "order",
      "order no",
      "order no.",
      "order number",
      "order id",
      "order name",
      "bestellnummer",
      "bestellung",
      "auftrag",
      "commande",
      "numéro de commande",
      "pedido"),
  /** The candle. */
  DESIGN(
      true,
      "design",
      "candle",
      "item",
      "item name",
      "product",
      "product name",
      "article",
      "sku",
      "artikel",
      "produkt",
      "produit",
      "producto",
      "lineitem name"),
  /** How many. */
  QUANTITY(
      true,
      "quantity",
      "qty",
      "pieces",
      "pcs",
      "count",
      "menge",
      "anzahl",
      "stück",
      "quantité",
      "qté",
      "cantidad",
      "lineitem quantity"),
  /** The last day it may leave. */
  DUE(
      false,
      "due",
      "due date",
      "due on",
      "ship by",
      "deliver by",
      "needed by",
      "promised",
      "liefertermin",
      "versand bis",
      "livraison",
      "fecha de entrega"),
  /** Where the order came from. */
  CHANNEL(false, "channel", "source", "kanal", "canal"),
  /** Who wants it. */
  CUSTOMER(false, "customer", "buyer", "name of customer", "ship to", "kunde", "client", "cliente"),
  /** What she asked for. */
  NOTE(false, "note", "notes", "remark", "bemerkung", "remarque", "nota");

  private final boolean needed;
  private final List<String> usual;

  ImportField(boolean needed, String... usual) {
    this.needed = needed;
    this.usual = List.of(usual);
  }

  /** True for a column without which there is no order line. */
  public boolean needed() {
    return needed;
  }

  /** Column names that are taken for this field where nobody has said otherwise. */
  public List<String> usualNames() {
    return usual;
  }

  /** The word used in {@code --map}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Reads a word of {@code --map}.
   *
   * @throws OutOfRange when it is none
   */
  public static ImportField of(String word) {
    for (ImportField field : values()) {
      if (field.word().equalsIgnoreCase(word.strip())) {
        return field;
      }
    }
    throw new OutOfRange(
        "map",
        "'" + word + "' is not a field",
        "use order, design, quantity, due, channel, customer or note");
  }
}
