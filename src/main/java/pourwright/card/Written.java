package pourwright.card;

import pourwright.material.Material;
import pourwright.quantity.OutOfRange;

/** Checks that the written forms share. */
final class Written {
  private Written() {}

  static void head(String field, String code, String name) {
    Material.checkCode(field, code);
    if (name.isBlank()) {
      throw new OutOfRange("name", "the " + field + " " + code + " has no name", "give it a name");
    }
  }

  static void notEarlier(String field, double value, double floor, String sentence) {
    if (value < floor) {
      throw new OutOfRange(field, sentence, "widen the window or swap the two");
    }
  }
}
