package pourwright.work;

/**
 * A kind of card and the record that its body is.
 *
 * @param name short lower-case name, part of the key: {@code mold}, {@code mix}
 * @param type the record class; it is written as JSON by the store, sealed types with the simple
 *     name of their record
 */
public record CardKind<T>(String name, Class<T> type) {

  /** Checks the name. */
  public CardKind {
    if (!name.matches("[a-z][a-z0-9-]*")) {
      throw new IllegalArgumentException("not a card kind: " + name);
    }
  }
}
