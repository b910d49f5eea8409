package pourwright.page.press;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.hazard.Blend;
import pourwright.hazard.Classification;
import pourwright.hazard.Narrower;
import pourwright.label.Language;
import pourwright.label.Texts;
import pourwright.work.CandleLabel;

/** What a candle is and why, in words for its page. */
final class CandleWords {
  /** Loads are looked at up to here. */
  static final double HIGHEST_LOAD = 0.15;

  private CandleWords() {}

  /** What a classification is in a few codes. */
  static String words(Classification found) {
    List<String> codes = new ArrayList<>(found.statements());
    codes.addAll(found.supplemental());
    String word = found.signalWord();
    return codes.isEmpty()
        ? "not classified"
        : (word == null ? "" : word + ": ") + String.join(", ", codes);
  }

  static List<String> statements(Classification found) {
    List<String> texts = new ArrayList<>();
    String names = String.join(", ", found.namedSubstances());
    for (String code : found.statements()) {
      texts.add(code + " " + Texts.of(code, Language.ENGLISH));
    }
    for (String code : found.supplemental()) {
      texts.add(code + " " + Texts.of(code, Language.ENGLISH).replace("{names}", names));
    }
    for (String code : found.precautionary()) {
      texts.add(code + " " + Texts.of(code, Language.ENGLISH));
    }
    return texts;
  }

  static PressPages.Finding finding(pourwright.hazard.Finding finding) {
    return new PressPages.Finding(
        finding.sentence(),
        finding.distance(),
        finding.rule().source()
            + ", "
            + finding.rule().clause()
            + " ("
            + finding.rule().confidence()
            + ")");
  }

  static List<String> steps(Blend blend) {
    if (blend.oil().isEmpty()) {
      return List.of();
    }
    List<String> steps = new ArrayList<>();
    for (Blend.Step step : blend.steps(HIGHEST_LOAD)) {
      String with = String.join(", ", step.added());
      String without = String.join(", ", step.dropped());
      String from = "from " + percent(step.fromLoad()) + " on ";
      if (without.isEmpty()) {
        steps.add(from + "with " + with);
      } else if (with.isEmpty()) {
        steps.add(from + "without " + without);
      } else {
        steps.add(from + "with " + with + "; without " + without);
      }
    }
    return steps;
  }

  static List<String> narrower(CandleLabel label) {
    List<String> lines = new ArrayList<>();
    for (Narrower.Change change : Narrower.of(label.blend(), label.loadOfTotal())) {
      String with = String.join(", ", change.added());
      String without = String.join(", ", change.dropped());
      String range =
          change.substance()
              + " is given as "
              + percent(change.low())
              + " to "
              + percent(change.high())
              + "; with at most "
              + percent(change.atMost())
              + " the label would be ";
      if (without.isEmpty()) {
        lines.add(range + "with " + with);
      } else if (with.isEmpty()) {
        lines.add(range + "without " + without);
      } else {
        lines.add(range + "without " + without + " and with " + with);
      }
    }
    return lines;
  }

  static String highest(CandleLabel label) {
    if (label.blend().oil().isEmpty()) {
      return "";
    }
    double highest = label.blend().highestLoadLike(label.loadOfTotal(), HIGHEST_LOAD);
    return "The load is "
        + percent(label.loadOfTotal())
        + " of the total. Up to "
        + percent(highest)
        + " no class changes"
        + (highest >= HIGHEST_LOAD ? " (looked at up to there)." : ".");
  }

  private static String percent(double fraction) {
    return String.format(Locale.ROOT, "%.2f %%", fraction * 100);
  }
}
