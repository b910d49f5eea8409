package pourwright.work;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A burn test of a candle design.
 *
 * @param id the ledger's number
 * @param candle code of the candle's card
 * @param candleVersion its version
 * @param rules id of the rule set it is judged by
 * @param purpose why it is run
 * @param startedAt since when
 * @param by by whom
 * @param closed how it was closed, if it was
 * @param deed the deed
 */
public record BurnTest(
    long id,
    String candle,
    int candleVersion,
    String rules,
    String purpose,
    Instant startedAt,
    String by,
    @Nullable Closed closed,
    long deed) {

  /**
   * How a test ended.
   *
   * @param verdict pass, fail or not_enough_evidence
   * @param reasons what it rests on, one a line
   * @param at when
   * @param by by whom
   */
  public record Closed(String verdict, String reasons, Instant at, String by) {}

  /** One candle on the test. */
  public record Sample(long id, long test, String label, @Nullable Long piece) {}

  /**
   * One burning of one sample, from lighting to putting out.
   *
   * @param number from 1
   * @param endedAt null while it burns
   * @param ended why it ended, as the maker says it
   */
  public record Cycle(
      long id,
      long sample,
      int number,
      Instant litAt,
      @Nullable Instant endedAt,
      @Nullable String ended) {}

  /**
   * What was seen at one minute of a cycle; everything but the minute may be left out.
   *
   * @param minute since lighting
   * @param soot and mushroom: a word or a grade, as the judging room reads it
   */
  public record Look(
      double minute,
      @Nullable Double massG,
      @Nullable Double flameHeightMm,
      @Nullable Double poolLengthMm,
      @Nullable Double poolWidthMm,
      @Nullable Double poolDepthMm,
      @Nullable Double wallC,
      @Nullable Double baseC,
      @Nullable String soot,
      @Nullable String mushroom,
      @Nullable Double secondaryIgnitionS,
      @Nullable Double afterSmokeS,
      @Nullable Boolean crack,
      @Nullable Boolean seep,
      @Nullable Boolean smoke,
      String note) {

    /** What is measured before lighting: mass after the trim, and the base's temperature. */
    public static Look beforeLighting(@Nullable Double massG, @Nullable Double baseC) {
      return new Look(
          0, massG, null, null, null, null, null, baseC, null, null, null, null, null, null, null,
          "");
    }

    /** A minute with nothing but a note. */
    static Look noted(double minute, String note) {
      return new Look(
          minute, null, null, null, null, null, null, null, null, null, null, null, null, null,
          null, note);
    }
  }

  /** A look with its number and deed. */
  public record Seen(long id, long cycle, Look look, Instant at, String by, long deed) {}

  /**
   * A maker's word, under her name, that a design is proved for sale; or that it no longer is.
   *
   * @param proved true when proved, false when taken back
   */
  public record Proof(
      long id,
      String candle,
      int candleVersion,
      @Nullable Long test,
      boolean proved,
      String statement,
      Instant at,
      String by,
      long deed) {}
}
