package pourwright.work;

/**
 * A drawer of cards of one kind, and the record that their bodies are.
 *
 * @param name short lower-case name, part of the key: {@code mold}, {@code mix}
 * @param type the record class; it is written as JSON by the store, sealed types with the simple
 *     name of their record
 */
public record Drawer<T>(String name, Class<T> type) {

  /** Checks the name. */
  public Drawer {
    if (!name.matches("[a-z][a-z0-9-]*")) {
      throw new IllegalArgumentException("not a card kind: " + name);
    }
  }
}
