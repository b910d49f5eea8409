package pourwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pourwright.quantity.OutOfRange;

/** Takes a list of cards in: all rows or none, in one deed; looked at first without writing. */
public final class ImportCards {
  private static final String VERB = "took in a list of cards";
  private final Doing doing;

  ImportCards(Doing doing) {
    this.doing = doing;
  }

  /** What would become of a row. */
  public enum Fate {
    /** A card that was not there. */
    NEW("new"),
    /** A next version of one that is. */
    CHANGED("changed"),
    /** As it is already. */
    SAME("as it is already"),
    /** It cannot be taken. */
    WRONG("cannot be taken");

    private final String words;

    Fate(String words) {
      this.words = words;
    }

    /** The words a person reads. */
    public String words() {
      return words;
    }
  }

  /**
   * A row as it was read.
   *
   * @param line its line in the file
   * @param code of the card, an empty string where it could not be read
   * @param sentence what is wrong, or an empty string
   */
  public record Row(int line, String code, String name, Fate fate, String sentence) {}

  /** A card to be written. */
  private record Planned(Row row, Drawer<?> drawer, Object body) {}

  /** What would happen, row by row; nothing is written. */
  public List<Row> look(CardList.What what, List<Map<String, String>> rows, Locale locale) {
    return doing.look(books -> plan(books, what, rows, locale)).stream().map(Planned::row).toList();
  }

  /** Takes the list in; refused when a single row is wrong. */
  public Outcome<List<Row>> run(
      Act act, CardList.What what, List<Map<String, String>> rows, Locale locale) {
    return doing.once(
        act,
        VERB,
        turn -> take(turn, plan(turn.books(), what, rows, locale)),
        (books, deed) -> List.of());
  }

  private static List<Planned> plan(
      Books books, CardList.What what, List<Map<String, String>> rows, Locale locale) {
    CardList list = new CardList(Drawers.materials(books), locale);
    List<Planned> planned = new ArrayList<>();
    java.util.Set<String> seen = new java.util.HashSet<>();
    int line = 1;
    for (Map<String, String> row : rows) {
      line++;
      planned.add(
          switch (what) {
            case MATERIALS -> one(line, row, Drawers.MATERIAL, books, seen, list::material);
            case MIXES -> one(line, row, Drawers.MIX, books, seen, list::mix);
            case POURS -> one(line, row, Drawers.POUR, books, seen, list::pour);
          });
    }
    return planned;
  }

  private static <T> Planned one(
      int line,
      Map<String, String> row,
      Drawer<T> drawer,
      Books books,
      java.util.Set<String> seen,
      java.util.function.Function<Map<String, String>, T> reader) {
    String name = row.getOrDefault("name", "");
    try {
      T body = reader.apply(row);
      String code = code(body);
      if (!seen.add(code)) {
        return wrong(line, name, "the code " + code + " stands twice in the list", drawer);
      }
      Optional<CardVersion<T>> now = books.cards().current(drawer, code);
      Fate fate =
          now.isEmpty() ? Fate.NEW : now.get().body().equals(body) ? Fate.SAME : Fate.CHANGED;
      return new Planned(new Row(line, code, name, fate, ""), drawer, body);
    } catch (OutOfRange e) {
      return wrong(line, name, e.sentence() + ": " + e.hint(), drawer);
    }
  }

  private static Planned wrong(int line, String name, String sentence, Drawer<?> drawer) {
    return new Planned(new Row(line, "", name, Fate.WRONG, sentence), drawer, "");
  }

  private static String code(Object body) {
    return body instanceof pourwright.material.Material material
        ? material.code()
        : ((pourwright.card.Card) body).code();
  }

  private static Outcome<List<Row>> take(Turn turn, List<Planned> planned) {
    Optional<Row> wrong =
        planned.stream().map(Planned::row).filter(r -> r.fate() == Fate.WRONG).findFirst();
    if (wrong.isPresent()) {
      return Outcome.refused(
          Reason.FILE_HAS_BAD_LINES,
          "line " + wrong.get().line() + ": " + wrong.get().sentence(),
          "nothing was taken; put it right and try again");
    }
    List<Planned> some = planned.stream().filter(p -> p.row().fate() != Fate.SAME).toList();
    if (some.isEmpty()) {
      return Outcome.refused(
          Reason.INPUT_CANNOT_BE, "every row is as it is already", "there is nothing to take in");
    }
    Deed deed = turn.deed(new Subject(Subject.Kind.STUDIO, some.get(0).drawer().name()));
    some.forEach(p -> append(turn, p.drawer(), p, deed));
    return Turn.done(deed, planned.stream().map(Planned::row).toList());
  }

  private static <T> void append(Turn turn, Drawer<T> drawer, Planned planned, Deed deed) {
    String code = planned.row().code();
    turn.books()
        .cards()
        .append(
            new CardVersion<>(
                drawer,
                code,
                turn.books().cards().lastVersion(drawer, code) + 1,
                drawer.type().cast(planned.body()),
                false,
                turn.now(),
                turn.act().by(),
                deed.id()));
  }
}
