package pourwright.page.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import pourwright.card.CandleDesign;
import pourwright.card.CardBook;
import pourwright.card.Drawn;
import pourwright.card.MixCard;
import pourwright.card.ResolvedCandle;
import pourwright.card.Vessel;
import pourwright.cast.HeatStress;
import pourwright.page.Desk;
import pourwright.page.board.VesselPage.Figure;
import pourwright.pour.Fill;
import pourwright.quantity.Counted;
import pourwright.quantity.OutOfRange;
import pourwright.quantity.Sourced;
import pourwright.shape.Hollow;
import pourwright.shape.Point;
import pourwright.work.WickPlaces;

/** Makes the pages of vessels and candles from their cards. */
final class VesselView {
  /** Typical hardened density, in g/ml, where no casting was weighed. */
  /** Typical tensile strength of mortar, in MPa; from memory. */
  private static final double TENSILE_MPA = 2.5;

  private static final double HARDENED_G_PER_ML = 2.0;

  /** Typical density of set wax, in g/ml. */
  private static final double SET_WAX_G_PER_ML = 0.88;

  /** Water and room where nobody measured yet, in °C. */
  private static final double ROOM_C = 20;

  /** House: wax left when a burn ends, in mm. */
  private static final double LEFT_MM = 10;

  /** House: least wall, in mm, below which a drawing is remarked on. */
  private static final double WALL_MM = 6;

  private final Lengths lengths;

  VesselView(Desk desk) {
    this.lengths = new Lengths(desk);
  }

  BoardPage.Drawn drawn(Vessel vessel) {
    VesselDrawing drawing = new VesselDrawing(vessel.hollow(), lengths::rough);
    Sourced holds = vessel.holdsMl();
    return new BoardPage.Drawn(
        vessel.name(),
        "/board/vessel/" + vessel.code(),
        "holds " + lengths.millilitres(holds.value()) + " to the rim, " + range(holds),
        drawing.section(vessel.name(), VesselDrawing.Lines.NONE));
  }

  private static String range(Sourced value) {
    return Lengths.plusMinus(value.relativeUncertainty()) + " (" + value.origin().words() + ")";
  }

  VesselPage page(Vessel vessel, CardBook book) {
    Hollow hollow = vessel.hollow();
    VesselDrawing drawing = new VesselDrawing(hollow, lengths::rough);
    List<Figure> figures = new ArrayList<>();
    figures.add(
        volume(
            "Cavity to the rim",
            vessel.cavityMl() != null,
            vessel.holdsMl(),
            vessel.drawnCavity()));
    figures.add(
        volume("Mix in one piece", vessel.castMl() != null, vessel.mixMl(), vessel.drawnMix()));
    addBody(hollow, figures);
    return new VesselPage(
        vessel.name(),
        "/board/vessel/" + vessel.code(),
        drawing.section(vessel.name(), VesselDrawing.Lines.NONE),
        drawing.plan(vessel.name(), VesselDrawing.Lines.NONE),
        VesselBody.of(hollow),
        figures,
        cautions(hollow),
        true,
        cast(vessel, book));
  }

  /**
   * The sheet for one casting of it, in the mix of a candle of it, else the first that is there.
   */
  private String cast(Vessel vessel, CardBook book) {
    return Stream.concat(
            book.all(CandleDesign.class).stream()
                .filter(c -> c.vessel().equals(vessel.code()))
                .map(CandleDesign::mix),
            book.all(MixCard.class).stream().map(MixCard::code))
        .findFirst()
        .map(
            mix ->
                "/casting/sheet?mix="
                    + mix
                    + "&vessel1="
                    + vessel.code()
                    + "&count1=1&water_c="
                    + lengths.celsius(ROOM_C)
                    + "&room_c="
                    + lengths.celsius(ROOM_C)
                    + "&step="
                    + lengths.number(1))
        .orElse("");
  }

