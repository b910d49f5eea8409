package pourwright.page.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CardBook;
import pourwright.card.Mold;
import pourwright.card.Vessel;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.work.Drawer;
import pourwright.work.Drawers;

/** Molds as a form. */
final class MoldDesk implements CardDesk<Mold> {
  private final Lengths numbers;

  MoldDesk(Desk desk) {
    this.numbers = new Lengths(desk);
  }

  @Override
  public Drawer<Mold> drawer() {
    return Drawers.MOLD;
  }

  @Override
  public String singular() {
    return "mold";
  }

  @Override
  public List<EntryGroup> entries(CardBook book) {
    Map<String, String> vessels = new LinkedHashMap<>();
    book.all(Vessel.class).forEach(v -> vessels.put(v.code(), v.name()));
    return List.of(
        EntryGroup.of(
            "Mold",
            Entry.text("name", "Name"),
            Entry.choice("vessel", "Vessel it makes", vessels),
            Entry.number("count", "How many there are", "").hint("0 when all are retired."),
            Entry.number("pieces_per_cast", "Pieces from one filling", ""),
            Entry.number("life_casts", "Casts it is expected to last", "")
                .hint("House: 50. No standard number exists; count yours."),
            Entry.choice("leftover_only", "Use", uses()),
            Entry.number("piece_value", "What a piece is worth", "")
                .hint("In your money: the rest of a mix fills what is worth most.")
                .mayBeLeftOut(),
            Entry.area("note", "Note", "")));
  }

  private static Map<String, String> uses() {
    Map<String, String> uses = new LinkedHashMap<>();
    uses.put("no", "for orders");
    uses.put("yes", "only for the rest of a mix");
    return uses;
  }

  @Override
  public Map<String, String> fresh(CardBook book) {
    return Map.of(
        "count", "1", "pieces_per_cast", "1", "life_casts", String.valueOf(Mold.LIFE_CASTS));
  }

  @Override
  public Map<String, String> written(Mold mold) {
    Map<String, String> written = new LinkedHashMap<>();
    written.put("name", mold.name());
    written.put("vessel", mold.vessel());
    written.put("count", String.valueOf(mold.count()));
    written.put("pieces_per_cast", String.valueOf(mold.piecesPerCast()));
    written.put("life_casts", String.valueOf(mold.lifeCasts()));
    written.put("leftover_only", mold.leftoverOnly() ? "yes" : "no");
    Double worth = mold.pieceValue();
    written.put("piece_value", worth == null ? "" : numbers.number(worth));
    String note = mold.note();
    written.put("note", note == null ? "" : note);
    return written;
  }

  @Override
  public Optional<Mold> read(Form form, String code, Optional<Mold> before) {
    String name = form.text("name", "a name");
    String vessel = form.text("vessel", "the vessel it makes; draw it first");
    Optional<Integer> count = form.count("count", "how many there are", 0, 1000);
    Optional<Integer> pieces = form.count("pieces_per_cast", "the pieces", 1, 1000);
    Optional<Integer> life = form.count("life_casts", "the casts it lasts", 1, 100_000);
    Optional<String> use =
        form.choice("leftover_only", "its use", new ArrayList<>(uses().keySet()));
    Optional<Double> worth =
        numbers.readNumberIfThere(form, "piece_value", "what a piece is worth");
    if (!form.ok() || count.isEmpty() || pieces.isEmpty() || life.isEmpty() || use.isEmpty()) {
      return Optional.empty();
    }
    String note = form.optionalText("note");
    return Optional.of(
        new Mold(
            code,
            name,
            vessel,
            count.get(),
            pieces.get(),
            life.get(),
            use.get().equals("yes"),
            note.isEmpty() ? null : note,
            worth.orElse(null)));
  }
}
