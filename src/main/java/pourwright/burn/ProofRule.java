package pourwright.burn;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What it takes to prove a design for sale: the maker's own rule. The usual one is house, not law.
 *
 * @param fullLives passed samples burnt to their end
 * @param casts different casts that their vessels came from
 * @param pours different pours
 * @param thenEveryPour a test of one candle again with every so many pours
 */
public record ProofRule(int fullLives, int casts, int pours, int thenEveryPour) {

  /** House: three full lives over two casts and two pours, then every twentieth pour. */
  public static ProofRule house() {
    return new ProofRule(3, 2, 2, 20);
  }

  /** What the samples so far stand on. */
  public record Standing(int passedLives, int casts, int pours, boolean waxTight) {}

  /** What is still missing, in sentences; empty when the design may be declared proved. */
  public List<String> missing(Standing now) {
    List<String> missing = new ArrayList<>();
    if (!now.waxTight()) {
      missing.add("the vessel is not proved wax-tight yet");
    }
    lack(missing, now.passedLives(), fullLives, "passed full lives");
    lack(missing, now.casts(), casts, "casts");
    lack(missing, now.pours(), pours, "pours");
    return missing;
  }

  private static void lack(List<String> missing, int have, int want, String of) {
    if (have < want) {
      missing.add(String.format(Locale.ROOT, "%d of %d %s", have, want, of));
    }
  }

  /** What was changed about a proved design. */
  public enum Change {
    WAX,
    SCENT,
    LOAD,
    ADDITIVE,
    DYE_OR_PIGMENT,
    WICK,
    TAB_OR_NECK_HEIGHT,
    FILL_HEIGHT,
    WALL,
    MIX,
    SEALER,
    LID_OR_LINER,
    REST_TIME,
    SAFETY_SHEET,
    LOT_OF_WAX,
    LOT_OF_OIL,
    LOT_OF_WICK;

    /** What it asks for. */
    public Asks asks() {
      return name().startsWith("LOT_") ? Asks.ONE_CHECK_BURN : Asks.A_NEW_TEST;
    }
  }

  /** What a change asks for before the next sale. */
  public enum Asks {
    /** One candle burnt to its end. */
    ONE_CHECK_BURN,
    /** The whole proof again. */
    A_NEW_TEST
  }
}
