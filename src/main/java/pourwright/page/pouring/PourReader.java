package pourwright.page.pouring;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import pourwright.batch.Piece;
import pourwright.batch.PieceState;
import pourwright.batch.PlannedStep;
import pourwright.card.ResolvedCandle;
import pourwright.material.UnitKind;
import pourwright.page.Desk;
import pourwright.page.Form;
import pourwright.page.house.MistakesPart;
import pourwright.page.pouring.PourPage.BoughtLot;
import pourwright.page.pouring.PourPage.FillingGroup;
import pourwright.page.pouring.PourPage.Photo;
import pourwright.page.pouring.PourPage.Photos;
import pourwright.page.pouring.PourPage.Tap;
import pourwright.page.pouring.PourPage.VesselTick;
import pourwright.pour.FlashRule;
import pourwright.pour.Mishap;
import pourwright.pour.Top;
import pourwright.quantity.Counted;
import pourwright.work.Books;
import pourwright.work.PourFill;
import pourwright.work.PourWalk;
import pourwright.work.PourWatch;
import pourwright.work.Subject;

/** Turns a pour in the books into the strings of its page. */
final class PourReader {
  private static final int VESSELS_SHOWN = 60;

  private final Desk desk;

  PourReader(Desk desk) {
    this.desk = desk;
  }

  PourPage page(Books books, PourWatch watch, Form form) {
    boolean open = watch.batch().isRunning();
    return new PourPage(
        form,
        "/pouring/" + watch.batch().id(),
        what(watch),
        open,
        cautions(watch),
        new CoolingView(desk).cooling(watch, GroupDesk.melterC(books)),
        waitsForTheWax(watch),
        new StepView(desk).step(books, watch),
        StepView.redosing(watch, desk.units()),
        FillView.of(desk, books, watch),
        new PourPage.Taps(
            Arrays.stream(Top.values()).map(t -> new Tap(t.key(), t.words())).toList(),
            Arrays.stream(Mishap.values()).map(m -> new Tap(m.key(), m.words())).toList()),
        MistakesPart.of(books, watch.batch()),
        open && watch.next() == null ? filling(books, watch) : PourPage.Filling.NONE,
        open ? "" : restingUntil(books, watch),
        LeftDesk.of(books, watch),
        new Photos(
            "batch/" + watch.batch().id(),
            books.attachments().of(Subject.of(Subject.Kind.BATCH, watch.batch().id())).stream()
                .map(a -> new Photo("/files/" + a.id(), desk.clockTime(a.at()) + ", " + a.name()))
                .toList()),
        new DoneView(desk).all(books, watch));
  }

  /** Whether the next step waits until the wax is cool enough. */
  private boolean waitsForTheWax(PourWatch watch) {
    PlannedStep next = watch.next();
    PourWatch.Target target = watch.target();
    if (next == null
        || target == null
        || !Set.of(PourWalk.SCENT, PourWalk.POUR, PourWalk.SECOND).contains(next.key())) {
      return false;
    }
    Instant reached = watch.reachedAt();
    Double now = watch.waxC();
    return reached == null ? now == null || now > target.toC() : reached.isAfter(desk.now());
  }

  private static List<String> cautions(PourWatch watch) {
    List<String> all = new ArrayList<>();
    all.add("Hot wax is never left alone. If you must go, turn the heat off and press STOP.");
    all.add("Never water on hot wax: lid on, heat off.");
    Double flash = watch.lowestFlashC();
    all.add(
        flash == null
            ? "No flash point is written down for this scent: read its sheet first. Fan on."
            : String.format(
                Locale.ROOT,
                "The scent's flash point is %.0f °C: from %.0f °C up heat off, no flame or spark, fan"
                    + " on (house).",
                flash,
                flash - FlashRule.ADDING_K));
    return all;
  }

  /** As "2 × Bollard, rain, 1 × Ferry, rain". */
  private static String what(PourWatch watch) {
    return watch.parts().stream().map(PourReader::title).collect(Collectors.joining(", "));
  }

  private static String title(PourWatch.Part part) {
    return part.count() + " × " + part.candle().design().name();
  }

  private static PourPage.Filling filling(Books books, PourWatch watch) {
    List<FillingGroup> groups = new ArrayList<>();
    Set<Long> taken = new HashSet<>();
    for (int i = 0; i < watch.parts().size(); i++) {
      PourWatch.Part part = watch.parts().get(i);
      String title = watch.parts().size() > 1 ? title(part) : "Vessels";
      groups.add(
          new FillingGroup(
              title, ticks(i), ticks(books, part, taken), bought(books, part.candle(), i)));
    }
    boolean none = groups.stream().allMatch(g -> g.vessels().isEmpty() && g.bought().isEmpty());
    return new PourPage.Filling(groups, none);
  }

  /** The ticks of a pour's candles: one field for each design. */
  static String ticks(int part) {
    return part == 0 ? "piece" : "piece" + part;
  }

  /** Dry vessels, the first of them ticked; none is ticked for two candles. */
  private static List<VesselTick> ticks(Books books, PourWatch.Part part, Set<Long> taken) {
    List<VesselTick> ticks = new ArrayList<>();
    int left = part.count();
    for (Piece piece : StepView.dry(books, part.candle())) {
      if (ticks.size() < VESSELS_SHOWN) {
        String empty =
            books
                .readings()
                .newest(Subject.of(Subject.Kind.PIECE, piece.id()), PourFill.EMPTY_G)
                .map(r -> String.format(Locale.ROOT, "empty %.1f g", r.value()))
                .orElse("");
        boolean ticked = left > 0 && taken.add(piece.id());
        left -= ticked ? 1 : 0;
        ticks.add(new VesselTick(String.valueOf(piece.id()), piece.mark().text(), empty, ticked));
      }
    }
    return ticks;
  }

  /** Lots of bought vessels: counted, and called as the vessel's card. */
  static List<BoughtLot> bought(Books books, ResolvedCandle candle, int part) {
    return books.lots().shelves(candle.design().vessel()).stream()
        .filter(s -> s.onHand().kind() == UnitKind.COUNT)
        .map(
            s ->
                new BoughtLot(
                    (part == 0 ? "bought-" : "bought" + part + "-") + s.lot().id(),
                    s.lot().id(),
                    String.format(
                        Locale.ROOT,
                        "Bought, lot %s (%.0f there)",
                        s.lot().code(),
                        s.onHand().inUsualUnit())))
        .toList();
  }

  /** Candles of a pour that rest. */
  static List<Piece> resting(Books books, long pour) {
    return books.pieces().ofBatch(pour).stream()
        .filter(p -> p.state() instanceof PieceState.Resting)
        .toList();
  }

  private String restingUntil(Books books, PourWatch watch) {
    List<Piece> resting = resting(books, watch.batch().id());
    Instant finished = watch.batch().finishedAt();
    if (resting.isEmpty() || finished == null) {
      return "";
    }
    double days = watch.parts().stream().mapToDouble(p -> p.candle().restDays()).max().orElse(0);
    Instant until = finished.plusSeconds(Math.round(days * 86_400));
    return String.format(
        Locale.ROOT,
        "%s for %s, until %s.",
        Counted.of(resting.size(), "candle rests", "candles rest"),
        Counted.of(Math.round(days), "day", "days"),
        desk.dayAndTime(until));
  }
}
