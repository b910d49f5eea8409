package pourwright.batch;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The mistakes that happen at a bench, by name: what to do at once, and what is still sellable.
 * What to do and how a piece is sorted afterwards is common practice, no source; a sorted piece may
 * be sorted again by hand. None of it says that a candle may burn: a burn test does.
 */
public enum Mistake {
  /** The scent never went in. */
  SCENT_FORGOTTEN(
      "scent forgotten",
      "Not poured yet: let the wax come into its window and weigh the scent in now. Poured: leave it.",
      "As this candle none of it. Unscented, as seconds, once a burn test of that stands.",
      Grade.SECOND,
      false),
  /** The scent went in a second time. */
  DOSED_TWICE(
      "dosed twice",
      "Do not pour. Weigh in wax until the load is right again; the page says how much.",
      "Once the load is right: all of it. Poured with too much: nothing of it is for a flame.",
      Grade.PLANTER,
      false),
  /** Another scent than planned. */
  WRONG_BOTTLE(
      "wrong bottle",
      "Stop and read the other bottle's sheet: flash point, most it may be used at, allergens.",
      "As this candle none of it. As seconds under the scent that is in it, once that was tested.",
      Grade.SECOND,
      true),
  /** Wax above its limit. */
  OVERHEATED(
      "overheated",
      "Heat off, lid on, fan on, never water. Do not pour it and do not mix it into other wax.",
      "Nothing of this pitcher. Poured already: seconds at most, and only after a burn test.",
      Grade.SECOND,
      false),
  /** Moved before it was set. */
  BUMPED(
      "bumped while setting",
      "Leave it until it is set. Then look at each: wick upright, top even, no crack.",
      "What looks as it should may be sorted first again; the rest are seconds.",
      Grade.SECOND,
      true),
  /** No wick in it. */
  WITHOUT_A_WICK(
      "poured without a wick",
      "Still liquid: set wick and bar now, at the template's mark. Set: warm it gently and melt it out.",
      "Nothing of it is a candle. The vessel may be poured again once it is emptied and clean.",
      Grade.PLANTER,
      false),
  /** No current. */
  POWER_CUT(
      "power cut",
      "Switch off what was hot, so that nothing heats up alone when the power is back. Read the wax.",
      "All of it, if the wax is warmed gently once more, and only once; timers run on here.",
      null,
      false),
  /** Fell down. */
  DROPPED(
      "dropped",
      "Sweep stone up wet, with gloves; let hot wax set before you scrape it. Look at the others.",
      "Not what fell, even when it looks whole: a crack in the wall lets wax out.",
      Grade.SCRAP,
      false);

  private final String words;
  private final String remedy;
  private final String sellable;
  private final @Nullable Grade grade;
  private final boolean lasting;

  Mistake(String words, String remedy, String sellable, @Nullable Grade grade, boolean lasting) {
    this.words = words;
    this.remedy = remedy;
    this.sellable = sellable;
    this.grade = grade;
    this.lasting = lasting;
  }

  /** The words on the button and in the record. */
  public String words() {
    return words;
  }

  /** What to do at once. */
  public String remedy() {
    return remedy;
  }

  /** What is still sellable. */
  public String sellable() {
    return sellable;
  }

  /** How pieces that it reached are sorted; nothing where it does them no harm. */
  public Optional<Grade> grade() {
    return Optional.ofNullable(grade);
  }

  /** Whether it reaches the pieces of a batch even when it was noticed before they were poured. */
  public boolean isLasting() {
    return lasting;
  }

  /** The key that belongs to a page's button. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The key of its step in a batch's record. */
  public String stepKey() {
    return "mistake-" + key();
  }

  /** The mistake of a button or of a step in the record. */
  public static Optional<Mistake> of(String key) {
    String bare = key.startsWith("mistake-") ? key.substring("mistake-".length()) : key;
    return Arrays.stream(values()).filter(m -> m.key().equals(bare)).findFirst();
  }

  /** Whether it can happen to a batch of this kind, or to pieces of it. */
  public boolean happensTo(BatchKind kind) {
    return kind == BatchKind.POUR || this == BUMPED || this == POWER_CUT || this == DROPPED;
  }
}
