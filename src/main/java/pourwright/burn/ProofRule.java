package pourwright.burn;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pourwright.quantity.Check;
import pourwright.quantity.OutOfRange;

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

  /** Checks that no number is below nothing. */
  public ProofRule {
    Check.between("full_lives", fullLives, 0, 1000);
    Check.between("casts", casts, 0, 1000);
    Check.between("pours", pours, 0, 1000);
    Check.between("then_every_pour", thenEveryPour, 1, 10_000);
  }

  /**
   * The rule as four whole numbers with spaces between, in the order of the record.
   *
   * @throws OutOfRange when the text is anything else
   */
  public static ProofRule of(String text) {
    String[] parts = text.strip().split(" +", -1);
    if (parts.length != 4 || !text.strip().matches("[0-9 ]{7,40}")) {
      throw new OutOfRange(
          "proof.rule", "'" + text + "' is not a rule of proof", "write four numbers: 3 2 2 20");
    }
    return new ProofRule(
        Integer.parseInt(parts[0]),
        Integer.parseInt(parts[1]),
        Integer.parseInt(parts[2]),
        Integer.parseInt(parts[3]));
  }

  /** As {@link #of} reads it. */
  public String text() {
    return fullLives + " " + casts + " " + pours + " " + thenEveryPour;
  }

  /**
   * What the samples so far stand on.
   *
   * @param passedLives samples of passed tests burnt to their end
   * @param casts different casts that they came from
   * @param pours different pours
   * @param toTheVeryEnd whether one of them burnt until it went out by itself or its wax was gone
   * @param waxTight whether the vessel has been proved wax-tight
   */
  public record Standing(
      int passedLives, int casts, int pours, boolean toTheVeryEnd, boolean waxTight) {}

  /** What is still missing, in sentences; empty when the design may be declared proved. */
  public List<String> missing(Standing now) {
    List<String> missing = new ArrayList<>();
    if (!now.waxTight()) {
      missing.add("the vessel is not proved wax-tight yet");
    }
    lack(missing, now.passedLives(), fullLives, "passed full lives");
    if (fullLives > 0 && !now.toTheVeryEnd()) {
      missing.add("no sample was burnt to the very end");
    }
    lack(missing, now.casts(), casts, "casts");
    lack(missing, now.pours(), pours, "pours");
    return missing;
  }

  private static void lack(List<String> missing, int have, int want, String of) {
    if (have < want) {
      missing.add(String.format(Locale.ROOT, "%d of %d %s", have, want, of));
    }
  }

  /** How the burn of one candle of every so many pours stands. */
  public enum CheckBurn {
    /** Its pour is still to come. */
    NOT_YET,
    /** Its pour is the latest one: one candle of it is to be burnt. */
    DUE,
    /** Another pour has been made without it: the word for sale waits. */
    OVERDUE
  }

  /**
   * How the next check burn stands.
   *
   * @param poursSince pours after the newest one that a passed test has burnt, 0 or more
   */
  public CheckBurn checkBurn(int poursSince) {
    Check.notNegative("pours_since", poursSince);
    if (poursSince < thenEveryPour) {
      return CheckBurn.NOT_YET;
    }
    return poursSince == thenEveryPour ? CheckBurn.DUE : CheckBurn.OVERDUE;
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
