package pourwright.pour;

/** How the top of a candle came out, recorded in one tap, and what to do about it. */
public enum Top {
  /** As it should be. */
  SMOOTH("smooth top", "Nothing to do."),
  /** Rough or cratered. */
  ROUGH(
      "rough top",
      "Gentle heat on the lowest setting, away from the wick, once it has set; never on damp stone."
          + " Next time pour a little cooler or warm the vessel."),
  /** White crystals in plant wax. */
  FROSTING(
      "frosting",
      "It is how plant wax sets and does no harm. Slower cooling and a warmer vessel show less."),
  /** Patches where the wax came off the wall. */
  WET_SPOTS(
      "wet spots", "The wax let go of the wall. Warm the vessel next time and keep out draughts."),
  /** A hole beside the wick. */
  SINK_HOLE(
      "sink hole",
      "Poke it open and top up with held-back wax, about 5 K hotter, to just below the first line."),
  /** Beads of oil on the wax. */
  SWEATING(
      "sweating",
      "The wax holds less fragrance than it got, or stood too warm. Check the load; let it rest"
          + " cool.");

  private final String words;
  private final String remedy;

  Top(String words, String remedy) {
    this.words = words;
    this.remedy = remedy;
  }

  /** The words on the button and in the record. */
  public String words() {
    return words;
  }

  /** What to do. */
  public String remedy() {
    return remedy;
  }

  /** Name of its reading: how many candles came out so. */
  public String reading() {
    return "top_" + name().toLowerCase(java.util.Locale.ROOT) + "_count";
  }

  /** The key that belongs to a page's button. */
  public String key() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
