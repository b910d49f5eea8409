package pourwright.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Initials as a device remembers them: one to four letters, capital. */
final class Initials {
  private static final int LETTERS_MAX = 4;
  private static final int HANDS_MAX = 6;

  private Initials() {}

  /** Whether a text is one to four letters. */
  static boolean fit(String text) {
    return !text.isBlank()
        && text.strip().length() <= LETTERS_MAX
        && text.strip().codePoints().allMatch(Character::isLetter);
  }

  static String of(String text) {
    return text.strip().toUpperCase(Locale.ROOT);
  }

  /** Those who worked at this device, the latest first, as the device keeps them. */
  static List<String> read(String kept) {
    List<String> hands = new ArrayList<>();
    for (String one : kept.split("\\.", -1)) {
      if (fit(one) && !hands.contains(one) && hands.size() < HANDS_MAX) {
        hands.add(one);
      }
    }
    return List.copyOf(hands);
  }

  /** The same with somebody in front. */
  static String with(String initials, List<String> hands) {
    List<String> all = new ArrayList<>(List.of(initials));
    all.addAll(hands);
    return String.join(".", read(String.join(".", all)));
  }
}
