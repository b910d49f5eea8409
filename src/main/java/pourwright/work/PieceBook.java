package pourwright.work;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import pourwright.batch.Grade;
import pourwright.batch.Mark;
import pourwright.batch.Piece;
import pourwright.batch.PieceEvent;
import pourwright.batch.TrayCard;

/** Pieces, what happened to them, and tray cards. */
public interface PieceBook {

  /** The number that the next piece gets. */
  long nextId();

  /** The number that the next mark gets; marks with a star are left out. */
  long nextMark();

  /** A piece by number. */
  Optional<Piece> piece(long id);

  /** The pieces with these numbers, those that are on file, by number. */
  Map<Long, Piece> pieces(Collection<Long> ids);

  /** What carries a mark, batch or piece. */
  Optional<Subject> marked(Mark mark);

  /**
   * Pieces newest first.
   *
   * @param which which of them
   */
  PageOf<Piece> list(Which which, @Nullable String after, int limit);

  /** How many pieces there are by design (candle card once poured) and state code. */
  Map<DesignState, Long> counts();

  /** How many pieces there are in each of these states, by code; states without any left out. */
  Map<String, Long> inStates(Collection<String> states);

  /**
   * How the latest pieces of a design fared.
   *
   * @param made how many were looked at
   * @param scrapped how many of them were scrapped
   */
  record Fared(int made, int scrapped) {}

  /** How the latest pieces of each of these designs fared, no more than so many of each. */
  Map<String, Fared> fared(Collection<String> designs, int latest);

  /**
   * What became of the vessels of some casts.
   *
   * @param demolded how many came out of the molds
   * @param poured how many were poured as candles
   * @param spoiledBefore how many were thrown away, or sorted out for no flame, without wax
   * @param spoiledAfter how many were poured and then thrown away or sorted out, not for a test
   */
  record Fates(int demolded, int poured, int spoiledBefore, int spoiledAfter) {}

  /** What became of the vessels of these casts, no more than a few hundred of them. */
  Fates fates(Collection<Long> casts);

  /**
   * Where a piece stands, in short.
   *
   * @param piece its number
   * @param design candle card's code once poured, before that the vessel card's
   * @param state state code
   * @param vesselDesign vessel card's code
   * @param madeBy code of the mix card that it was cast of, or of the pour card where the vessel
   *     was bought; empty where that batch is not on file
   * @param grade how good it is, null while not sorted
   */
  record Standing(
      long piece,
      String design,
      String state,
      String vesselDesign,
      String madeBy,
      @Nullable Grade grade) {
    /** Whether it is sold as new: sorted first, or not sorted. */
    public boolean isFirst() {
      return grade == null || grade == Grade.FIRST;
    }
  }

  /** All pieces in any of these states, by code, the newest first. */
  List<Standing> standing(Collection<String> states);

  /**
   * A word that changes whenever a batch is begun, a fact of a piece or a tray is written, or any
   * deed is taken back or counts again.
   */
  String edition();

  /** What happened to a piece, in the order of writing, undone deeds left out. */
  List<PieceEvent> events(long piece);

  /** The pieces whose facts belong to a deed. */
  List<Long> touchedBy(long deed);

  /** The pieces that came out of a batch or were poured in it. */
  List<Piece> ofBatch(long batch);

  /** True when some piece of a vessel design has been proved wax-tight. */
  boolean designHeldWax(String vesselDesign);

  /** The number that the next tray card gets. */
  long nextTray();

  /** A tray card by number. */
  Optional<TrayCard> tray(long id);

  /** Tray cards with pieces still on them. */
  List<TrayCard> trays();

  /** Adds a piece with its first fact. Only inside a write. */
  void add(Piece piece, PieceEvent first);

  /** Adds a fact that the piece's life allows. Only inside a write. */
  void append(PieceEvent event);

  /** Adds a tray card with the pieces that lie on it. Only inside a write. */
  TrayCard addTray(String label, List<Long> pieces, long deed);

  /** Notes that the castings on a tray can no longer be told apart. Only inside a write. */
  void mixUp(long tray, long deed);

  /** Works the kept state of pieces out anew from their facts. Only inside a write. */
  void retell(List<Long> pieces);

  /**
   * Which pieces a list shows.
   *
   * @param design vessel card's code, or candle card's once poured; null for all
   * @param state state code, null for all
   */
  record Which(@Nullable String design, @Nullable String state) {
    /** All pieces. */
    public static final Which ALL = new Which(null, null);
  }

  /** A design and a state. */
  record DesignState(String design, String state) {}
}
