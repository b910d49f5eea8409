package pourwright.page.plan;

import java.util.List;
import java.util.Map;
import pourwright.page.Form;

/** Classes as finished strings. */
public final class ClassPages {
  private ClassPages() {}

  /**
   * All classes to come and the form for a new one.
   *
   * @param rows the next one first
   * @param candles names by code
   * @param does what a seat does, by code
   * @param teachers initials
   */
  public record All(
      Form form,
      List<Row> rows,
      Map<String, String> candles,
      Map<String, String> does,
      Map<String, String> teachers) {
    /** Keeps its own copy; the choices stay in their order. */
    public All {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One class in a list.
   *
   * @param path its page
   * @param when day and hours
   * @param what candle and seats
   * @param kits how many kits
   * @param sets what sets in class
   * @param posted from when it can be posted
   */
  public record Row(
      String path, String when, String what, String kits, String sets, String posted) {}

  /**
   * One class.
   *
   * @param lead seats, kits, hours
   * @param warnings what does not fit
   * @param cautions what can hurt
   * @param facts what else is to be said
   * @param kit what is in a kit and in all of them
   * @param later what comes after the class
   * @param posted the first day a parcel can go
   * @param open whether it is still to come
   */
  public record One(
      Form form,
      String name,
      String path,
      String lead,
      List<String> warnings,
      String cautions,
      List<String> facts,
      List<Part> kit,
      List<Step> later,
      String posted,
      boolean open) {
    /** Keeps its own copies. */
    public One {
      warnings = List.copyOf(warnings);
      facts = List.copyOf(facts);
      kit = List.copyOf(kit);
      later = List.copyOf(later);
    }
  }

  /** A line of the kit list. */
  public record Part(String material, String each, String all) {}

  /** A step after the class. */
  public record Step(String words, String length, String done) {}
}
