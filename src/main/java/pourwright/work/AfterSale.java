package pourwright.work;

import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Something that came after a sale, as the register keeps it.
 *
 * @param id the ledger's number, 0 before it is written
 * @param kind what it is
 * @param piece the piece, if one is known
 * @param order number of the order, if it is known
 * @param what for an incident what was seen: crack, flare, scorch, other; else an empty string
 * @param learnedOn the day the studio learned of it: the reporting clock starts then
 * @param words what was said
 * @param deed the deed, 0 before it is written
 */
public record AfterSale(
    long id,
    Kind kind,
    @Nullable Long piece,
    @Nullable String order,
    String what,
    LocalDate learnedOn,
    String words,
    long deed) {

  /** Kinds of things that come after a sale. */
  public enum Kind {
    /** It came back. */
    RETURN("came back"),
    /** It arrived broken. */
    BREAKAGE("arrived broken"),
    /** Money was given back. */
    REFUND("money given back"),
    /** Another one is sent for it. */
    REPLACEMENT("another one is sent"),
    /** Somebody is not content. */
    COMPLAINT("complaint"),
    /** Something happened that could hurt: a crack, a flare, a scorch. */
    INCIDENT("incident");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** The words a person reads. */
    public String words() {
      return words;
    }

    /** The code in forms. */
    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
