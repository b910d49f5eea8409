package pourwright.order;

/** Order of the parts in a date written in numbers. */
public enum DateOrder {
  /** Day, month, year. */
  DAY_MONTH_YEAR("d/m/y"),
  /** Month, day, year. */
  MONTH_DAY_YEAR("m/d/y"),
  /** Year, month, day. */
  YEAR_MONTH_DAY("y/m/d");

  private final String words;

  DateOrder(String words) {
    this.words = words;
  }

  /** As it is shown and typed: d/m/y, m/d/y or y/m/d. */
  public String words() {
    return words;
  }

  /** Reads the words; null where they are none. */
  public static @org.jspecify.annotations.Nullable DateOrder of(String text) {
    for (DateOrder order : values()) {
      if (order.words.equalsIgnoreCase(text.strip())) {
        return order;
      }
    }
    return null;
  }
}
