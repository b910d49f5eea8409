package pourwright.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.batch.Grade;
import pourwright.batch.Piece;

/**
 * Finished candles that may leave the studio now: rested, of the first sort, stopped by nothing.
 */
final class OnTheShelf {
  private static final int SHELF_MOST = 400;

  private OnTheShelf() {}

  /**
   * What is taken along.
   *
   * @param pieces by candle, the oldest first
   * @param missing what there is too little of, in words; empty when all is there
   */
  record Taken(Map<String, List<Piece>> pieces, List<String> missing) {
    /** All of them. */
    List<Piece> all() {
      return pieces.values().stream().flatMap(List::stream).toList();
    }
  }

  /** Looks for so many of each candle. */
  static Taken take(Books books, Map<String, Integer> wanted) {
    Map<String, List<Piece>> found = new LinkedHashMap<>();
    List<String> missing = new ArrayList<>();
    wanted.forEach(
        (candle, number) -> {
          List<Piece> pieces = free(books, candle, number);
          found.put(candle, pieces);
          if (pieces.size() < number) {
            missing.add(candle + ": " + number + " asked, " + pieces.size() + " there");
          }
        });
    return new Taken(found, missing);
  }

  private static List<Piece> free(Books books, String candle, int wanted) {
    boolean holds = !books.holds().standing().isEmpty();
    List<Piece> free = new ArrayList<>();
    for (long id : books.recalls().standing(candle, "Rested", SHELF_MOST)) {
      if (free.size() == wanted) {
        break;
      }
      Optional<Piece> piece = books.pieces().piece(id);
      boolean good =
          piece.isPresent()
              && (piece.get().grade() == null || piece.get().grade() == Grade.FIRST)
              && !(holds && !books.holds().stopping(id).isEmpty());
      if (good) {
        free.add(piece.orElseThrow());
      }
    }
    return free;
  }
}
