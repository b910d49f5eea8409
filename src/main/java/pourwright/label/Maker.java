package pourwright.label;

import java.util.ArrayList;
import java.util.List;

/**
 * Who puts the candle on the market.
 *
 * @param name studio or trade mark
 * @param address postal address in one line
 * @param phone telephone number
 * @param web electronic address, mail or page
 */
public record Maker(String name, String address, String phone, String web) {
  /** What is missing for a label, in words; empty when all is there. */
  public List<String> missing() {
    List<String> missing = new ArrayList<>();
    if (name.isBlank()) {
      missing.add("the maker's name");
    }
    if (address.isBlank()) {
      missing.add("the maker's postal address");
    }
    if (phone.isBlank()) {
      missing.add("the maker's telephone number");
    }
    if (web.isBlank()) {
      missing.add("the maker's electronic address");
    }
    return missing;
  }
}
