package pourwright.label;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Care lines of a candle: each only as far as it was tested. */
public final class CareLines {
  private static final double WARM_C = 40;

  private CareLines() {}

  /** Lines in the order in which they are used; empty when nothing was tested. */
  public static List<String> of(BurnFacts facts, Language language) {
    List<String> lines = new ArrayList<>();
    add(lines, "first-burn", language, "h", facts.firstPoolHours(), false);
    add(lines, "trim", language, "mm", facts.trimMm(), false);
    add(lines, "hours", language, "h", facts.hoursAtATime(), true);
    add(lines, "stop", language, "mm", facts.stopDepthMm(), false);
    add(lines, "burns", language, "h", facts.burnHoursLow(), true);
    Double wall = facts.wallC();
    if (wall != null && wall >= WARM_C) {
      lines.add(Texts.of("stone", language));
    }
    return lines;
  }

  private static void add(
      List<String> lines,
      String code,
      Language language,
      String name,
      @Nullable Double value,
      boolean down) {
    if (value == null) {
      return;
    }
    double shown = down ? Math.floor(value * 2) / 2 : Math.ceil(value * 2) / 2;
    if (shown > 0) {
      lines.add(Texts.of(code, language, name, number(shown, language)));
    }
  }

  private static String number(double value, Language language) {
    String plain = Amounts.plain(value);
    return language.equals(Language.ENGLISH) ? plain : plain.replace('.', ',');
  }
}
