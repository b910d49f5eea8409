package pourwright.sheet.label;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads path data of the letters M, L, C and Z with absolute numbers. */
final class PathReader {
  private static final Pattern TOKEN = Pattern.compile("[MLCZ]|-?[0-9]+(?:\\.[0-9]+)?");

  /** One command with its numbers. */
  record Step(char letter, double[] xy) {}

  private PathReader() {}

  static List<Step> steps(String path) {
    List<Step> steps = new ArrayList<>();
    Matcher matcher = TOKEN.matcher(path);
    char letter = 'M';
    List<Double> numbers = new ArrayList<>();
    while (matcher.find()) {
      String token = matcher.group();
      if (Character.isLetter(token.charAt(0))) {
        letter = token.charAt(0);
        if (letter == 'Z') {
          steps.add(new Step('Z', new double[0]));
        }
        continue;
      }
      numbers.add(Double.valueOf(token));
      if (numbers.size() == (letter == 'C' ? 6 : 2)) {
        steps.add(new Step(letter, numbers.stream().mapToDouble(Double::doubleValue).toArray()));
        numbers.clear();
      }
    }
    return steps;
  }
}