  private Figure volume(String label, boolean measured, Sourced value, Drawn drawn) {
    String range = lengths.millilitres(value.low()) + " to " + lengths.millilitres(value.high());
    String origin = value.origin().words();
    String more =
        measured
            ? origin + "; by the drawing " + lengths.millilitres(drawn.volumeMl().value())
            : origin
                + " from calipers that read half a millimetre; most of the range is the "
                + drawn.widest()
                + ". Weigh it full of water: "
                + Lengths.plusMinus(value.relativeUncertainty())
                + " becomes ±0.5 %.";
    return new Figure(label, lengths.millilitres(value.value()), range, more);
  }

  private void addBody(Hollow hollow, List<Figure> figures) {
    Hollow.Thinnest thinnest = hollow.thinnestWall();
    figures.add(
        new Figure(
            "Thinnest wall, measured level",
            lengths.rough(thinnest.mm()) + " mm",
            "",
            String.format(
                Locale.ROOT,
                "%.0f mm above the foot, towards %.0f°",
                thinnest.heightMm(),
                Math.toDegrees(thinnest.angle()))));
    figures.add(
        new Figure("Base", lengths.rough(hollow.baseMm()) + " mm", "", "measured on the axis"));
    double fill = Math.max(0, hollow.cavity().heightMm() - CandleDesign.HEADSPACE_MM);
    double left = Math.min(LEFT_MM, fill);
    figures.add(
        new Figure(
            "Tips at",
            degrees(hollow.balance(HARDENED_G_PER_ML, SET_WAX_G_PER_ML, fill)),
            degrees(hollow.balance(HARDENED_G_PER_ML, SET_WAX_G_PER_ML, left)) + " burnt down",
            "typical densities; the candle standards tilt by 10°"));
    figures.add(
        new Figure(
            "A sudden difference it bears",
            lengths.number(HeatStress.Wall.MORTAR.suddenLimitK(TENSILE_MPA), 0) + " K",
            lengths.number(HeatStress.Wall.MORTAR.steadyLimitK(TENSILE_MPA), 0)
                + " K where it comes slowly",
            "typical mortar, before it may crack; a gram of water left in the wall makes "
                + lengths.number(HeatStress.steamLitresPerGram(100), 1)
                + " l of steam"));
    figures.add(
        new Figure(
            "Faces to seal",
            area(hollow.insideMm2(hollow.cavity().heightMm())) + " inside",
            area(hollow.outsideMm2()) + " outside with foot and rim",
            "worked out"));
  }

  private static String degrees(Hollow.Balance balance) {
    return String.format(Locale.ROOT, "%.0f°", balance.tipsAtDegrees());
  }

  private String area(double mm2) {
    return lengths.number(mm2 / 100, 0) + " cm²";
  }

  private List<String> cautions(Hollow hollow) {
    List<String> cautions = new ArrayList<>();
    double wall = hollow.thinnestWall().mm();
    if (wall <= 0) {
      cautions.add("The cavity breaks through the wall. Look at the measures.");
    } else if (wall < WALL_MM) {
      cautions.add(
          "The wall is thinner than "
              + lengths.rough(WALL_MM)
              + " mm somewhere (house): expect"
              + " chips, and cracks where it dries unevenly.");
    }
    cautions.add(
        "No published standard covers a cementitious candle vessel. Only tests of the finished"
            + " candle tell whether it may carry a flame.");
    return cautions;
  }

  BoardPage.Drawn drawn(CandleDesign candle, CardBook book) {
    Vessel vessel = book.vessel(candle.vessel());
    VesselDrawing drawing = new VesselDrawing(vessel.hollow(), lengths::rough);
    String wicks = Counted.of(candle.wicks().count(), "wick", "wicks");
    String line;
    VesselDrawing.Lines lines;
    try {
      ResolvedCandle resolved = candle.resolve(book);
      line = "about " + lengths.grams(resolved.netG().value(), 1) + " net, " + wicks;
      lines = lines(resolved, false);
    } catch (OutOfRange e) {
      line = wicks + "; " + e.sentence();
      lines = VesselDrawing.Lines.NONE;
    }
    return new BoardPage.Drawn(
        candle.name(),
        "/board/candle/" + candle.code(),
        line,
        drawing.section(candle.name(), lines));
  }

