package pourwright.page.house;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pourwright.batch.Batch;
import pourwright.batch.BatchKind;
import pourwright.batch.Grade;
import pourwright.batch.Mistake;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PlannedAmount;
import pourwright.cast.Defect;
import pourwright.material.MaterialKind;
import pourwright.stock.Shelf;
import pourwright.work.Books;
import pourwright.work.Drawers;
import pourwright.work.Subject;

/**
 * Mistakes by name and the four grades, as buttons of one tap: finished strings.
 *
 * @param subject what it is about, such as {@code BATCH/12}
 * @param pieces marks that may be ticked; empty while nothing is made yet
 * @param mistakes buttons of what may have happened here
 * @param bottles other bottles by lot; empty where no scent is taken
 * @param grades buttons of the grades; empty where there is no piece
 * @param why reasons for a second
 */
public record MistakesPart(
    String subject,
    List<Button> pieces,
    List<Button> mistakes,
    Map<String, String> bottles,
    List<Button> grades,
    List<String> why) {

  private static final int MOST = 120;

  /** A button, or a mark to tick: what is sent and what is read. */
  public record Button(String key, String words) {}

  /** For a batch: what may have happened to all of it, or to some of its pieces. */
  public static MistakesPart of(Books books, Batch batch) {
    List<Button> pieces =
        books.pieces().ofBatch(batch.id()).stream()
            .filter(p -> !(p.state() instanceof PieceState.Gone))
            .limit(MOST)
            .map(p -> new Button(String.valueOf(p.id()), p.mark().text()))
            .toList();
    List<Mistake> may =
        Arrays.stream(Mistake.values())
            .filter(m -> m.happensTo(batch.plan().kind()))
            .filter(m -> m != Mistake.DROPPED || !pieces.isEmpty())
            .toList();
    return new MistakesPart(
        Subject.Kind.BATCH + "/" + batch.id(),
        pieces,
        buttons(may),
        batch.plan().kind() == BatchKind.POUR ? bottles(books, batch) : Map.of(),
        pieces.isEmpty() ? List.of() : allGrades(),
        reasons());
  }

  /** For one piece that is still here. */
  public static MistakesPart of(Piece piece) {
    boolean gone = piece.state() instanceof PieceState.Gone;
    return new MistakesPart(
        Subject.Kind.PIECE + "/" + piece.id(),
        List.of(),
        gone ? List.of() : buttons(List.of(Mistake.DROPPED, Mistake.BUMPED)),
        Map.of(),
        gone ? List.of() : allGrades(),
        reasons());
  }

  /** Where nothing can be named. */
  public static MistakesPart none() {
    return new MistakesPart("", List.of(), List.of(), Map.of(), List.of(), List.of());
  }

  /** The buttons of these mistakes. */
  public static List<Button> buttons(List<Mistake> mistakes) {
    return mistakes.stream().map(m -> new Button(m.key(), m.words())).toList();
  }

  /** The four grades. */
  public static List<Button> allGrades() {
    List<Button> grades = new ArrayList<>();
    for (Grade grade : Grade.values()) {
      String word = grade.name().toLowerCase(Locale.ROOT);
      grades.add(new Button(word, word));
    }
    return grades;
  }

  /** What makes a second, in a word. */
  public static List<String> reasons() {
    return Arrays.stream(Defect.values()).map(Defect::words).toList();
  }

  private static Map<String, String> bottles(Books books, Batch batch) {
    Set<String> own =
        batch.plan().steps().stream()
            .flatMap(s -> s.amounts().stream())
            .map(PlannedAmount::material)
            .collect(Collectors.toSet());
    Map<String, String> bottles = new LinkedHashMap<>();
    for (Shelf shelf : books.lots().allShelves()) {
      String material = shelf.lot().material();
      boolean scent =
          !own.contains(material)
              && Drawers.material(books, material)
                  .filter(m -> m.kind() == MaterialKind.FRAGRANCE)
                  .isPresent();
      if (scent) {
        bottles.put(String.valueOf(shelf.lot().id()), material + ", lot " + shelf.lot().code());
      }
    }
    return bottles;
  }
}
