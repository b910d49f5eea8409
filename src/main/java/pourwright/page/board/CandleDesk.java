package pourwright.page.board;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pourwright.card.CandleDesign;
import pourwright.card.Card;
import pourwright.card.CardBook;
import pourwright.card.Finish;
import pourwright.card.MixCard;
import pourwright.card.PourCard;
import pourwright.card.Vessel;
import pourwright.card.WickPlan;
import pourwright.material.MaterialKind;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.work.Drawer;
import pourwright.work.Drawers;

/** Candles as a form. */
final class CandleDesk implements CardDesk<CandleDesign> {
  private final Lengths lengths;

  CandleDesk(Desk desk) {
    this.lengths = new Lengths(desk);
  }

  @Override
  public Drawer<CandleDesign> drawer() {
    return Drawers.CANDLE;
  }

  @Override
  public String singular() {
    return "candle";
  }

  private static <C extends Card> Map<String, String> of(CardBook book, Class<C> kind) {
    Map<String, String> found = new LinkedHashMap<>();
    book.all(kind).forEach(c -> found.put(c.code(), c.name()));
    return found;
  }

  private static Map<String, String> of(CardBook book, MaterialKind kind, boolean orNone) {
    Map<String, String> found = new LinkedHashMap<>();
    if (orNone) {
      found.put("", "none");
    }
    book.materials().all().stream()
        .filter(m -> m.kind() == kind)
        .forEach(m -> found.put(m.code(), m.name()));
    return found;
  }

  @Override
  public List<EntryGroup> entries(CardBook book) {
    return List.of(
        EntryGroup.of(
            "Candle",
            Entry.text("name", "Name"),
            Entry.choice("vessel", "Vessel", of(book, Vessel.class)),
            Entry.choice("mix", "Mix", of(book, MixCard.class)),
            Entry.choice("finish", "Finish", of(book, Finish.class)),
            Entry.choice("pour", "Pour card", of(book, PourCard.class)),
            Entry.number("headspace", "Headspace, set wax to the rim", "").hint("House: 12 mm.")),
        EntryGroup.of(
            "Wicks",
            Entry.choice("wick", "Wick", of(book, MaterialKind.WICK, false)),
            Entry.number("wick_count", "How many", "")
                .hint("Their places are laid out by covering the wax surface."),
            Entry.area(
                "wick_places",
                "Places of your own",
                "One wick a line: x and y in mm from the middle of the cavity. Leave it empty to have them laid"
                    + " out."),
            Entry.number("cut", "Cut to", "").hint("0 where they are bought cut."),
            Entry.choice("tab", "Tab", of(book, MaterialKind.TAB, true)),
            Entry.choice("sticker", "Sticker", of(book, MaterialKind.STICKER, true))),
        EntryGroup.of(
            "Rest and box",
            Entry.number("rest", "Rest where it differs from the pour card's", "d").mayBeLeftOut(),
            Entry.number("per_box", "Pieces in a box", ""),
            Entry.area("note", "Note", "")));
  }

  @Override
  public Map<String, String> fresh(CardBook book) {
    return Map.of(
        "headspace",
        lengths.write(CandleDesign.HEADSPACE_MM),
        "wick_count",
        "1",
        "cut",
        lengths.write(0),
        "per_box",
        "1");
  }

  @Override
  public Map<String, String> written(CandleDesign candle) {
    Map<String, String> w = new LinkedHashMap<>();
    w.put("name", candle.name());
    w.put("vessel", candle.vessel());
    w.put("mix", candle.mix());
    w.put("finish", candle.finish());
    w.put("pour", candle.pour());
    w.put("headspace", lengths.write(candle.headspaceMm()));
    WickPlan wicks = candle.wicks();
    w.put("wick", wicks.wick());
    w.put("wick_count", String.valueOf(wicks.count()));
    w.put("wick_places", lengths.points(wicks.positionsMm()));
    w.put("cut", lengths.write(wicks.cutMm()));
    String tab = wicks.tab();
    w.put("tab", tab == null ? "" : tab);
    String sticker = wicks.sticker();
    w.put("sticker", sticker == null ? "" : sticker);
    Double rest = candle.restDays();
    w.put("rest", rest == null ? "" : lengths.number(rest));
    w.put("per_box", String.valueOf(candle.piecesPerBox()));
    String note = candle.note();
    w.put("note", note == null ? "" : note);
    return w;
  }

  @Override
  public Optional<CandleDesign> read(Form form, String code, Optional<CandleDesign> before) {
    String name = form.text("name", "a name");
    String vessel = form.text("vessel", "a vessel; draw it first");
    String mix = form.text("mix", "a mix card; write it first");
    String finish = form.text("finish", "a finish; write it first");
    String pour = form.text("pour", "a pour card; write it first");
    Optional<Double> headspace = lengths.read(form, "headspace", "the headspace");
    String wick = form.text("wick", "a wick");
    Optional<Integer> count = form.count("wick_count", "how many wicks", 1, 24);
    Optional<Double> cut = lengths.read(form, "cut", "the length");
    Optional<Double> rest = lengths.readNumberIfThere(form, "rest", "the days");
    Optional<Integer> perBox = form.count("per_box", "the pieces in a box", 1, 1000);
    if (!form.ok() || headspace.isEmpty() || count.isEmpty() || cut.isEmpty() || perBox.isEmpty()) {
      return Optional.empty();
    }
    String tab = form.optionalText("tab");
    String sticker = form.optionalText("sticker");
    List<List<Double>> places =
        form.value("wick_places").isBlank() ? List.of() : lengths.points(form, "places");
    if (form.ok() && !places.isEmpty() && places.size() != count.get()) {
      form.complain("wick_places", "Please give one place for each wick, or none.");
    }
    if (!form.ok()) {
      return Optional.empty();
    }
    String note = form.optionalText("note");
    return Optional.of(
        new CandleDesign(
            code,
            name,
            vessel,
            mix,
            finish,
            pour,
            new WickPlan(
                wick,
                count.get(),
                cut.get(),
                tab.isEmpty() ? null : tab,
                sticker.isEmpty() ? null : sticker,
                places),
            headspace.get(),
            rest.orElse(null),
            perBox.get(),
            before.map(CandleDesign::boxed).orElse(List.of()),
            note.isEmpty() ? null : note));
  }
}