  private static Fill fill(ResolvedCandle candle) {
    return Fill.of(
        candle.vessel().cavity().solid(),
        candle.design().headspaceMm(),
        candle.pour().densities(),
        0,
        0);
  }

  private static VesselDrawing.Lines lines(ResolvedCandle candle, boolean layOut) {
    Fill fill = fill(candle);
    return new VesselDrawing.Lines(fill.setLineMm(), fill.hotLineMm(), wicks(candle, layOut));
  }

  private static List<Point> wicks(ResolvedCandle candle, boolean layOut) {
    if (candle.design().wicks().count() == 1 && candle.design().wicks().positionsMm().isEmpty()) {
      return List.of(Point.ORIGIN);
    }
    try {
      return layOut ? WickPlaces.of(candle).places() : List.of();
    } catch (OutOfRange e) {
      return List.of();
    }
  }

  VesselPage page(CandleDesign candle, CardBook book) {
    Vessel vessel = book.vessel(candle.vessel());
    VesselDrawing drawing = new VesselDrawing(vessel.hollow(), lengths::rough);
    List<Figure> figures = new ArrayList<>();
    List<String> cautions = new ArrayList<>();
    VesselDrawing.Lines lines = VesselDrawing.Lines.NONE;
    try {
      ResolvedCandle resolved = candle.resolve(book);
      lines = lines(resolved, true);
      addFill(resolved, figures);
      addWicks(resolved, figures, cautions);
    } catch (OutOfRange e) {
      cautions.add("The wax cannot be worked out: " + e.sentence() + ". " + e.hint() + ".");
    }
    addBody(vessel.hollow(), figures);
    cautions.addAll(cautions(vessel.hollow()));
    return new VesselPage(
        candle.name(),
        "/board/candle/" + candle.code(),
        drawing.section(candle.name(), lines),
        drawing.plan(candle.name(), lines),
        VesselBody.of(vessel.hollow()),
        figures,
        cautions,
        false,
        "");
  }

  private void addWicks(ResolvedCandle candle, List<Figure> figures, List<String> cautions) {
    String count = String.valueOf(candle.design().wicks().count());
    try {
      WickPlaces places = WickPlaces.of(candle);
      figures.add(
          new Figure(
              "Wicks",
              count,
              "each pool to reach " + lengths.rough(places.layout().coveringRadiusMm()) + " mm",
              places.written()
                  ? "places as written on the card"
                  : "places laid out by covering the surface, 15 mm from the wall (house)"));
      if (!places.sentence().isEmpty()) {
        cautions.add(places.sentence());
      }
    } catch (OutOfRange e) {
      figures.add(new Figure("Wicks", count, "", e.sentence()));
    }
  }

  private void addFill(ResolvedCandle candle, List<Figure> figures) {
    Sourced net = candle.netG();
    Fill fill = fill(candle);
    figures.add(
        new Figure(
            "Wax and fragrance",
            lengths.grams(net.value(), 1),
            Lengths.plusMinus(net.relativeUncertainty()),
            "up to the fill line, "
                + lengths.rough(candle.design().headspaceMm())
                + " mm under the rim"
                + (candle.vessel().cavityMl() == null
                    ? "; weigh the vessel full of water to narrow it"
                    : "")));
    figures.add(
        new Figure(
            "Hot line",
            lengths.rough(fill.hotLineMm()) + " mm",
            "above the base",
            "hot wax stands higher and sinks as it sets to "
                + lengths.rough(fill.setLineMm())
                + " mm"));
  }
}
