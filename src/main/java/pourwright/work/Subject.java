package pourwright.work;

import pourwright.stock.Trace;

/**
 * What a deed, a reading, a timer, a hold or a photo is about.
 *
 * @param kind what it is
 * @param id its number or code, as text
 */
public record Subject(Kind kind, String id) {

  /** Kinds of things in the books. */
  public enum Kind {
    /** A lot of material. */
    LOT,
    /** A cast or pour. */
    BATCH,
    /** A piece. */
    PIECE,
    /** A tray card. */
    TRAY,
    /** A card: {@code id} is kind and code with a slash between, as {@code mix/grey}. */
    CARD,
    /** An order. */
    ORDER,
    /** An order line. */
    ORDER_LINE,
    /** A file of orders that was read in. */
    ORDER_FILE,
    /** A timer. */
    TIMER,
    /** A hold. */
    HOLD,
    /** A reading. */
    READING,
    /** A burn test. */
    BURN_TEST,
    /** A run of the planner. */
    PLAN_RUN,
    /** An attachment, by its SHA-256. */
    ATTACHMENT,
    /** A setting, by its key. */
    SETTING,
    /** A deed. */
    DEED,
    /** The studio as a whole. */
    STUDIO
  }

  /** A thing with a number. */
  public static Subject of(Kind kind, long id) {
    return new Subject(kind, Long.toString(id));
  }

  /** A design, by the kind of its card and its code. */
  public static Subject card(Drawer<?> kind, String code) {
    return new Subject(Kind.CARD, kind.name() + "/" + code);
  }

  /** The number, for things that have one. */
  public long number() {
    return Long.parseLong(id);
  }

  /** The node of the trace that this is, or null when the trace does not run through it. */
  public Trace.@org.jspecify.annotations.Nullable Node node() {
    return switch (kind) {
      case LOT -> new Trace.Node(Trace.Kind.LOT, number());
      case BATCH -> new Trace.Node(Trace.Kind.BATCH, number());
      case PIECE -> new Trace.Node(Trace.Kind.PIECE, number());
      case ORDER_LINE -> new Trace.Node(Trace.Kind.ORDER_LINE, number());
      default -> null;
    };
  }
}
