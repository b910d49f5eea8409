package pourwright.pour;

/** What goes wrong at the pouring bench, by name, and what to do at once. */
public enum Mishap {
  /** Fragrance in excess. */
  TOO_MUCH_SCENT(
      "too much fragrance", "Do not pour yet. Weigh in wax until the load is right again."),
  /** Fragrance short. */
  TOO_LITTLE_SCENT("too little fragrance", "Weigh in the rest and stir for two minutes."),
  /** Over the limit of wax or oil. */
  TOO_HOT("wax too hot", "Heat off. Lid ready. Let it cool before the scent goes in; never water."),
  /** Below the pour window. */
  TOO_COLD(
      "wax too cold to pour", "Warm it gently once more, and only once; the clock starts anew."),
  /** Wax is smoking. */
  SMOKES("wax smokes", "Heat off at once, lid on, fan on. Never water. Do not use this wax."),
  /** Spilt hot wax. */
  SPILT("spilt", "Let it set where it is, then scrape. Weigh what is left before you dose again."),
  /** A wick out of place. */
  WICK_MOVED("wick moved", "Set it back to the mark while the wax is soft; tell it by this note."),
  /** A wet or leaking vessel. */
  LEAKS("vessel leaks", "Empty it into the pitcher, put the vessel aside and mark it as leaking.");

  private final String words;
  private final String remedy;

  Mishap(String words, String remedy) {
    this.words = words;
    this.remedy = remedy;
  }

  /** The words on the button and in the record. */
  public String words() {
    return words;
  }

  /** What to do at once. */
  public String remedy() {
    return remedy;
  }

  /** The key that belongs to a page's button. */
  public String key() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
